package faultfinch.judging;

import faultfinch.diagnosis.PriceList;
import faultfinch.diagnosis.Suspect;
import faultfinch.fault.RepairAction;
import java.util.List;

/**
 * What is wrong with a board. A fault that some action cures half of the time is two of these, each
 * of half the weight.
 *
 * @param lucky whether such an action cures it this time
 */
public record Truth(Suspect suspect, boolean lucky, double weight) {
  private static final int SURE = 100;

  /** One fault, as one or two. */
  public static List<Truth> of(Suspect suspect) {
    boolean chancy = suspect.cures().values().stream().anyMatch(c -> c < SURE);
    return chancy
        ? List.of(
            new Truth(suspect, true, suspect.weight() / 2),
            new Truth(suspect, false, suspect.weight() / 2))
        : List.of(new Truth(suspect, false, suspect.weight()));
  }

  /** Whether a repair cures it. */
  public boolean curedBy(RepairAction action) {
    int chance = suspect.cures().getOrDefault(action, 0);
    return chance == SURE || (lucky && chance > 0);
  }

  /** The cheapest repair that cures it; of equal ones the first of its list. */
  public RepairAction due(PriceList prices) {
    RepairAction due = suspect.repair();
    for (RepairAction action : suspect.cures().keySet()) {
      if (curedBy(action) && prices.repair(action).total() < prices.repair(due).total()) {
        due = action;
      }
    }
    return due;
  }
}
