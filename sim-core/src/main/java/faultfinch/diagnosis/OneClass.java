package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Candidates that no look parts: only repairs are left, one after the other, and what matters is
 * their order. Exact for few repairs, by dynamic programming over the sets of repairs made; for
 * more the next one is always the one that cures most for its price.
 */
final class OneClass {

  /** Repairs of which every order is tried. */
  static final int FEW = 13;

  private final Ground ground;
  private final int[] members;
  private final int[] actions;

  /** By member: what cures it, as numbers into the actions. */
  private final int[][] curing;

  OneClass(Ground ground, List<Integer> members) {
    this.ground = ground;
    this.members = new int[members.size()];
    curing = new int[members.size()][];
    Numbers numbers = new Numbers();
    for (int i = 0; i < curing.length; i++) {
      this.members[i] = members.get(i);
      int[] cures = ground.atoms()[members.get(i)].cures();
      curing[i] = new int[cures.length];
      for (int c = 0; c < cures.length; c++) {
        curing[i][c] = numbers.of(cures[c]);
      }
    }
    actions = numbers.all();
  }

  /** Numbers actions as they come. Most classes have three, some a hundred. */
  private static final class Numbers {
    private static final int GONE_THROUGH = 8;

    private final Map<Integer, Integer> known = new HashMap<>();
    private int[] actions = new int[GONE_THROUGH];
    private int count;

    int of(int action) {
      for (int i = 0; i < Math.min(count, GONE_THROUGH); i++) {
        if (actions[i] == action) {
          return i;
        }
      }
      Integer later = count < GONE_THROUGH ? null : known.get(action);
      if (later != null) {
        return later;
      }
      if (count >= GONE_THROUGH) {
        known.put(action, count);
      }
      actions = count == actions.length ? Arrays.copyOf(actions, 2 * count) : actions;
      actions[count] = action;
      return count++;
    }

    int[] all() {
      return Arrays.copyOf(actions, count);
    }
  }

  /** All that cure some of the members. */
  int[] actions() {
    return actions.clone();
  }

  boolean few() {
    return actions.length <= FEW;
  }

  /** Least minutes times weight that are left, by the set of the repairs made; of few only. */
  double[] byRepairsMade() {
    return byRepairsMade(new int[1 << actions.length]);
  }

  /**
   * @param next filled with the best repair after each set
   */
  private double[] byRepairsMade(int[] next) {
    int[] curedBy = new int[members.length];
    for (int i = 0; i < curedBy.length; i++) {
      for (int action : curing[i]) {
        curedBy[i] |= 1 << action;
      }
    }
    double[] least = new double[next.length];
    for (int made = least.length - 1; made >= 0; made--) {
      double weight = 0;
      for (int i = 0; i < curedBy.length; i++) {
        weight += (curedBy[i] & made) == 0 ? weight(i) : 0;
      }
      double best = weight > 0 ? Double.POSITIVE_INFINITY : 0;
      for (int a = 0; a < actions.length && weight > 0; a++) {
        if ((made >>> a & 1) == 0) {
          double sum = ground.price(actions[a]) * weight + least[made | 1 << a];
          if (sum < best) {
            best = sum;
            next[made] = a;
          }
        }
      }
      least[made] = best;
    }
    return least;
  }

  /**
   * No more than the least minutes times weight that are left after a repair, for any number of
   * them.
   *
   * @param made number of the repair among {@link #actions}, or below 0 for none
   */
  double atLeastAfter(int made) {
    boolean[] left = new boolean[members.length];
    double weight = 0;
    double due = 0;
    for (int i = 0; i < members.length; i++) {
      left[i] = made < 0 || !cures(i, made);
      if (left[i]) {
        weight += weight(i);
        due += ground.price(ground.atoms()[members[i]].own()) * weight(i);
      }
    }
    return Math.max(due, flowing(left, weight));
  }

  /**
   * As if each repair cured what it can cure at an even rate, and no two the same: the quickest
   * first, and what is uncured pays for every minute. No order of whole repairs cures more by any
   * time.
   */
  private double flowing(boolean[] left, double weight) {
    double[] cured = curedBy(left);
    List<Integer> quickest = new ArrayList<>();
    for (int a = 0; a < cured.length; a++) {
      quickest.add(a);
    }
    quickest.sort(Comparator.comparingDouble(a -> -cured[a] / ground.price(actions[a])));
    double sum = 0;
    double uncured = weight;
    for (int a : quickest) {
      if (uncured > 0 && cured[a] > 0) {
        double share = Math.min(1, uncured / cured[a]);
        sum += share * ground.price(actions[a]) * (uncured - share * cured[a] / 2);
        uncured -= share * cured[a];
      }
    }
    return sum;
  }

  /** What each action cures of the members that are left, times weight. */
  private double[] curedBy(boolean[] left) {
    double[] cured = new double[actions.length];
    for (int i = 0; i < members.length; i++) {
      if (left[i]) {
        for (int action : curing[i]) {
          cured[action] += weight(i);
        }
      }
    }
    return cured;
  }

  /** The repairs in the order to try them, until all is cured. */
  List<Integer> order() {
    List<Integer> order = new ArrayList<>();
    if (few()) {
      int[] next = new int[1 << actions.length];
      double[] least = byRepairsMade(next);
      for (int made = 0; least[made] > 0; made |= 1 << next[made]) {
        order.add(actions[next[made]]);
      }
      return order;
    }
    boolean[] left = new boolean[members.length];
    Arrays.fill(left, true);
    int many = members.length;
    while (many > 0) {
      double[] cured = curedBy(left);
      int best = 0;
      for (int a = 1; a < actions.length; a++) {
        boolean worth =
            cured[a] / ground.price(actions[a]) > cured[best] / ground.price(actions[best]);
        best = worth ? a : best;
      }
      for (int i = 0; i < members.length; i++) {
        if (left[i] && cures(i, best)) {
          left[i] = false;
          many--;
        }
      }
      order.add(actions[best]);
    }
    return order;
  }

  private double weight(int number) {
    return ground.atoms()[members[number]].weight();
  }

  private boolean cures(int number, int action) {
    for (int curing : curing[number]) {
      if (curing == action) {
        return true;
      }
    }
    return false;
  }
}
