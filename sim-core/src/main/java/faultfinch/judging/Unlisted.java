package faultfinch.judging;

import faultfinch.board.Net;
import java.util.Set;

/**
 * What is left to do where the advisor's list is no guide. Rails, clocks, resets and selects are
 * looked at, and from the first that is wrong one goes upstream; then comes what touches any net at
 * which something was wrong; then the symptom decides. Of several repairs the one that helps most
 * often for its price comes first, with such a complaint and then with any.
 */
final class Unlisted implements Practice {
  private final Wires wires;
  private final SymptomFirst symptom;

  Unlisted(Wires wires, SymptomFirst symptom) {
    this.wires = wires;
    this.symptom = symptom;
  }

  @Override
  public void go(Visit visit) {
    new Upstream(wires, visit).source().ifPresent(source -> repair(visit, Set.of(source)));
    if (!visit.cured()) {
      repair(visit, wires.wrong(visit.seen()));
    }
    if (!visit.cured()) {
      symptom.go(visit);
    }
  }

  private void repair(Visit visit, Set<Net> nets) {
    symptom.go(visit, action -> wires.touches(action, nets));
    if (!visit.cured()) {
      symptom.goByAll(visit, action -> wires.touches(action, nets));
    }
  }
}
