package faultfinch.diagnosis;

import java.util.Set;

/**
 * What came of something that was done to one part for a moment, and undone again; or of an
 * ohmmeter across two lines.
 *
 * @param part reference; of an ohmmeter, the two lines
 * @param helped whether the board worked, or what it shows went away; of an ohmmeter, whether it
 *     read next to nothing
 * @param faults those that join the lines, by their texts; none where a part is meant
 */
public record Hint(How how, String part, boolean helped, Set<String> faults) {

  public Hint {
    faults = Set.copyOf(faults);
  }

  /** Of something that was done to a part. */
  public Hint(How how, String part, boolean helped) {
    this(how, part, helped, Set.of());
  }

  /** What was done. */
  public enum How {
    /** Cooled, or warmed, by itself. */
    SPRAY("spray"),
    /** Pressed on, wiggled, tapped. */
    PRESS("press"),
    /** A like chip on top of it, leg on leg. */
    PIGGYBACK("piggyback"),
    /** An ohmmeter from one line to another, with the power off. */
    ACROSS("across");

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
