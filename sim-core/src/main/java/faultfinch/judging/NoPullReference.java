package faultfinch.judging;

import faultfinch.diagnosis.PriceList;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order of repairs that takes out fewest innocent chips of faults which show the same in every
 * look. Repairs that take out no chip come first. Of the others every order is tried if they are
 * few; of more, the one that cures most for a chip comes next.
 *
 * <p>With V(S) the chips taken out in vain after the repairs S, times weight: V(S) = least over the
 * repairs a of pulls(a) x weight that S and a leave uncured + V(S and a).
 */
final class NoPullReference implements Practice {
  private static final int MOST_EXACT = 16;

  /** What is known before the first repair: the row of the dictionary. */
  interface Classes {
    /** All that shows what this job shows. */
    List<Truth> of(Job job);
  }

  private final Map<List<Truth>, List<RepairAction>> orders = new LinkedHashMap<>();
  private final Classes classes;
  private final PriceList prices;

  NoPullReference(Classes classes, PriceList prices) {
    this.classes = classes;
    this.prices = prices;
  }

  @Override
  public void go(Visit visit) {
    List<Truth> alike = classes.of(visit.job());
    new InOrder(orders.computeIfAbsent(alike, this::order)).go(visit);
  }

  /** The order for faults that show the same. */
  List<RepairAction> order(List<Truth> alike) {
    Set<RepairAction> all = new LinkedHashSet<>();
    for (Truth truth : alike) {
      truth.suspect().cures().keySet().stream().filter(truth::curedBy).forEach(all::add);
    }
    List<RepairAction> order = new ArrayList<>();
    List<RepairAction> pulling = new ArrayList<>();
    for (RepairAction action : all) {
      (prices.repair(action).pulls() == 0 ? order : pulling).add(action);
    }
    List<Truth> left = left(alike, order);
    pulling.removeIf(a -> left.stream().noneMatch(t -> t.curedBy(a)));
    order.addAll(pulling.size() <= MOST_EXACT ? exact(left, pulling) : greedy(left, pulling));
    return order;
  }

  private static List<Truth> left(List<Truth> alike, List<RepairAction> made) {
    return alike.stream().filter(t -> made.stream().noneMatch(t::curedBy)).toList();
  }

  private List<RepairAction> exact(List<Truth> alike, List<RepairAction> actions) {
    int sets = 1 << actions.size();
    double[] uncured = uncured(alike, actions);
    double[] value = new double[sets];
    int[] next = new int[sets];
    for (int set = sets - 2; set >= 0; set--) {
      value[set] = Double.POSITIVE_INFINITY;
      for (int a = 0; a < actions.size(); a++) {
        int more = set | 1 << a;
        if (more != set) {
          double now = prices.repair(actions.get(a)).pulls() * uncured[more] + value[more];
          if (now < value[set]) {
            value[set] = now;
            next[set] = a;
          }
        }
      }
    }
    List<RepairAction> order = new ArrayList<>();
    for (int set = 0; set < sets - 1; set |= 1 << next[set]) {
      order.add(actions.get(next[set]));
    }
    return order;
  }

  /** Weight that each set of actions does not cure. */
  private static double[] uncured(List<Truth> alike, List<RepairAction> actions) {
    double[] uncured = new double[1 << actions.size()];
    for (Truth truth : alike) {
      int cures = 0;
      for (int a = 0; a < actions.size(); a++) {
        cures |= truth.curedBy(actions.get(a)) ? 1 << a : 0;
      }
      uncured[uncured.length - 1 & ~cures] += truth.weight();
    }
    // A fault that no action of a set cures is in all its subsets: sums over supersets.
    for (int a = 0; a < actions.size(); a++) {
      for (int set = 0; set < uncured.length; set++) {
        if ((set & 1 << a) == 0) {
          uncured[set] += uncured[set | 1 << a];
        }
      }
    }
    return uncured;
  }

  private List<RepairAction> greedy(List<Truth> alike, List<RepairAction> actions) {
    List<RepairAction> order = new ArrayList<>();
    while (order.size() < actions.size()) {
      List<Truth> left = left(alike, order);
      RepairAction best =
          actions.stream()
              .filter(a -> !order.contains(a))
              .max(Comparator.comparingDouble(a -> cured(left, a) / prices.repair(a).pulls()))
              .orElseThrow();
      order.add(best);
    }
    return order;
  }

  private static double cured(List<Truth> left, RepairAction action) {
    return left.stream().filter(t -> t.curedBy(action)).mapToDouble(Truth::weight).sum();
  }
}
