package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Candidates that no look parts: only repairs are left, one after the other, and what matters is
 * their order. Exact for few repairs, by dynamic programming over the sets of repairs made; for
 * more the next one is always the one that cures most for its price.
 */
final class OneClass {

  /** Repairs of which every order is tried. */
  static final int FEW = 13;

  private final Ground ground;
  private final List<Integer> members;
  private final int[] actions;

  OneClass(Ground ground, List<Integer> members) {
    this.ground = ground;
    this.members = List.copyOf(members);
    List<Integer> curing = new ArrayList<>();
    for (int member : members) {
      for (int action : ground.atoms()[member].cures()) {
        if (!curing.contains(action)) {
          curing.add(action);
        }
      }
    }
    actions = curing.stream().mapToInt(Integer::intValue).toArray();
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
    int[] curedBy = new int[members.size()];
    for (int i = 0; i < curedBy.length; i++) {
      for (int a = 0; a < actions.length; a++) {
        curedBy[i] |= cures(members.get(i), actions[a]) ? 1 << a : 0;
      }
    }
    double[] least = new double[next.length];
    for (int made = least.length - 1; made >= 0; made--) {
      double weight = 0;
      for (int i = 0; i < curedBy.length; i++) {
        weight += (curedBy[i] & made) == 0 ? weight(members.get(i)) : 0;
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
   * @param made the repair, or below 0 for none
   */
  double atLeastAfter(int made) {
    List<Integer> left = new ArrayList<>();
    double weight = 0;
    double due = 0;
    for (int member : members) {
      if (made < 0 || !cures(member, made)) {
        left.add(member);
        weight += weight(member);
        due += ground.price(ground.atoms()[member].own()) * weight(member);
      }
    }
    return Math.max(due, flowing(left, weight));
  }

  /**
   * As if each repair cured what it can cure at an even rate, and no two the same: the quickest
   * first, and what is uncured pays for every minute. No order of whole repairs cures more by any
   * time.
   */
  private double flowing(List<Integer> left, double weight) {
    double[] cured = new double[actions.length];
    for (int a = 0; a < cured.length; a++) {
      for (int member : left) {
        cured[a] += cures(member, actions[a]) ? weight(member) : 0;
      }
    }
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
    List<Integer> left = new ArrayList<>(members);
    while (!left.isEmpty()) {
      int best = actions[0];
      for (int action : actions) {
        best = worth(action, left) > worth(best, left) ? action : best;
      }
      int made = best;
      left.removeIf(member -> cures(member, made));
      order.add(best);
    }
    return order;
  }

  private double worth(int action, List<Integer> left) {
    double cured = 0;
    for (int member : left) {
      cured += cures(member, action) ? weight(member) : 0;
    }
    return cured / ground.price(action);
  }

  private double weight(int member) {
    return ground.atoms()[member].weight();
  }

  private boolean cures(int member, int action) {
    return Arrays.binarySearch(ground.atoms()[member].cures(), action) >= 0;
  }
}
