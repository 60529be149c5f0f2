package faultfinch.desk;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * What a look at a set shows, taken apart again: what can be read, row by row, and the colours.
 *
 * @param rows without blanks at their ends; a hash is a lit cell that is no letter, a point may be
 *     a gap in a ribbon
 * @param inks names of colours, black left out
 */
record PictureText(List<String> rows, List<String> inks) {
  private static final Pattern PICTURE =
      Pattern.compile("[^']*'(.*)'(?: in ([a-z, ]*?))?(?:,? ?(?:(?:a|with|the) .*|rolls))?");

  /** Colours by what they are mixed of: bit 0 red, 1 green, 2 blue. */
  private static final List<String> MIXED =
      List.of("black", "red", "green", "yellow", "blue", "magenta", "cyan", "white");

  /** Letters enough to be told from chance. */
  private static final Pattern WORD = Pattern.compile("\\p{L}{4,}");

  /** The same of any letters, with another sign at either end. */
  private static final Pattern SPELT = Pattern.compile("(?<!\\p{L})\\p{L}{3,12}(?!\\p{L})");

  private static final int FEWEST_WORDS = 3;

  private static final String BETWEEN = " \\| ";
  private static final char LIT = '#';
  private static final String STRIP = "########";

  /** Columns by which a garbled row can stand beside where it should: its blanks may be lit. */
  private static final int ASIDE = 2;

  private static final double MOST = 0.9;

  /** Fewer wrong cells than these are wrong each for itself. */
  private static final int FEW = 4;

  private static final double HALF = 0.6;

  PictureText {
    rows = List.copyOf(rows);
    inks = List.copyOf(inks);
  }

  /** Of an outcome; without rows if it is no picture. */
  static PictureText of(String outcome) {
    Matcher m = PICTURE.matcher(outcome);
    if (!m.matches()) {
      return new PictureText(List.of(), List.of());
    }
    List<String> inks = m.group(2) == null ? List.of() : Arrays.asList(m.group(2).split(", "));
    return new PictureText(Arrays.asList(m.group(1).split(BETWEEN)), inks);
  }

  boolean isShown() {
    return !rows.isEmpty();
  }

  /** Whether a colour is on the glass, by itself or in another. */
  boolean hasIn(String primary) {
    int bits = MIXED.indexOf(primary);
    return bits > 0 && inks.stream().anyMatch(ink -> has(ink, bits));
  }

  /** Whether a colour is on the glass, and in every other one there: it is always on. */
  boolean isAllOf(String mixed) {
    return inks.contains(mixed) && inks.stream().allMatch(ink -> has(ink, MIXED.indexOf(mixed)));
  }

  private static boolean has(String ink, int bits) {
    return (MIXED.indexOf(ink) & bits) == bits;
  }

  /** Whether some word of another picture stands here too. */
  boolean hasWordOf(PictureText other) {
    String all = String.join(" ", rows);
    return WORD.matcher(String.join(" ", other.rows))
        .results()
        .anyMatch(w -> all.contains(w.group()));
  }

  /** Whether what looks like words stands there, be they wrong: letters with signs between them. */
  boolean isSpelt() {
    return rows.stream().anyMatch(PictureText::isSpelt);
  }

  private static boolean isSpelt(String row) {
    long letters = row.chars().filter(Character::isLetter).count();
    long words = SPELT.matcher(row).results().count();
    return words >= FEWEST_WORDS && letters > HALF * row.chars().filter(c -> c != ' ').count();
  }

  /** Whether every row with a word in it that another picture has stands here too. */
  boolean hasRowsOf(PictureText other) {
    return isShown()
        && rows.containsAll(other.rows.stream().filter(r -> WORD.matcher(r).find()).toList());
  }

  /** Whether all rows but one stand as in another picture, the first and the last among them. */
  boolean endsAsButForOneRow(PictureText other) {
    int last = rows.size() - 1;
    return isShown()
        && last > 1
        && last == other.rows.size() - 1
        && rows.get(0).equals(other.rows.get(0))
        && rows.get(last).equals(other.rows.get(last))
        && IntStream.range(1, last).filter(i -> !rows.get(i).equals(other.rows.get(i))).count() < 2;
  }

  /** Whether, row by row, most is lit where words stand in another picture, and dark between. */
  boolean isLaidOutAs(PictureText other) {
    int at = 0;
    for (String right : other.rows) {
      if (WORD.matcher(right).find()) {
        while (at < rows.size() && !isLaidOutAs(rows.get(at), right)) {
          at++;
        }
        if (at == rows.size()) {
          return false;
        }
        at++;
      }
    }
    return at > 0;
  }

  private static boolean isLaidOutAs(String row, String right) {
    int lit = 0;
    int signs = 0;
    for (int x = 0; x < Math.max(row.length(), right.length()); x++) {
      boolean is = x < row.length() && row.charAt(x) != ' ';
      boolean should = x < right.length() && right.charAt(x) != ' ';
      if (is && !should) {
        return false;
      }
      lit += is ? 1 : 0;
      signs += should ? 1 : 0;
    }
    return lit >= HALF * signs;
  }

