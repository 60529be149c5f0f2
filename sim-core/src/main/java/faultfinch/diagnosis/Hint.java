package faultfinch.diagnosis;

/**
 * What came of something that was done to one part for a moment, and undone again.
 *
 * @param part reference
 * @param helped whether the board worked, or what it shows went away
 */
public record Hint(How how, String part, boolean helped) {

  /** What was done. */
  public enum How {
    /** Cooled, or warmed, by itself. */
    SPRAY("spray"),
    /** Pressed on, wiggled, tapped. */
    PRESS("press"),
    /** A like chip on top of it, leg on leg. */
    PIGGYBACK("piggyback");

    private final String word;

    How(String word) {
      this.word = word;
    }

    /** As the figures name it. */
    String word() {
      return word;
    }
  }
}
