package faultfinch.attempt;

/** What you think before a pull: the suspect, and what taking it out will bring. */
public record Hunch(String suspect, Expectation expects) {

  /** What you expect to see after the pull. */
  public enum Expectation {
    AS_NOW("as now"),
    RIGHT_AGAIN("right again"),
    WORSE("worse"),
    OTHER("other");

    private final String words;

    Expectation(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }
}
