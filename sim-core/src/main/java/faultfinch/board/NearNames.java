package faultfinch.board;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** What someone may have meant by a name that does not exist: the names spelled most like it. */
public final class NearNames {
  private static final int OFFERED = 3;

  private NearNames() {}

  /** The nearest names as they go into a sentence, {@code Y1/, Y2/ or Y3/}; nearest first. */
  public static String of(String found, Collection<String> names) {
    List<String> near =
        names.stream()
            .sorted(Comparator.comparingInt(n -> distance(found, n))) // stable: ties keep order
            .limit(OFFERED)
            .toList();
    return alternatives(near);
  }

  /** All of these in their order, as they go into a sentence; "nothing" for none. */
  public static String alternatives(List<String> names) {
    if (names.isEmpty()) {
      return "nothing";
    }
    int last = names.size() - 1;
    return last == 0
        ? names.get(0)
        : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
  }

  /** Letters to put in, take out or change, where a change of case alone is half a change. */
  private static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      before[j] = 2 * j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] now = new int[b.length() + 1];
      now[0] = 2 * i;
      for (int j = 1; j <= b.length(); j++) {
        int change = before[j - 1] + cost(a.charAt(i - 1), b.charAt(j - 1));
        now[j] = Math.min(change, 2 + Math.min(before[j], now[j - 1]));
      }
      before = now;
    }
    return before[b.length()];
  }

  private static int cost(char a, char b) {
    if (a == b) {
      return 0;
    }
    return Character.toLowerCase(a) == Character.toLowerCase(b) ? 1 : 2;
  }
}
