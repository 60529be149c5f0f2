package faultfinch.desk;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Letters that stand on the set as others: "C becomes G", "press A, get E", "H instead of L". */
final class LetterSwaps {
  private static final String LETTER = "['\"]?([A-Za-z])['\"]?";

  /** Columns by which a row may stand aside. */
  private static final int ASIDE = 2;

  /** A row is like another that has every so many-th letter of it in its place. */
  private static final int LIKE = 4;

  private static final String END = "(?=$|[ ,.;)])";

  private static final Pattern BECOMES =
      Pattern.compile(
          "(?<=^|[ (,])"
              + LETTER
              + ",? (?:(?:i |you |it |and )*(?:becomes?|turns? into|turns? to|changes? to|changes? into|shows? as|shows? up as"
              + "|appears? as|comes? out as|comes? as|is shown as|is displayed as|prints? as|reads? as|looks? like|prints?|types?|gets?|gives?)) (?:an? |the )?"
              + LETTER
              + END);

  private static final Pattern INSTEAD =
      Pattern.compile(
          "(?<=^|[ (,])"
              + LETTER
              + " (?:instead of|in place of|for) (?:an? |the )?"
              + LETTER
              + END);

  /** Words of one letter, which are letters only where they are quoted or name nobody. */
  private static final Set<String> WORDS = Set.of("a", "i", "I");

  private final Lookbook lookbook;

  LetterSwaps(Lookbook lookbook) {
    this.lookbook = lookbook;
  }

  /** What a phrase says of letters; empty if it swaps none, or no fault swaps them so. */
  Optional<Phrases.Finding> find(String text) {
    Map<Character, Character> swaps = swaps(text);
    if (swaps.isEmpty() || !lookbook.looks().contains(Phrases.SCREEN)) {
      return Optional.empty();
    }
    String look =
        lookbook.ofLetters(
            shown ->
                swaps.keySet().stream()
                    .allMatch(c -> shown.toLowerCase(Locale.ROOT).indexOf(c) >= 0));
    PictureText right = right(look);
    List<String> meant =
        lookbook.outcomes(look).stream()
            .filter(o -> areSwapped(swaps, right, PictureText.of(o)))
            .toList();
    return Phrases.Finding.of(look, text, meant);
  }

  /** What stands for what, in small letters. */
  private static Map<Character, Character> swaps(String text) {
    Map<Character, Character> swaps = new LinkedHashMap<>();
    Matcher becomes = BECOMES.matcher(text);
    while (becomes.find()) {
      // "J prints i", but not "C becomes a mess".
      boolean goesOn = becomes.end() < text.length() && text.charAt(becomes.end()) == ' ';
      if (!goesOn || !WORDS.contains(becomes.group(2))) {
        note(becomes.group(1), becomes.group(2), swaps);
      }
    }
    Matcher instead = INSTEAD.matcher(text);
    while (instead.find()) {
      if (!WORDS.contains(instead.group(1))) {
        note(instead.group(2), instead.group(1), swaps);
      }
    }
    return swaps;
  }

  private static void note(String should, String is, Map<Character, Character> swaps) {
    if (!WORDS.contains(should) && !should.equalsIgnoreCase(is)) {
      swaps.put(small(should)[0], small(is)[0]);
    }
  }

  private PictureText right(String look) {
    return PictureText.of(lookbook.outcomes(look).get(0));
  }

  private static boolean areSwapped(
      Map<Character, Character> swaps, PictureText right, PictureText is) {
    return swaps.entrySet().stream()
        .allMatch(
            swap -> 2 * times(swap.getKey(), swap.getValue(), right, is) > count(right, swap));
  }

  private static int count(PictureText right, Map.Entry<Character, Character> swap) {
    return times(swap.getKey(), swap.getKey(), right, right);
  }

  /** How often one letter of a right picture is another in this one. */
  private static int times(char should, char shown, PictureText right, PictureText is) {
    return right.rows().stream().mapToInt(row -> times(should, shown, small(row), is)).sum();
  }

  /**
   * The same of a row, in that row which has it most often, of those that are much like it: blanks
   * may be lit, and rows more.
   */
  private static int times(char should, char shown, char[] right, PictureText is) {
    int letters = letters(right);
    int most = 0;
    for (String row : is.rows()) {
      char[] other = small(row);
      for (int aside = 0; aside <= ASIDE; aside++) {
        int times = 0;
        int kept = 0;
        for (int x = 0; x < Math.min(right.length, other.length - aside); x++) {
          times += right[x] == should && other[x + aside] == shown ? 1 : 0;
          kept += right[x] != ' ' && right[x] == other[x + aside] ? 1 : 0;
        }
        most = Math.max(most, LIKE * kept >= letters ? times : 0);
      }
    }
    return most;
  }

  private static int letters(char[] row) {
    int letters = 0;
    for (char c : row) {
      letters += c == ' ' ? 0 : 1;
    }
    return letters;
  }

  private static char[] small(String row) {
    return row.toLowerCase(Locale.ROOT).toCharArray();
  }
}
