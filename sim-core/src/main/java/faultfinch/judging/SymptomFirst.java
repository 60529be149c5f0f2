package faultfinch.judging;

import faultfinch.diagnosis.PriceList;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

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

  /** The same of all that can be wrong, whatever is complained of. */
  void goByAll(Visit visit, Predicate<RepairAction> which) {
    repair(all, visit, which);
  }

  /** What a repair would cure of what is left. */
  private static final class Chance {
    private double weight;
    private int truths;
  }

  private void repair(List<Truth> suspected, Visit visit, Predicate<RepairAction> which) {
    List<Truth> left = new ArrayList<>(suspected);
    left.removeIf(t -> visit.made().stream().anyMatch(t::curedBy));
    Map<RepairAction, Chance> chances = new LinkedHashMap<>();
    for (Truth truth : left) {
      cures(truth).filter(which).forEach(a -> add(chances, a, truth));
    }
    while (!chances.isEmpty()) {
      RepairAction best = best(chances);
      if (visit.repair(best)) {
        return;
      }
      List<Truth> out = left.stream().filter(t -> t.curedBy(best)).toList();
      left.removeIf(t -> t.curedBy(best));
      for (Truth truth : out) {
        cures(truth).filter(chances::containsKey).forEach(a -> take(chances, a, truth));
      }
    }
  }

  private static Stream<RepairAction> cures(Truth truth) {
    return truth.suspect().cures().keySet().stream().filter(truth::curedBy);
  }

  private static void add(Map<RepairAction, Chance> chances, RepairAction action, Truth truth) {
    Chance chance = chances.computeIfAbsent(action, a -> new Chance());
    chance.weight += truth.weight();
    chance.truths++;
  }

  private static void take(Map<RepairAction, Chance> chances, RepairAction action, Truth truth) {
    Chance chance = chances.get(action);
    chance.weight -= truth.weight();
    chance.truths--;
    if (chance.truths == 0) {
      chances.remove(action);
    }
  }

  private RepairAction best(Map<RepairAction, Chance> chances) {
    return chances.entrySet().stream()
        .max(
            Comparator.comparingDouble(
                e -> e.getValue().weight / prices.repair(e.getKey()).total()))
        .orElseThrow()
        .getKey();
  }
}
