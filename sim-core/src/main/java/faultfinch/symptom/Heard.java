package faultfinch.symptom;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A stretch of sound as an ear takes it.
 *
 * @param hertz pitches that sound together, each the middle of its semitone, rising
 * @param noise whether there is noise in it
 * @param brightness how the overtones stand to the pitches; {@link Brightness#NONE} without a pitch
 * @param fromMilliseconds since power-on
 */
record Heard(
    List<Integer> hertz,
    boolean noise,
    Brightness brightness,
    Loudness loudness,
    int fromMilliseconds,
    int milliseconds) {

  /** Overtones above 3 kHz against those of a plain square wave. */
  enum Brightness {
    NONE(""),
    DULL(" and dull"),
    CLEAR(" and clear"),
    SHRILL(" and shrill");

    private final String says;

    Brightness(String says) {
      this.says = says;
    }
  }

  /** Steps an ear can tell without another sound beside it. */
  enum Loudness {
    FAINT("faint"),
    SOFT("soft"),
    LOUD("loud");

    private final String says;

    Loudness(String says) {
      this.says = says;
    }
  }

  private static final int SHORT_BELOW = 200;
  private static final int LONG_BELOW = 1000;

  Heard {
    hertz = List.copyOf(hertz);
  }

  /** As an ear keeps it: how loud, how bright, about how long, which pitches. */
  String says() {
    return loudness.says + brightness.says + " " + length() + " " + what();
  }

  private String length() {
    return milliseconds < SHORT_BELOW ? "short" : milliseconds < LONG_BELOW ? "long" : "lasting";
  }

  private String what() {
    if (hertz.isEmpty()) {
      return "noise";
    }
    String pitches = hertz.stream().map(String::valueOf).collect(Collectors.joining(" and "));
    String chord = hertz.size() > 1 ? "chord of " + pitches + " Hz" : pitches + " Hz";
    return noise ? chord + " with noise" : chord;
  }

  /** Each pitch as a tone of its own. */
  List<Tone> tones() {
    return hertz.stream().map(h -> new Tone(h, fromMilliseconds, milliseconds)).toList();
  }
}
