package faultfinch.machine;

import faultfinch.fault.Condition;
import faultfinch.fault.Fault;
import java.util.ArrayList;
import java.util.List;

/** Which faults show in a run: those without a condition, and those whose condition is met. */
final class Showing {
  private static final int LOW_BELOW_MILLIVOLTS = 4750;

  private Showing() {}

  /** The same set-up with what does not show left out and conditions taken off. */
  static Setup of(Setup setup) {
    if (setup.faults().stream().allMatch(f -> f.condition().equals(Condition.ALWAYS))) {
      return setup;
    }
    List<Fault> showing = new ArrayList<>();
    for (Fault f : setup.faults()) {
      if (setup.surroundings().meets(f) || drawn(f, setup)) {
        showing.add(f.base());
      }
    }
    Power power = Power.of(setup.with(showing));
    setup.faults().stream()
        .filter(f -> f.condition().kind() == Condition.Kind.LOW_VOLTS)
        .filter(f -> volts(f, power) < LOW_BELOW_MILLIVOLTS)
        .forEach(f -> showing.add(f.base()));
    return setup.with(showing);
  }

  /** At the part itself, at the lowest point of the ripple; for a track, at the logic rail. */
  private static int volts(Fault fault, Power power) {
    return power.least(fault.place()).orElse(power.railMillivolts());
  }

  private static boolean drawn(Fault f, Setup setup) {
    return f.condition().kind() == Condition.Kind.ONE_POWER_ON_IN
        && Chance.below(
                f.condition().figure(), setup.seed(), Chance.of(f.base().text()), setup.powerOn())
            == 0;
  }
}
