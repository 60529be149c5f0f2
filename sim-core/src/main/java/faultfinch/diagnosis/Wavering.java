package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.Set;

/**
 * What shows at some times and not at others is sooner a contact than the inside of a chip: so much
 * more a fault counts that would account for it by coming and going.
 */
final class Wavering {
  /** Least repairs of faults of contact: sockets, seating, joints, legs. */
  private static final Set<RepairAction.Kind> CONTACTS =
      Set.of(
          RepairAction.Kind.RESEAT,
          RepairAction.Kind.NEW_SOCKET,
          RepairAction.Kind.REFLOW,
          RepairAction.Kind.STRAIGHTEN_LEG);

  private final Likelihoods likelihoods;
  private final double more;

  Wavering(ErrorRates rates, Likelihoods likelihoods) {
    this.likelihoods = likelihoods;
    more = StrictMath.log(rates.contactsComeAndGo() / rates.comesAndGoes());
  }

  /** Logarithm of how much more a fault counts. */
  double of(Suspect suspect, int row) {
    if (CONTACTS.contains(suspect.repair().kind())) {
      for (int i = 0; i < likelihoods.weighed().size(); i++) {
        Tally tally = likelihoods.weighed().get(i).reach().tally();
        boolean wavers = !tally.equals(Tally.ONCE) && !tally.always();
        boolean other =
            likelihoods.matches(i, row) != likelihoods.matches(i, FaultDictionary.HEALTHY);
        if (wavers && other) {
          return more;
        }
      }
    }
    return 0;
  }
}