  boolean hasWordOfTitleOf(PictureText other) {
    return isShown()
        && other.isShown()
        && hasWordOf(new PictureText(other.rows.subList(0, 1), inks));
  }

  /**
   * Whether it is the right picture, or has signs between the start of its last row and its end.
   */
  boolean isButForTheLastRow(PictureText right) {
    int last = right.rows.size() - 1;
    if (last < 0 || rows.size() != right.rows.size() || !inks.equals(right.inks)) {
      return false;
    }
    String end = right.rows.get(last);
    String start = end.substring(0, Math.max(0, end.length() - 1));
    return rows.subList(0, last).equals(right.rows.subList(0, last))
        && rows.get(last).startsWith(start)
        && rows.get(last).endsWith(end.substring(start.length()));
  }

  /** Whether the last row ends before the block that stands there in the right picture. */
  boolean lacksCursorOf(PictureText right) {
    if (!isShown() || !right.isShown()) {
      return false;
    }
    String last = right.rows.get(right.rows.size() - 1);
    String prompt = last.substring(0, Math.max(0, last.length() - 1)).strip();
    return last.endsWith(String.valueOf(LIT)) && rows.get(rows.size() - 1).equals(prompt);
  }

  boolean hasNoStrip() {
    return rows.stream().noneMatch(r -> r.contains(STRIP));
  }

  /** Whether what is lit fills nearly all of the columns that a healthy row reaches over. */
  boolean isFilled() {
    int wide = rows.stream().mapToInt(String::length).max().orElse(0);
    long lit = rows.stream().flatMapToInt(String::chars).filter(c -> c != ' ').count();
    return rows.size() > 2 && lit > MOST * wide * rows.size();
  }

  /** Whether nearly all that is lit is no letter, on a glass that is not filled. */
  boolean hasNoLetters() {
    return isShown() && isAllLit() && !isFilled();
  }

  /** Whether the glass is filled, and nearly all of it is no letter. */
  boolean isSolid() {
    return isFilled() && isAllLit();
  }

  boolean isAllLit() {
    long lit = rows.stream().flatMapToInt(String::chars).filter(c -> c != ' ').count();
    long hashes = rows.stream().flatMapToInt(String::chars).filter(c -> c == LIT).count();
    return hashes >= MOST * lit;
  }

  /** Letters and figures row by row, rows without any left out. */
  List<String> letters() {
    return rows.stream()
        .map(row -> row.replaceAll("[^A-Za-z0-9]+", " ").strip())
        .filter(row -> !row.isEmpty())
        .toList();
  }

  /**
   * Whether of the letters of the right picture those of every second column are wrong, and only
   * those; or of all that stands there some, and only of every second column.
   */
  boolean isWrongInEverySecondColumn(PictureText right) {
    String row = right.rows.stream().filter(r -> WORD.matcher(r).find()).findFirst().orElse("");
    return !row.isEmpty() && rows.stream().anyMatch(is -> isHalf(is, row)) || isWrongAside(right);
  }

  private boolean isWrongAside(PictureText right) {
    int[] wrong = new int[2];
    for (int y = 0; y < rows.size() && rows.size() == right.rows.size(); y++) {
      String is = rows.get(y);
      String should = right.rows.get(y);
      for (int x = 0; x < Math.max(is.length(), should.length()); x++) {
        boolean same = x < is.length() && x < should.length() && is.charAt(x) == should.charAt(x);
        wrong[x & 1] += same ? 0 : 1;
      }
    }
    return Math.min(wrong[0], wrong[1]) == 0 && Math.max(wrong[0], wrong[1]) >= FEW;
  }

  private static boolean isHalf(String is, String right) {
    for (int aside = -ASIDE; aside <= ASIDE; aside++) {
      int[] letters = new int[2];
      int[] same = new int[2];
      for (int x = 0; x < right.length(); x++) {
        if (right.charAt(x) != ' ' && right.charAt(x) != LIT) {
          int at = x + aside;
          letters[x & 1]++;
          same[x & 1] += at >= 0 && at < is.length() && is.charAt(at) == right.charAt(x) ? 1 : 0;
        }
      }
      for (int side = 0; side < 2; side++) {
        if (same[side] > MOST * letters[side] && same[1 - side] < HALF * letters[1 - side]) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether a row with letters stands there more often than in the right picture. */
  boolean isRepeated(PictureText right) {
    return rows.stream()
        .filter(r -> r.chars().filter(c -> c != ' ').distinct().count() > 2)
        .anyMatch(r -> times(r) > Math.max(1, right.times(r)));
  }

  private long times(String row) {
    return rows.stream().filter(row::equals).count();
  }
}
