package faultfinch.judging;

import faultfinch.board.Net;
import java.util.Optional;
import java.util.Set;

/**
 * Probes rails, clocks, resets and selects. From the first that is wrong it goes upstream, as long
 * as something that goes into it is wrong too, and repairs there what helps most often with such a
 * complaint for its price. Where that was in vain, or all of them are right, the symptom decides.
 *
 * <p>It does not go on to all other nets: that was tried and costs more.
 */
final class ProbeFirst implements Practice {
  private final Wires wires;
  private final SymptomFirst symptom;

  /**
   * @param symptom says which of several repairs comes first
   */
  ProbeFirst(Wires wires, SymptomFirst symptom) {
    this.wires = wires;
    this.symptom = symptom;
  }

  @Override
  public void go(Visit visit) {
    Optional<Net> source = new Upstream(wires, visit).source();
    source.ifPresent(net -> symptom.go(visit, action -> wires.touches(action, Set.of(net))));
    if (!visit.cured()) {
      symptom.go(visit);
    }
  }
}
