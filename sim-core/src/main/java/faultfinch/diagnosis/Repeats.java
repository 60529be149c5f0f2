package faultfinch.diagnosis;

import java.util.Arrays;
import java.util.List;

/** Which observations are of a look that was made before, and whether it showed the same. */
final class Repeats {
  private static final int NONE = -1;

  private final List<Observation> weighed;
  private final int[] last;
  private final int[] lastBeforeRepair;

  /**
   * @param weighed in order
   */
  Repeats(List<Observation> weighed) {
    this.weighed = weighed;
    last = new int[weighed.size()];
    Arrays.fill(last, NONE);
    lastBeforeRepair = last.clone();
    for (int i = 0; i < last.length; i++) {
      for (int j = 0; j < i; j++) {
        if (weighed.get(j).look().equals(weighed.get(i).look())) {
          last[i] = j;
          lastBeforeRepair[i] =
              weighed.get(j).after() < weighed.get(i).after() ? j : lastBeforeRepair[i];
        }
      }
    }
  }

  /** Whether the i-th observation is of a look made before a repair that came in between. */
  boolean acrossRepairs(int i) {
    return lastBeforeRepair[i] != NONE;
  }

  /** The same look as it was last made before a repair that came in between. */
  int beforeRepair(int i) {
    return lastBeforeRepair[i];
  }

  /** Whether it was then what it is now. */
  boolean unchangedByRepair(int i) {
    return agree(lastBeforeRepair[i], i);
  }

  /** Whether the i-th observation is what the same look showed when it was last made. */
  boolean seenAgain(int i) {
    return agree(last[i], i);
  }

  /** The same look as it was last made, by anybody. */
  int last(int i) {
    return last[i];
  }

  private boolean agree(int one, int other) {
    return one != NONE && same(weighed.get(one), weighed.get(other));
  }

  /** Whether two observations of one look agree in an outcome. */
  static boolean same(Observation one, Observation other) {
    return outcomes(one).stream().anyMatch(outcomes(other)::contains);
  }

  private static List<String> outcomes(Observation seen) {
    return seen.reach().sights().stream().flatMap(s -> s.outcomes().stream()).toList();
  }
}
