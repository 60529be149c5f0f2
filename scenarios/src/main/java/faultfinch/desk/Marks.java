package faultfinch.desk;

import faultfinch.diagnosis.Sight;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Signs called by name that are strewn over a set where none should be: "exclamation marks in the
 * gaps". A wrong bit turns blanks into one and the same sign, so that it tells the bit.
 */
final class Marks {
  /** Fewer are no pattern. */
  private static final int STREWN = 3;

  /** So many are strewn nowhere: "just five dashes". */
  private static final Pattern COUNTED =
      Pattern.compile(
          "\\b(?:one|two|three|four|five|six|\\d|a few|a couple of)(?: [a-z]+)? (?:dash|dashes|dots|stars)\\b");

  private final Lookbook lookbook;
  private final Map<String, String> names;

  Marks(Lookbook lookbook, Vocabulary vocabulary) {
    this.lookbook = lookbook;
    names = vocabulary.pairs("marks");
  }

  /** What a phrase says of signs on the set; empty if it names none that any fault strews there. */
  Optional<Phrases.Finding> find(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    if (!lookbook.looks().contains(Phrases.SCREEN) || COUNTED.matcher(small).find()) {
      return Optional.empty();
    }
    return Vocabulary.in(small, List.copyOf(names.keySet()))
        .map(names::get)
        .map(mark -> meant(mark.charAt(0)))
        .filter(meant -> !meant.isEmpty())
        .map(
            meant ->
                new Phrases.Finding(
                    Phrases.SCREEN,
                    text,
                    List.of(new Sight(List.of(Phrases.SCREEN), meant)),
                    true));
  }

  private List<String> meant(char mark) {
    List<String> outcomes = lookbook.outcomes(Phrases.SCREEN);
    return times(mark, outcomes.get(0)) > 0
        ? List.of()
        : outcomes.stream().filter(o -> times(mark, o) >= STREWN).toList();
  }

  private static long times(char mark, String outcome) {
    return PictureText.of(outcome).rows().stream()
        .flatMapToInt(String::chars)
        .filter(c -> c == mark)
        .count();
  }
}
