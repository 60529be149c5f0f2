package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.Map;

/**
 * A fault that could be the one.
 *
 * @param fault its text
 * @param place the part, net or lead it is at
 * @param weight how likely before anybody looked, above 0
 * @param repair the least action that surely cures it
 * @param cures chance of cure in per cent, 50 or 100, by action
 */
public record Suspect(
    String fault,
    String place,
    double weight,
    RepairAction repair,
    Map<RepairAction, Integer> cures) {
  private static final int SURE = 100;

  public Suspect {
    cures = Cures.of(cures);
    if (!(weight > 0)) {
      throw new IllegalArgumentException(
          "found weight " + weight + " for '" + fault + "', right would be above 0");
    }
    if (cures.getOrDefault(repair, 0) != SURE) {
      throw new IllegalArgumentException(
          "found '" + repair.text() + "' for '" + fault + "', right would be a sure cure");
    }
  }

  /** Whether this is sure to cure it. */
  public boolean surelyCuredBy(RepairAction action) {
    return cures.getOrDefault(action, 0) == SURE;
  }

  /** A suspect that only its own repair cures. */
  public static Suspect of(String fault, String place, double weight, RepairAction repair) {
    return new Suspect(fault, place, weight, repair, Map.of(repair, SURE));
  }
}
