package faultfinch.machine;

import faultfinch.board.Net;
import faultfinch.board.Pad;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Shares out what flows in a supply among the pins of one of its nets.
 *
 * <p>Not modelled: what a bridge to a line of the logic takes, which is the little its driver can
 * give or take.
 */
final class RailCurrents {
  private RailCurrents() {}

  /**
   * Milliamperes out of a net at each pin of it, those of its bridges among them. What several pins
   * of a part take together counts at the first.
   */
  static Map<Pad, Double> of(Net net, SupplyNodes nodes, HarmNotes harm, List<Branch> branches) {
    SupplySolver solved = new SupplySolver(branches, nodes.count());
    Map<Pad, Double> taken = new LinkedHashMap<>();
    net.pads().forEach(pad -> taken.put(pad, 0.0));
    for (int b = 0; b < branches.size(); b++) {
      Branch branch = branches.get(b);
      take(taken, nodes, branch.ref(), branch.from(), solved.currents[b]);
      take(taken, nodes, branch.ref(), branch.to(), -solved.currents[b]);
    }
    for (HarmNotes.Bridge bridge : harm.bridges) {
      OptionalInt one = nodes.node(bridge.one(), true);
      OptionalInt other = nodes.node(bridge.other(), true);
      if (one.isPresent() && other.isPresent()) {
        double flows =
            (solved.volts[one.getAsInt()] - solved.volts[other.getAsInt()]) / bridge.ohms();
        taken.computeIfPresent(bridge.one(), (pad, had) -> had + flows);
        taken.computeIfPresent(bridge.other(), (pad, had) -> had - flows);
      }
    }
    return taken;
  }

  private static void take(
      Map<Pad, Double> taken, SupplyNodes nodes, String ref, int node, double flows) {
    for (Map.Entry<Pad, Double> pin : taken.entrySet()) {
      Pad pad = pin.getKey();
      if (pad.ref().equals(ref) && nodes.node(pad, false).orElseThrow() == node) {
        pin.setValue(pin.getValue() + flows);
        return;
      }
    }
  }
}
