package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.Pad;
import faultfinch.machine.Machine;
import faultfinch.machine.Power;
import faultfinch.machine.Setup;
import faultfinch.part.PartCatalog;
import faultfinch.symptom.Watching;
import java.util.OptionalInt;

/** What continuity and ohms show of a board that is switched off; no cycle is run. */
final class Unpowered {
  /** Through a fuse a meter still beeps. */
  private static final int BEEPS_BELOW_OHMS = 50;

  private Unpowered() {}

  static Reading of(Setup setup, Look look) {
    return of(new Machine(setup, Watching.KIND), Legs.of(setup), look);
  }

  static Reading of(Machine machine, Legs legs, Look look) {
    int dash = Looks.dash(look.place());
    if (look.kind() == Instruments.OHMS) {
      return ohms(machine, Looks.pad(look.place()));
    }
    if (dash < 0) {
      Pad pad = Looks.pad(look.place());
      return conducts(machine.point(pad, true) == legs.point(machine, pad));
    }
    Pad from = Looks.pad(look.place().substring(0, dash));
    Pad to = Looks.pad(look.place().substring(dash + 1));
    return conducts(
        isAcrossAFuse(machine, from, to) && isSupply(machine, from) && isSupply(machine, to)
            ? beeps(machine.power().ohms(from, to))
            : machine.point(from, true) == machine.point(to, true));
  }

  private static boolean isAcrossAFuse(Machine machine, Pad from, Pad to) {
    return from.ref().equals(to.ref())
        && machine.board().part(from.ref()).orElseThrow().type() == PartCatalog.FUSE;
  }

  private static Reading ohms(Machine machine, Pad pad) {
    Power power = machine.power();
    return Dial.ohms(
        isSupply(machine, pad)
            ? power.ohmsToGround(pad)
            : machine.ohmsToGround(machine.point(pad, true)));
  }

  private static boolean isSupply(Machine machine, Pad pad) {
    return machine.power().millivolts(pad, true).isPresent();
  }

  private static boolean beeps(OptionalInt ohms) {
    return ohms.isPresent() && ohms.getAsInt() < BEEPS_BELOW_OHMS;
  }

  private static Reading conducts(boolean conducts) {
    String says = conducts ? "conducts" : "open";
    return new Words(says, says);
  }
}
