package faultfinch.cli;

import faultfinch.bench.Instruments;
import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What was typed in plain words, as the text of a move: {@code probe U9.D0} for {@code look: probe
 * U9.D0 at the pin}, {@code reseat U9} for {@code reseat: U9}. And back again.
 */
final class Typed {
  private static final String LOOK = Moves.LOOK.word() + ": ";
  private static final String PIN = " at the pin";
  private static final String PAD = " at the pad";

  private Typed() {}

  /** The text of a move, if it begins like one; whether it can be done is for the bench. */
  static Optional<String> move(String line) {
    String said = line.replaceFirst("(?i)^look:? +(at +)?(the +)?", "");
    for (Instruments kind : Instruments.values()) {
      Optional<String> place = behind(said, kind.word());
      if (place.isPresent()) {
        return Optional.of(LOOK + look(kind, place.get()));
      }
    }
    return Arrays.stream(Moves.values())
        .sorted(Comparator.comparing((Moves m) -> m.word().length()).reversed())
        .flatMap(m -> behind(line, m.word()).map(p -> text(m, p)).stream())
        .findFirst();
  }

  private static String text(Moves kind, String place) {
    return place.isEmpty() ? kind.word() : kind.word() + ": " + place;
  }

  private static String look(Instruments kind, String place) {
    if (kind.wholeBoard() || place.isEmpty()) {
      return kind.word();
    }
    String where = place.replaceFirst("(?i) +(at +)?(the +)?(pin|pad)$", "");
    boolean atPad = place.toLowerCase(Locale.ROOT).endsWith(" pad");
    return kind.word() + " " + where + (kind != Instruments.PROBE ? "" : atPad ? PAD : PIN);
  }

  private static Optional<String> behind(String line, String word) {
    if (!line.toLowerCase(Locale.ROOT).startsWith(word.toLowerCase(Locale.ROOT))) {
      return Optional.empty();
    }
    String rest = line.substring(word.length());
    boolean ends = rest.isEmpty() || rest.startsWith(" ") || rest.startsWith(":");
    return ends ? Optional.of(rest.replaceFirst("^[: ]+", "").strip()) : Optional.empty();
  }

  /** The offered move of a text, in whatever case it was typed. */
  static Optional<Move> offered(String text, List<Move> offers) {
    return offers.stream().filter(m -> m.text().equalsIgnoreCase(text)).findFirst();
  }

  /** How a person would type a move. */
  static String words(String move) {
    String said = move.startsWith(LOOK) ? move.substring(LOOK.length()) : move;
    return said.replaceFirst(": ", " ").replaceFirst(PIN + "$", "").replaceFirst(PAD + "$", " pad");
  }
}
