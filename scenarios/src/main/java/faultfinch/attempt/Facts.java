package faultfinch.attempt;

import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.List;

/**
 * What is known of the board as it now is.
 *
 * @param seen readings of looks under plain conditions, in order
 * @param missed repairs that did not cure it
 */
record Facts(List<Seen> seen, List<RepairAction> missed) {
  static final Facts NONE = new Facts(List.of(), List.of());

  /** What one look showed, in the words of the dictionary. */
  record Seen(String look, String feature) {}

  Facts {
    seen = List.copyOf(seen);
    missed = List.copyOf(missed);
  }

  Facts and(String look, String feature) {
    List<Seen> more = new ArrayList<>(seen);
    more.add(new Seen(look, feature));
    return new Facts(more, missed);
  }

  Facts andMissed(RepairAction action) {
    List<RepairAction> more = new ArrayList<>(missed);
    more.add(action);
    return new Facts(seen, more);
  }
}
