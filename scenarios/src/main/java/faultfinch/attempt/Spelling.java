package faultfinch.attempt;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds what may have been meant by something typed: whole lines, few of them, nearest first. */
final class Spelling {
  private static final int OFFERED = 3;

  private Spelling() {}

  /** At most three of the lines, those that need the fewest letters changed. */
  static List<String> nearest(String typed, Collection<String> lines) {
    String small = typed.toLowerCase(Locale.ROOT);
    return lines.stream()
        .sorted(Comparator.comparingInt(l -> distance(small, l.toLowerCase(Locale.ROOT))))
        .limit(OFFERED)
        .toList();
  }

  /** Letters to put in, take out or change. */
  static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      before[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] now = new int[b.length() + 1];
      now[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = before[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        now[j] = Math.min(change, 1 + Math.min(before[j], now[j - 1]));
      }
      before = now;
    }
    return before[b.length()];
  }
}
