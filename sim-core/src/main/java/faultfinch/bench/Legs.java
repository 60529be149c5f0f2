package faultfinch.bench;

import faultfinch.board.Pad;
import faultfinch.fault.Open;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Where a probe on a leg touches. The machine knows the die and the pad; a leg belongs to the die,
 * unless the break is inside the package: then it belongs to the pad.
 *
 * @param brokenInside legs of which the break is inside
 */
public record Legs(Set<Pad> brokenInside) {

  /** The legs of a board with its faults. */
  public static Legs of(Setup setup) {
    return new Legs(
        setup.faults().stream()
            .map(f -> f.base())
            .filter(f -> f instanceof Open o && o.at() == Open.Break.PIN)
            .map(f -> ((Open) f).pad())
            .collect(Collectors.toUnmodifiableSet()));
  }

  /** Whether a leg carries what its pad carries, whatever the die does. */
  boolean asPad(Pad leg) {
    return brokenInside.contains(leg);
  }

  /** Millivolts at a leg in the phase now settled; of the supply what its network gives. */
  public int millivolts(Machine machine, Pad leg) {
    return machine
        .power()
        .millivolts(leg, asPad(leg))
        .orElseGet(() -> machine.millivolts(leg, asPad(leg)));
  }

  /** Whether nothing drives a leg, which none of the supply is said of. */
  public boolean floats(Machine machine, Pad leg) {
    return machine.power().millivolts(leg, asPad(leg)).isEmpty()
        && machine.floating(leg, asPad(leg));
  }

  /** Hertz of a clock that moves by itself, at the leg; 0 of all else. */
  public double clockHertz(Machine machine, Pad leg) {
    return machine.clockHertz(leg, asPad(leg));
  }

  /** Share of time that such a clock is high. */
  public double clockDuty(Machine machine, Pad leg) {
    return machine.clockDuty(leg, asPad(leg));
  }

  /** Whether a leg does not come to rest within a phase. */
  public boolean oscillates(Machine machine, Pad leg) {
    return machine.oscillating(leg, asPad(leg));
  }

  /** The machine's number of the net a leg is on. */
  int point(Machine machine, Pad leg) {
    return machine.point(leg, asPad(leg));
  }
}
