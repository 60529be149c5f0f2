package faultfinch.diagnosis;

/**
 * One thing that was seen.
 *
 * @param look text of the look
 * @param seen the outcome, as the dictionary words it
 */
public record Observation(String look, String seen, Source source) {

  /** Who says so. */
  public enum Source {
    BENCH,
    TOLD
  }

  /** Seen on the bench. */
  public static Observation bench(String look, String seen) {
    return new Observation(look, seen, Source.BENCH);
  }

  /** Told by a person. */
  public static Observation told(String look, String seen) {
    return new Observation(look, seen, Source.TOLD);
  }

  /** Such as {@code probe U9.D0 at the pin: low}. */
  public String text() {
    return look + ": " + seen;
  }
}
