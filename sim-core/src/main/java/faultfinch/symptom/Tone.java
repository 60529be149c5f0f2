package faultfinch.symptom;

/**
 * A tone as an ear takes it.
 *
 * @param hertz middle of the semitone it falls in
 * @param fromMilliseconds since power-on
 * @param milliseconds how long it sounds
 */
public record Tone(int hertz, int fromMilliseconds, int milliseconds) {
  private static final int SHORT_BELOW = 200;
  private static final int LONG_BELOW = 1000;

  /** As an ear keeps it: pitch and about how long. */
  public String says() {
    String length =
        milliseconds < SHORT_BELOW ? "short" : milliseconds < LONG_BELOW ? "long" : "lasting";
    return length + " " + hertz + " Hz";
  }
}
