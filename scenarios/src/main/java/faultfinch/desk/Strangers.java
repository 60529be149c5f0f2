package faultfinch.desk;

import faultfinch.board.Board;
import faultfinch.board.PlacedPart;
import faultfinch.signal.Pin;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Parts and pins that somebody names and the board does not have. */
final class Strangers {
  private static final Pattern PART =
      Pattern.compile("(?<![\\w.-])([A-Z]{1,3}|u)(\\d{1,3})(?!\\w)");

  /** What stands on a screen. */
  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"|(?<= |^)'[^']*'(?=[ ,.;:]|$)");

  /** "C3" and "D800" are bytes and addresses too. */
  private static final Pattern HEXADECIMAL = Pattern.compile("[A-F](?:\\d|\\d{3})");

  private static final Pattern PIN =
      Pattern.compile("(?<!\\w)([A-Za-z]+\\d+)(?:\\.| pin )([A-Za-z0-9]+/?)(?!\\w)");
  private static final Pattern PIN_BEFORE =
      Pattern.compile("(?i)\\bpin (\\d+) (?:of|on|at) (?:the )?([a-z]+\\d+)(?!\\w)");

  private static final int NEAREST = 3;

  private final Board board;
  private final Places places;

  Strangers(Board board, Places places) {
    this.board = board;
    this.places = places;
  }

  /** The first part that the board does not have. */
  Optional<Phrases.Trouble> part(String text) {
    Matcher m = PART.matcher(QUOTED.matcher(text).replaceAll(""));
    while (m.find()) {
      String letters = m.group(1).toUpperCase(Locale.ROOT);
      String ref = letters + m.group(2);
      if (!places.isPart(ref) && !HEXADECIMAL.matcher(ref).matches() && !isCalled(ref)) {
        List<String> alike = alike(letters, Integer.parseInt(m.group(2)));
        if (!alike.isEmpty()) {
          return Optional.of(new Phrases.Trouble(Statement.Why.NO_SUCH_PART, ref, alike));
        }
      }
    }
    return Optional.empty();
  }

  /** The first pin that a part of the board does not have. */
  Optional<Phrases.Trouble> pin(String text) {
    Matcher m = PIN.matcher(text);
    while (m.find()) {
      Optional<Phrases.Trouble> trouble = pin(m.group(1), m.group(2));
      if (trouble.isPresent()) {
        return trouble;
      }
    }
    Matcher before = PIN_BEFORE.matcher(text);
    return before.find() ? pin(before.group(2), before.group(1)) : Optional.empty();
  }

  private Optional<Phrases.Trouble> pin(String ref, String pin) {
    return board.parts().stream()
        .filter(p -> p.ref().equalsIgnoreCase(ref) && !places.isPin(ref, pin))
        .findFirst()
        .map(
            p ->
                new Phrases.Trouble(
                    Statement.Why.NO_SUCH_PIN,
                    p.ref() + "." + pin,
                    pins(p).map(known -> p.ref() + "." + known).limit(NEAREST).toList()));
  }

  /**
   * Parts with these letters, the nearest number first. None if there is but one with them: the
   * letters of the only speaker are those of a family of chips too.
   */
  private List<String> alike(String letters, int number) {
    List<String> refs =
        board.parts().stream()
            .map(PlacedPart::ref)
            .filter(ref -> ref.matches(letters + "\\d+"))
            .sorted(
                Comparator.comparingInt(
                    ref -> Math.abs(Integer.parseInt(ref.substring(letters.length())) - number)))
            .toList();
    return refs.size() < 2 ? List.of() : refs.stream().limit(NEAREST).toList();
  }

  /** Whether a line or a pin has this name. */
  private boolean isCalled(String name) {
    return places.isLine(name)
        || board.parts().stream().flatMap(Strangers::pins).anyMatch(name::equals);
  }

  private static Stream<String> pins(PlacedPart part) {
    return part.type().part().pinout().pins().stream().map(Pin::name);
  }
}
