package faultfinch.desk;

import faultfinch.diagnosis.Sight;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What a technician copied from a display, letter by letter. */
final class DisplayText {
  /** Single signs with gaps between them. */
  private static final Pattern SPACED = Pattern.compile("\\S(?: +\\S){3,}");

  private DisplayText() {}

  /**
   * Whether words are what a display shows and not a description: quoted, or without small letters.
   */
  static boolean isText(String shown, String phrase) {
    return phrase.contains("'")
        || phrase.contains("\"")
        || shown.chars().noneMatch(Character::isLowerCase);
  }

  /** The outcomes that show just this; else those that hold it; else itself. */
  static Phrases.Finding finding(String look, String shown, List<String> outcomes) {
    String read = oneBlank(shown);
    List<String> exact =
        outcomes.stream().filter(o -> oneBlank(o).contains("'" + read + "'")).toList();
    List<String> meant =
        exact.isEmpty()
            ? outcomes.stream().filter(o -> oneBlank(o).contains(read)).toList()
            : exact;
    String says = "reads '" + shown + "'";
    if (meant.isEmpty() && SPACED.matcher(shown).matches()) {
      // "a a i k": what stands between others, which nobody spells.
      String letters = letters(shown);
      meant = outcomes.stream().filter(o -> letters(o).contains(letters)).toList();
    }
    Sight sight = new Sight(List.of(look), meant.isEmpty() ? List.of(says) : meant);
    return new Phrases.Finding(look, says, List.of(sight), true);
  }

  private static String letters(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "");
  }

  /** In small letters, however wide the gaps are: nobody counts blanks on a display. */
  private static String oneBlank(String text) {
    return text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").replace("' ", "'");
  }
}
