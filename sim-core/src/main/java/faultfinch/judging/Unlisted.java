package faultfinch.judging;

import faultfinch.board.Net;
import faultfinch.fault.RepairAction;
import faultfinch.machine.Finger;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What is left to do where the advisor's list is no guide. The board is tried by hand, and what did
 * otherwise comes first, then what is joined to it. Where a rail is wrong, all parts are felt and
 * one that is hot is next, then what makes the rail or passes it on. Clocks, resets and selects are
 * looked at, and from the first that is wrong one goes upstream; then comes what touches any net at
 * which something was wrong; then the symptom decides. Of several repairs the one that helps most
 * often for its price comes first, with such a complaint and then with any.
 */
final class Unlisted implements Practice {
  private static final String HOT = Finger.HOT.name().toLowerCase(Locale.ROOT);

  private final Wires wires;
  private final SymptomFirst symptom;

  Unlisted(Wires wires, SymptomFirst symptom) {
    this.wires = wires;
    this.symptom = symptom;
  }

  @Override
  public void go(Visit visit) {
    byHand(visit);
    if (!visit.cured()) {
      byProbe(visit);
    }
    if (!visit.cured()) {
      symptom.go(visit);
    }
  }

  private void byHand(Visit visit) {
    for (String trial : wires.trials()) {
      if (visit.cured()) {
        return;
      }
      Set<String> parts = wires.otherwise(trial, visit.look(trial));
      repair(visit, action -> at(action, parts));
      Set<Net> nets = wires.signalsOf(parts);
      repair(visit, action -> wires.touches(action, nets));
    }
  }

  private void byProbe(Visit visit) {
    Upstream upstream = new Upstream(wires, visit);
    Set<Net> rails = upstream.rails();
    if (!rails.isEmpty()) {
      Set<String> hot = hot(visit);
      repair(visit, action -> at(action, hot));
      repair(visit, action -> wires.touches(action, rails));
    }
    if (!visit.cured()) {
      Optional<Net> source = upstream.source();
      source.ifPresent(net -> repair(visit, action -> wires.touches(action, Set.of(net))));
    }
    Set<Net> wrong = wires.wrong(visit.seen());
    repair(visit, action -> wires.touches(action, wrong));
  }

  private Set<String> hot(Visit visit) {
    Set<String> hot = new LinkedHashSet<>();
    for (String look : wires.touches()) {
      if (visit.look(look).equals(HOT)) {
        hot.add(look.substring(look.indexOf(' ') + 1));
      }
    }
    return hot;
  }

  private static boolean at(RepairAction action, Set<String> parts) {
    return Arrays.stream(action.place().split("[-& .]")).anyMatch(parts::contains);
  }

  private void repair(Visit visit, Predicate<RepairAction> which) {
    if (!visit.cured()) {
      symptom.go(visit, which);
    }
    if (!visit.cured()) {
      symptom.goByAll(visit, which);
    }
  }
}
