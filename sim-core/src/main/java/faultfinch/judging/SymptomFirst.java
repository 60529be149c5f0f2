package faultfinch.judging;

import faultfinch.diagnosis.PriceList;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Makes the repair that helps most often with such a complaint for its price, then the next one.
 * After a repair in vain what it would have cured is out. Whoever has heard of no such complaint,
 * or has been through all that goes with it, goes by what fails at all.
 */
final class SymptomFirst implements Practice {
  private final Map<Complaint, List<Truth>> known;
  private final List<Truth> all;
  private final PriceList prices;

  /**
   * @param known what comes with each complaint
   * @param all that can be wrong
   */
  SymptomFirst(Map<Complaint, List<Truth>> known, List<Truth> all, PriceList prices) {
    this.known = known;
    this.all = List.copyOf(all);
    this.prices = prices;
  }

  @Override
  public void go(Visit visit) {
    go(visit, action -> true);
    if (!visit.cured()) {
      repair(all, visit, action -> true);
    }
  }

  /** The same with some of the repairs, of what goes with the complaint. */
  void go(Visit visit, Predicate<RepairAction> which) {
    repair(known.getOrDefault(visit.complaint(), List.of()), visit, which);
  }

  private void repair(List<Truth> suspected, Visit visit, Predicate<RepairAction> which) {
    List<Truth> left = new ArrayList<>(suspected);
    left.removeIf(t -> visit.made().stream().anyMatch(t::curedBy));
    Map<RepairAction, Double> chances = new LinkedHashMap<>();
    left.forEach(t -> add(t, t.weight(), chances));
    chances.keySet().removeIf(which.negate());
    while (!chances.isEmpty()) {
      RepairAction best = best(chances);
      if (visit.repair(best)) {
        return;
      }
      left.removeIf(
          t -> {
            boolean out = t.curedBy(best);
            if (out) {
              add(t, -t.weight(), chances);
            }
            return out;
          });
      chances.remove(best);
      chances.keySet().removeIf(a -> left.stream().noneMatch(t -> t.curedBy(a)));
    }
  }

  private static void add(Truth truth, double weight, Map<RepairAction, Double> chances) {
    for (RepairAction action : truth.suspect().cures().keySet()) {
      if (truth.curedBy(action)) {
        chances.merge(action, weight, Double::sum);
      }
    }
  }

  private RepairAction best(Map<RepairAction, Double> chances) {
    RepairAction best = chances.keySet().iterator().next();
    double most = -1;
    for (Map.Entry<RepairAction, Double> e : chances.entrySet()) {
      double value = e.getValue() / prices.repair(e.getKey()).total();
      if (value > most) {
        best = e.getKey();
        most = value;
      }
    }
    return best;
  }
}
