package faultfinch.board;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** What someone may have meant by a name that does not exist: the names spelled most like it. */
public final class NearNames {
  private static final int OFFERED = 3;
  private static final int MORE_OR_LESS = 2;
  private static final int LETTER = 3;

  /** Another number, or small for capital letters, is the likelier slip. */
  private static final int DIGIT = 1;

  private NearNames() {}

  /**
   * The nearest names as they go into a sentence, {@code Y0/, Y1/ or Y2/}: nearest first, and none
   * that is much farther than the nearest.
   */
  public static String of(String found, Collection<String> names) {
    int nearest = names.stream().mapToInt(n -> distance(found, n)).min().orElse(0);
    List<String> near =
        names.stream()
            .filter(n -> distance(found, n) <= nearest + DIGIT)
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

  /** What it costs to put in, take out and change letters until one name is the other. */
  private static int distance(String a, String b) {
    int[] before = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      before[j] = MORE_OR_LESS * j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] now = new int[b.length() + 1];
      now[0] = MORE_OR_LESS * i;
      for (int j = 1; j <= b.length(); j++) {
        int change = before[j - 1] + cost(a.charAt(i - 1), b.charAt(j - 1));
        now[j] = Math.min(change, MORE_OR_LESS + Math.min(before[j], now[j - 1]));
      }
      before = now;
    }
    return before[b.length()];
  }

  private static int cost(char a, char b) {
    if (a == b) {
      return 0;
    }
    boolean slip =
        Character.isDigit(a) && Character.isDigit(b)
            || Character.toLowerCase(a) == Character.toLowerCase(b);
    return slip ? DIGIT : LETTER;
  }
}
