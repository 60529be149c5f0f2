package faultfinch.cli;

import faultfinch.diagnosis.FaultDictionary;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What a look shows, short enough for a printed page: of a picture or a report of many lines those
 * that are not the good board's, lines alike told once. The full text is in the JSON.
 */
final class InShort {
  /** In characters; what is no longer is left as it is. */
  private static final int SHORT = 60;

  /** In characters; what is left out beyond it is shown by three dots. */
  private static final int MOST = 240;

  /** Rows of a picture, as its text has them. */
  private static final String ROWS = " | ";

  /** Lines of a report. */
  private static final String LINES = "; ";

  private final Words words;
  private final String healthy;

  /**
   * @param healthy what the same look shows on a good board
   */
  private InShort(String healthy, Words words) {
    this.healthy = healthy;
    this.words = words;
  }

  /** Outcomes of a look, each in short; of what is no look they are left as they are. */
  static List<String> of(
      List<String> outcomes, String look, FaultDictionary dictionary, Words words) {
    OptionalInt at = dictionary.look(look);
    return at.isEmpty() || outcomes.stream().noneMatch(InShort::isLong)
        ? outcomes
        : new InShort(dictionary.outcomes(at.getAsInt()).get(0), words).all(outcomes);
  }

  /** Whether it has to be shortened at all. */
  static boolean isLong(String outcome) {
    return outcome.length() > SHORT;
  }

  /** All of them, each in short; where two would read the same, in full. */
  private List<String> all(List<String> outcomes) {
    List<String> shown = outcomes.stream().map(this::of).toList();
    Set<String> once = new HashSet<>();
    Set<String> twice = new HashSet<>();
    shown.stream().filter(s -> !once.add(s)).forEach(twice::add);
    List<String> told = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      told.add(twice.contains(shown.get(i)) ? outcomes.get(i) : shown.get(i));
    }
    return told;
  }

  private String of(String outcome) {
    if (!isLong(outcome)) {
      return outcome;
    }
    if (outcome.equals(healthy)) {
      return words.say("next.good");
    }
    String between = outcome.contains(ROWS) ? ROWS : LINES;
    List<String> pieces = pieces(outcome, between);
    Set<String> good = new HashSet<>(pieces(healthy, between));
    List<String> odd = pieces.stream().filter(p -> !good.contains(p)).toList();
    if (!odd.isEmpty() && odd.size() <= pieces.size() / 2) {
      return words.say("next.otherwise-good", cut(told(odd, between)));
    }
    return outcome.length() <= MOST ? outcome : cut(told(pieces, between));
  }

  /** Pieces that follow each other and are alike are told once. */
  private String told(List<String> pieces, String between) {
    List<String> told = new ArrayList<>();
    int first = 0;
    for (int i = 1; i <= pieces.size(); i++) {
      if (i == pieces.size() || !pieces.get(i).equals(pieces.get(first))) {
        String piece = pieces.get(first);
        told.add(i - first == 1 ? piece : words.say("next.alike", i - first, piece));
        first = i;
      }
    }
    return String.join(between, told);
  }

  /** Its rows or lines; the quotes of a picture are none of its rows. */
  private static List<String> pieces(String outcome, String between) {
    String text = outcome;
    if (between.equals(ROWS) && text.startsWith("'") && text.lastIndexOf('\'') > 0) {
      int end = text.lastIndexOf('\'');
      text = text.substring(1, end) + ROWS + text.substring(end + 1).strip();
    }
    return Arrays.asList(text.split(Pattern.quote(between)));
  }

  private static String cut(String text) {
    return text.length() <= MOST ? text : text.substring(0, MOST) + " ...";
  }
}
