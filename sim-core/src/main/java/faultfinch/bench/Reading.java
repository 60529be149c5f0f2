package faultfinch.bench;

import faultfinch.machine.Finger;
import faultfinch.symptom.Tone;
import java.util.List;
import java.util.Locale;

/**
 * What a look or a move showed. Two readings differ on the bench if and only if their features do:
 * the text may say more than the instrument can tell apart.
 */
public sealed interface Reading {

  /** For people. */
  String text();

  /** In the resolution of the instrument. */
  String feature();

  /** A level as a probe's lights tell it. */
  record Level(Light light) implements Reading {
    @Override
    public String text() {
      return light.words();
    }

    @Override
    public String feature() {
      return light.words();
    }
  }

  /**
   * A finger on a part, by somebody who knows how a healthy board feels.
   *
   * @param burns whether the case is above 60 degrees
   */
  record Touch(Finger finger, boolean burns) implements Reading {
    @Override
    public String text() {
      return burns ? feature() + ", and it burns" : feature();
    }

    @Override
    public String feature() {
      return finger.name().toLowerCase(Locale.ROOT);
    }
  }

  /** What a probe shows. */
  enum Light {
    LOW("low"),
    HIGH("high"),
    PULSING("pulsing"),
    MID("mid"),
    NONE("no light");

    private final String words;

    Light(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * A number on an instrument's dial.
   *
   * @param text with its unit
   * @param feature the step of the dial it falls in, with its unit
   */
  record Amount(String text, String feature) implements Reading {}

  /**
   * Something seen, heard, felt or told, in words.
   *
   * @param text for people
   * @param feature what another look could differ in
   */
  record Words(String text, String feature) implements Reading {}

  /**
   * The display: its cells stand with the words that describe it.
   *
   * @param cells character codes, bit 7 the dot below; empty if the glass is dark
   */
  record Picture(String text, String feature, List<Integer> cells) implements Reading {
    public Picture {
      cells = List.copyOf(cells);
    }
  }

  /** Tones heard, with what describes them. */
  record Sound(String text, String feature, List<Tone> tones) implements Reading {
    public Sound {
      tones = List.copyOf(tones);
    }
  }

  /** Levels over time. */
  record Waveform(String text, String feature, List<Line> lines) implements Reading {
    public Waveform {
      lines = List.copyOf(lines);
    }
  }

  /**
   * One line of a waveform: levels {@code L}, {@code H}, {@code M} or {@code Z} and since when each
   * stands.
   *
   * @param since nanoseconds since power-on, rising, one for each level
   */
  record Line(String name, List<Long> since, String levels) {
    public Line {
      since = List.copyOf(since);
    }
  }

  /**
   * Several lines that belong together, such as what a module wrote.
   *
   * @param feature what of it counts
   */
  record Report(List<String> lines, String feature) implements Reading {
    public Report {
      lines = List.copyOf(lines);
    }

    @Override
    public String text() {
      return String.join("; ", lines);
    }
  }

  /**
   * Whether a board did all it should.
   *
   * @param differences what was not as it should be, in words
   */
  record Check(boolean passed, List<String> differences) implements Reading {
    public Check {
      differences = List.copyOf(differences);
    }

    @Override
    public String text() {
      return passed ? "passed" : "failed: " + String.join("; ", differences);
    }

    @Override
    public String feature() {
      return text();
    }
  }
}
