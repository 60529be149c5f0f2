package faultfinch.desk;

import faultfinch.symptom.EveryKey;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
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

  /** A prompt is no letter, and what is typed stands behind it. */
  private static final String PROMPT = "# ";

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

  /** What keys do with letters, and sets do not. */
  private static final Pattern KEYED = Pattern.compile("\\b(?:gives?|prints?|types?|press)\\b");

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
    Set<String> all = new LinkedHashSet<>(look.equals(EveryKey.NAME) ? meant : List.of());
    all.addAll(ofKeys(swaps));
    boolean keyed = meant.isEmpty() || !all.isEmpty() && KEYED.matcher(text).find();
    return keyed || look.equals(EveryKey.NAME)
        ? Phrases.Finding.of(EveryKey.NAME, text, List.copyOf(all))
        : Phrases.Finding.of(look, text, meant);
  }

  /**
   * Keys that print other letters than theirs, on a board whose letters are right on the set. The
   * key of the other letter may be dead besides, so that it comes no more often than it should.
   */
  private List<String> ofKeys(Map<Character, Character> swaps) {
    if (!lookbook.looks().contains(EveryKey.NAME)) {
      return List.of();
    }
    List<String> outcomes = lookbook.outcomes(EveryKey.NAME);
    PictureText right = PictureText.of(outcomes.get(0));
    PictureText start = PictureText.of(lookbook.outcomes(Phrases.SCREEN).get(0));
    return outcomes.stream()
        .filter(
            o -> {
              PictureText is = PictureText.of(o);
              return is.hasRowsOf(start)
                  && swaps.entrySet().stream()
                      .allMatch(
                          swap ->
                              typed(is, swap.getKey()) < typed(right, swap.getKey())
                                  && typed(is, swap.getValue()) > 0);
            })
        .toList();
  }

  /** How often a letter stands behind a prompt. */
  private static long typed(PictureText shown, char letter) {
    return shown.rows().stream()
        .filter(row -> row.startsWith(PROMPT))
        .flatMapToInt(row -> row.toLowerCase(Locale.ROOT).chars())
        .filter(c -> c == letter)
        .count();
  }

  /** Whether a phrase says which letter stands for which. */
  static boolean isOfTwo(String text) {
    return !swaps(text).isEmpty();
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
