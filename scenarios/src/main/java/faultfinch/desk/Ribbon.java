package faultfinch.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A ribbon of the eight data lines, drawn from line 7 to line 0 with a gap where a line differed:
 * which gaps somebody tells of who counts them from either end.
 */
final class Ribbon {
  private static final int LINES = 8;

  private static final String MARK =
      "(?:marks?|signs?|blocks?|squares?|box(?:es)?|bars?|cells?|symbols?|bits?|places?|positions?|segments?|ones?)";

  private static final Map<String, Integer> ORDINALS = ordinals();

  private static final String ORDINAL = "(" + String.join("|", ORDINALS.keySet()) + ")";

  /** "third from the left", "the fifth mark", "first of the eight", "leftmost bit". */
  private static final Pattern PLACE =
      Pattern.compile(
          "(?<= |^)(?:"
              + ORDINAL
              + "(?:(?:,? and |, )"
              + ORDINAL
              + ")?(?: "
              + MARK
              + ")?(?: (?:from|on|at|to) (?:the )?(left|right))(?: (?:end|side|hand side))?"
              + "|"
              + ORDINAL
              + "(?:(?:,? and |, )"
              + ORDINAL
              + ")?(?: of (?:the )?(?:eight|8))?(?: [a-z]+)? "
              + MARK
              + "|"
              + ORDINAL
              + "(?: one)? of (?:the |them )?(?:all )?(?:eight|8)"
              + "|(leftmost|rightmost|left-most|right-most|left-hand|right-hand) "
              + MARK
              + ")(?= |,|$)");

  private static final Pattern SPOKEN_OF =
      Pattern.compile(
          "\\b(?:eight|8|marks?|ribbon|row of|from the (?:left|right)|hollow|outlined?|unfilled|not filled)\\b");

  /** What else stands in rows: the stripe of colours, keys, letters. */
  private static final Pattern ELSEWHERE =
      Pattern.compile(
          "\\b(?:colou?rs?|coloured|stripes?|inks?|keys?|letters?|dots?|columns?|glyphs?|cursor"
              + "|red|green|yellow|blue|magenta|purple|cyan|turquoise)\\b");

  private static final Pattern GAP =
      Pattern.compile(
          "\\b(?:hollow|different|differs|odd|missing|gap|open|outlined?|empty|unfilled|not filled|not solid"
              + "|not like|other than|bad|wrong|dashed|blank|off|stands out|special)\\b");

  private static final Pattern ALL_SOLID =
      Pattern.compile(
          "\\b(?:all|all of|every one of|all the|all of the) (?:eight|8)(?: of them| marks| signs| blocks| squares| bars)*"
              + " (?:(?:are|is|look|stay) )?(?:all )?(?:solid|whole|full|filled|the same|alike|equal)\\b");

  private static final Pattern ONE =
      Pattern.compile(
          "(?<= |^)(?:with )?(?:just |only )?(?:one|1)(?: single)?(?: of| hollow| mark| gap| place)");

  private Ribbon() {}

  private static Map<String, Integer> ordinals() {
    Map<String, Integer> ordinals = new LinkedHashMap<>();
    List<String> words =
        List.of("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth");
    List<String> figures = List.of("1st", "2nd", "3rd", "4th", "5th", "6th", "7th", "8th");
    for (int i = 0; i < LINES; i++) {
      ordinals.put(words.get(i), i + 1);
      ordinals.put(figures.get(i), i + 1);
    }
    ordinals.put("last", LINES);
    return ordinals;
  }

  /** The data lines whose places in a ribbon a text names, in small letters; from 7 on the left. */
  static Set<Integer> lines(String small) {
    Set<Integer> lines = new TreeSet<>();
    Matcher m = PLACE.matcher(small);
    while (m.find()) {
      boolean right = "right".equals(m.group(3));
      for (int group : new int[] {1, 2, 4, 5, 6}) {
        if (m.group(group) != null) {
          int place = ORDINALS.get(m.group(group));
          lines.add(right ? place - 1 : LINES - place);
        }
      }
      if (m.group(7) != null) {
        lines.add(m.group(7).startsWith("l") ? LINES - 1 : 0);
      }
    }
    return lines;
  }

  /** What is said of the gaps in the ribbon that a board shows which finds no memory. */
  static Optional<Phrases.Finding> find(String text, Lookbook lookbook) {
    String small = text.toLowerCase(Locale.ROOT);
    boolean ours = SPOKEN_OF.matcher(small).find() && !ELSEWHERE.matcher(small).find();
    boolean gap = ours && GAP.matcher(small).find();
    Set<Integer> told = gap ? lines(small) : Set.of();
    Predicate<Set<Integer>> said;
    if (!told.isEmpty()) {
      said = told::equals;
    } else if (gap && ONE.matcher(small).find()) {
      said = gaps -> gaps.size() == 1;
    } else if (ours && ALL_SOLID.matcher(small).find()) {
      said = Set::isEmpty;
    } else {
      return Optional.empty();
    }
    List<String> meant =
        lookbook.outcomes(Phrases.SCREEN).stream()
            .filter(o -> gaps(o).stream().anyMatch(said))
            .toList();
    return Phrases.Finding.of(Phrases.SCREEN, text, meant);
  }

  /**
   * The gaps of each thing on a set that may be a ribbon: eight signs of no more than two sorts.
   */
  private static List<Set<Integer>> gaps(String outcome) {
    List<Set<Integer>> found = new ArrayList<>();
    for (String row : PictureText.of(outcome).rows()) {
      for (String word : trimmed(row).split(" +")) {
        if (word.length() == LINES && word.chars().distinct().count() <= 2) {
          found.add(gapsOf(word));
        }
      }
    }
    return found;
  }

  /** A row without what fills it on both sides where there should be blanks. */
  private static String trimmed(String row) {
    int from = 0;
    int to = row.length();
    if (to > 2 * LINES && row.charAt(0) == row.charAt(to - 1) && row.charAt(0) != ' ') {
      char fill = row.charAt(0);
      while (from < to && row.charAt(from) == fill) {
        from++;
      }
      while (to > from && row.charAt(to - 1) == fill) {
        to--;
      }
    }
    return row.substring(from, to);
  }

  private static Set<Integer> gapsOf(String word) {
    char one = word.charAt(0);
    long ones = word.chars().filter(c -> c == one).count();
    boolean points = word.indexOf('.') >= 0;
    Set<Integer> gaps = new TreeSet<>();
    for (int i = 0; i < LINES; i++) {
      boolean first = word.charAt(i) == one;
      boolean gap = points ? word.charAt(i) == '.' : first == (2 * ones < LINES);
      if (gap) {
        gaps.add(LINES - 1 - i);
      }
    }
    return gaps;
  }
}
