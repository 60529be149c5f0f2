package faultfinch.bench;

import java.util.List;
import java.util.Optional;

/** Every kind of look that changes nothing, the cheapest to understand first. */
public enum Instruments {
  SCREEN("screen", "what the display shows when the board has started"),
  LISTEN("listen", "what sounds while the board starts"),
  LAMP("lamp", "whether the lamp is dark, lit or blinks"),
  KEY("key", "what a press of a key brings about"),
  TYPED("typed", "what the display shows when the word of the exercise was typed"),
  CURRENT("current", "what the board draws from its supply"),
  FINGER("finger", "how warm a part is"),
  METER("meter", "average volts at a pin"),
  PROBE("probe", "low, high, pulsing, mid or no light"),
  COUNTER("counter", "frequency at a pin"),
  CONTINUITY(
      "continuity", "whether a piece of track, or a leg to its pad, conducts, without power"),
  OHMS("ohms", "resistance from a pad to ground, without power");

  private static final List<Instruments> ALL = List.of(values());

  private final String word;
  private final String says;

  Instruments(String word, String says) {
    this.word = word;
    this.says = says;
  }

  /** As it begins the text of a look. */
  public String word() {
    return word;
  }

  /** What it tells, in plain words. */
  public String says() {
    return says;
  }

  /** Whether the place is nothing more than the board itself. */
  public boolean wholeBoard() {
    return switch (this) {
      case SCREEN, LISTEN, LAMP, TYPED, CURRENT -> true;
      case KEY, FINGER, METER, PROBE, COUNTER, CONTINUITY, OHMS -> false;
    };
  }

  /** Whether it is used on a board that is switched off. */
  public boolean unpowered() {
    return this == CONTINUITY || this == OHMS;
  }

  /** The instrument of this word, if there is one. */
  public static Optional<Instruments> named(String word) {
    for (Instruments instrument : ALL) {
      if (instrument.word.equals(word)) {
        return Optional.of(instrument);
      }
    }
    return Optional.empty();
  }
}
