package faultfinch.symptom;

/**
 * A tone as an ear takes it.
 *
 * @param hertz middle of the semitone it falls in
 * @param fromMilliseconds since power-on
 * @param milliseconds how long it sounds
 */
public record Tone(int hertz, int fromMilliseconds, int milliseconds) {}
