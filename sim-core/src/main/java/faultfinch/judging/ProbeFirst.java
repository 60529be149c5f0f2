package faultfinch.judging;

import faultfinch.board.Net;
import java.util.LinkedHashSet;
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
    Set<Net> probed = new LinkedHashSet<>();
    Optional<Net> wrong = wires.vital().stream().filter(n -> wrong(n, probed, visit)).findFirst();
    if (wrong.isPresent()) {
      Net source = source(wrong.get(), probed, visit);
      symptom.go(visit, action -> wires.touches(action, source));
    }
    if (!visit.cured()) {
      symptom.go(visit);
    }
  }

  /** Upstream as far as it is wrong. */
  private Net source(Net wrong, Set<Net> probed, Visit visit) {
    Net source = wrong;
    Optional<Net> before = Optional.of(wrong);
    while (before.isPresent()) {
      source = before.get();
      before = wires.before(source).stream().filter(n -> wrong(n, probed, visit)).findFirst();
    }
    return source;
  }

  /** Probes a net nobody has probed yet. */
  private boolean wrong(Net net, Set<Net> probed, Visit visit) {
    Optional<String> look = wires.look(net);
    return look.isPresent() && probed.add(net) && wires.wrong(look.get(), visit.look(look.get()));
  }
}
