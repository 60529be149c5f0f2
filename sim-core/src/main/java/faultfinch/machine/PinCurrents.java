package faultfinch.machine;

import faultfinch.board.Net;
import faultfinch.board.Pad;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How much flows into a net at each of its pins, from what drives it, loads it and is bridged to
 * it, in the mean over what was sampled. Currents are those of the levels: (what a driver gives -
 * the net's volts) / its ohms.
 *
 * <p>It is also told how much would flow if a net were joined to the supply, or to ground, through
 * a thousand ohms: {@link NetCurrents}.
 *
 * <p>Not modelled: what inputs and pull-ups give, below a milliampere, and resistors on the board,
 * which are not looked at pin by pin.
 */
public final class PinCurrents {
  private final Machine machine;
  private final Circuit circuit;
  private final List<NetCurrents> nets = new ArrayList<>();
  private final Map<Integer, NetCurrents> byNet = new LinkedHashMap<>();

  /** Milliamperes times nanoseconds by pin of the circuit, of bridges. */
  private final double[] bridged;

  private double sampled;

  /** How a pin is looked at. */
  public enum Way {
    /** As the board runs. */
    AS_IT_IS,
    /** With the net joined to the supply. */
    PUSHED_UP,
    /** With the net joined to ground. */
    PUSHED_DOWN
  }

  /** Of a machine whose wiring stays as it is now. */
  public PinCurrents(Machine machine) {
    this.machine = machine;
    circuit = machine.plain().circuit;
    bridged = new double[circuit.partOf.length];
    for (int net = 0; net < circuit.netCount; net++) {
      if (circuit.source[net] == Circuit.NO_SOURCE) {
        NetCurrents currents = new NetCurrents(circuit, net);
        nets.add(currents);
        byNet.put(net, currents);
      }
    }
  }

  /** Adds what flows now, for so many nanoseconds. */
  public void sample(double nanoseconds) {
    Levels levels = machine.plain().levels;
    for (NetCurrents net : nets) {
      net.sample(levels, nanoseconds);
    }
    for (HarmNotes.Bridge b : circuit.harm.bridges) {
      double across = machine.millivolts(b.other(), true) - machine.millivolts(b.one(), true);
      add(b.one(), across / b.ohms() * nanoseconds);
      add(b.other(), -across / b.ohms() * nanoseconds);
    }
    sampled += nanoseconds;
  }

  private void add(Pad pin, double flows) {
    int g = circuit.pin(pin.ref(), pin.pin());
    if (g >= 0) {
      bridged[g] += flows;
    }
  }

  /** Mean milliamperes into a net at each of its pins that a part has. */
  public Map<Pad, Double> into(Net net, Way way) {
    Map<Pad, Double> into = new LinkedHashMap<>();
    for (Pad pad : net.pads()) {
      int g = circuit.pin(pad.ref(), pad.pin());
      if (g >= 0 && sampled > 0) {
        NetCurrents there = byNet.get(circuit.netOf[g]);
        double flowed = there == null ? 0 : there.flowed(g, way);
        into.put(pad, (flowed + (way == Way.AS_IT_IS ? bridged[g] : 0)) / sampled);
      }
    }
    return into;
  }

  /** Whether a net was low, or high, at all its pins whenever it was sampled. */
  public boolean stays(Net net, boolean high) {
    return net.pads().stream()
        .mapToInt(pad -> circuit.pin(pad.ref(), pad.pin()))
        .filter(g -> g >= 0)
        .mapToObj(g -> byNet.get(circuit.netOf[g]))
        .allMatch(there -> there != null && there.stays(high));
  }
}
