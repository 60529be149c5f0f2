package faultfinch.desk;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds what a copied text may stand for where no fault of the list shows just that: the outcomes
 * that hold the most alike text, if it is more alike than any of the healthy board's. A line of the
 * picture that is spoilt in every second column is like one that is spoilt in all.
 */
final class NearCopy {
  /** Shorter texts are like too much. */
  private static final int SHORTEST = 8;

  /** One sign in so many may be another. */
  private static final int SIGNS_FOR_ONE = 6;

  private NearCopy() {}

  /**
   * The outcomes that are meant; none if nothing is alike.
   *
   * @param rows of the outcomes, in one line each, the healthy board's first
   */
  static List<String> of(String copied, List<String> outcomes, List<String> rows) {
    String text = copied.strip().replaceAll(" +", " ");
    if (text.length() < SHORTEST) {
      return List.of();
    }
    int[] off = rows.stream().mapToInt(row -> distance(text, row)).toArray();
    int least = off[0] - 1;
    for (int distance : off) {
      least = Math.min(least, distance);
    }
    if (least > text.length() / SIGNS_FOR_ONE) {
      return List.of();
    }
    List<String> near = new ArrayList<>();
    for (int i = 0; i < off.length; i++) {
      if (off[i] == least) {
        near.add(outcomes.get(i));
      }
    }
    return near;
  }

  /** Signs to change, put in or leave out in a text to find it anywhere in a row. */
  private static int distance(String text, String row) {
    int[] before = new int[row.length() + 1];
    for (int i = 1; i <= text.length(); i++) {
      int[] now = new int[row.length() + 1];
      now[0] = i;
      for (int j = 1; j <= row.length(); j++) {
        int same = before[j - 1] + (text.charAt(i - 1) == row.charAt(j - 1) ? 0 : 1);
        now[j] = Math.min(same, 1 + Math.min(before[j], now[j - 1]));
      }
      before = now;
    }
    int least = text.length();
    for (int distance : before) {
      least = Math.min(least, distance);
    }
    return least;
  }
}
