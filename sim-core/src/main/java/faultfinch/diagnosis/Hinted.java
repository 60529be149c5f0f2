package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.List;
import java.util.Set;

/**
 * How well each suspect explains what came of spraying, pressing or piggybacking a part, or of an
 * ohmmeter across two lines. How often such a thing helps is judgement, by whether the fault is
 * inside that part, at a contact of it, or elsewhere: whether a contact gives under a thumb is in
 * no run.
 */
final class Hinted {
  private static final Set<RepairAction.Kind> INSIDE =
      Set.of(
          RepairAction.Kind.EXCHANGE,
          RepairAction.Kind.DESOLDER_AND_SOCKET,
          RepairAction.Kind.EXCHANGE_SMALL);

  private static final Set<RepairAction.Kind> CONTACT =
      Set.of(
          RepairAction.Kind.NEW_SOCKET,
          RepairAction.Kind.RESEAT,
          RepairAction.Kind.REFLOW,
          RepairAction.Kind.STRAIGHTEN_LEG);

  private final List<Hint> hints;
  private final ErrorRates rates;
  private final double outside;

  Hinted(Suspects suspects, ErrorRates rates, Evidence evidence) {
    hints = evidence.hints();
    this.rates = rates;
    double log = 0;
    for (Hint hint : hints) {
      double sum = 0;
      for (Suspect suspect : suspects.all()) {
        sum += suspect.weight() * chance(hint, suspect);
      }
      log += StrictMath.log(sum / suspects.weight());
    }
    outside = log;
  }

  /** Logarithm of all hints if this is what is wrong. */
  double of(Suspect suspect) {
    double log = 0;
    for (Hint hint : hints) {
      log += StrictMath.log(chance(hint, suspect));
    }
    return log;
  }

  /** The same if it is none of the list: as often as the list would have it. */
  double outside() {
    return outside;
  }

  private double chance(Hint hint, Suspect suspect) {
    if (hint.how() == Hint.How.ACROSS) {
      double reads =
          rates.helps(hint.how(), hint.faults().contains(suspect.fault()) ? "inside" : "elsewhere");
      return hint.helped() ? reads : 1 - reads;
    }
    boolean there = suspect.place().equals(hint.part());
    RepairAction.Kind kind = suspect.repair().kind();
    String where =
        there && INSIDE.contains(kind)
            ? "inside"
            : there && CONTACT.contains(kind) ? "contact" : "elsewhere";
    double helps = rates.helps(hint.how(), where);
    return hint.helped() ? helps : 1 - helps;
  }
}
