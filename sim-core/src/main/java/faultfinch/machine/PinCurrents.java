package faultfinch.machine;

import faultfinch.board.Net;
import faultfinch.board.Pad;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How much flows into a net at each of its pins, from what drives it, loads it and is bridged to
 * it, in the mean over what was sampled. Currents are those of the levels: (what a driver gives -
 * the net's volts) / its ohms.
 *
 * <p>Not modelled: what inputs and pull-ups give, below a milliampere, and resistors on the board,
 * which are not looked at pin by pin.
 */
public final class PinCurrents {
  private final Machine machine;
  private final Circuit circuit;

  /** Milliamperes times nanoseconds by pin of the circuit. */
  private final double[] flowed;

  private double sampled;

  /** Of a machine whose wiring stays as it is now. */
  public PinCurrents(Machine machine) {
    this.machine = machine;
    circuit = machine.plain().circuit;
    flowed = new double[circuit.partOf.length];
  }

  /** Adds what flows now, for so many nanoseconds. */
  public void sample(double nanoseconds) {
    Levels levels = machine.plain().levels;
    for (int net = 0; net < circuit.netCount; net++) {
      if (circuit.source[net] == Circuit.NO_SOURCE) {
        for (int g : circuit.drivers[net]) {
          flowed[g] += driven(levels, g, levels.mv[net]) * nanoseconds;
        }
      }
    }
    for (HarmNotes.Load l : circuit.harm.loads) {
      double across = l.millivolts() - machine.millivolts(l.pin(), false);
      add(l.pin(), across / l.ohms() * nanoseconds);
    }
    for (HarmNotes.Bridge b : circuit.harm.bridges) {
      double across = machine.millivolts(b.other(), true) - machine.millivolts(b.one(), true);
      add(b.one(), across / b.ohms() * nanoseconds);
      add(b.other(), -across / b.ohms() * nanoseconds);
    }
    sampled += nanoseconds;
  }

  private double driven(Levels levels, int g, int mv) {
    int p = circuit.partOf[g];
    boolean high = (levels.bits[p] >>> circuit.bitOf[g] & 1) != 0;
    boolean drives = (levels.driven[p] >>> circuit.bitOf[g] & 1) != 0;
    int ohms = high ? circuit.highOhm[g] : circuit.lowOhm[g];
    if (!drives || ohms == 0 || circuit.collector[g] && high) {
      return 0;
    }
    return (double) ((high ? circuit.highMv[g] : circuit.lowMv[g]) - mv) / ohms;
  }

  private void add(Pad pin, double flows) {
    int g = circuit.pin(pin.ref(), pin.pin());
    if (g >= 0) {
      flowed[g] += flows;
    }
  }

  /** Mean milliamperes into a net at each of its pins that a part has. */
  public Map<Pad, Double> into(Net net) {
    Map<Pad, Double> into = new LinkedHashMap<>();
    for (Pad pad : net.pads()) {
      int g = circuit.pin(pad.ref(), pad.pin());
      if (g >= 0 && sampled > 0) {
        into.put(pad, flowed[g] / sampled);
      }
    }
    return into;
  }
}
