package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.List;

/**
 * What is known of a board on the bench.
 *
 * @param seen in the order of the entries
 * @param missed repairs that were made and did not cure
 */
public record Evidence(List<Observation> seen, List<RepairAction> missed) {

  /** Nothing known. */
  public static final Evidence NONE = new Evidence(List.of(), List.of());

  public Evidence {
    seen = List.copyOf(seen);
    missed = List.copyOf(missed);
  }

  /** Only these observations. */
  public static Evidence of(Observation... seen) {
    return new Evidence(List.of(seen), List.of());
  }

  /** This and one more observation. */
  public Evidence and(Observation more) {
    List<Observation> longer = new ArrayList<>(seen);
    longer.add(more);
    return new Evidence(longer, missed);
  }

  /** This and one more repair without success. */
  public Evidence andMissed(RepairAction action) {
    List<RepairAction> longer = new ArrayList<>(missed);
    longer.add(action);
    return new Evidence(seen, longer);
  }
}
