package faultfinch.machine;

import faultfinch.board.Pad;
import faultfinch.signal.Phase;
import java.util.List;

/**
 * Currents between outputs, pulls and faults, phase by phase, weighted by the length of the phase:
 * two outputs that fight, a clamped pin, a lamp. Sums are in mV times mA (microwatts) and mA, times
 * nanoseconds.
 *
 * <p>An output that pulls low heats by the net's volts, one that pulls high by what is left to the
 * rail. What comes in at the rail is what all outputs and pulls give.
 */
final class SignalHeat {
  private static final int RAIL = Wiring.RAIL_MILLIVOLTS;

  private final Circuit circuit;
  private final List<Integer> lengths;
  private final double[] heat;
  private double fromRail;
  private long nanoseconds;

  SignalHeat(Circuit circuit, List<Integer> phaseNanoseconds) {
    this.circuit = circuit;
    this.lengths = phaseNanoseconds;
    this.heat = new double[circuit.parts.length];
  }

  /** Takes the levels of a settled phase. */
  void sample(Phase phase, Levels levels) {
    int weight = lengths.get(phase.ordinal());
    nanoseconds += weight;
    for (int net = 0; net < circuit.netCount; net++) {
      if (circuit.source[net] == Circuit.NO_SOURCE) {
        for (int pin : circuit.drivers[net]) {
          driver(pin, levels, weight);
        }
        for (int i = 0; i < circuit.loadMv[net].length; i++) {
          if (levels.loads(net, i)) {
            pulled(
                circuit.loadMv[net][i] - levels.mv[net],
                circuit.loadMv[net][i],
                circuit.loadOhm[net][i],
                weight);
          }
        }
      }
    }
    for (Coupling group : circuit.groups) {
      coupled(group, levels, weight);
    }
    for (HarmNotes.Load load : circuit.harm.loads) {
      clamped(load, levels, weight);
    }
  }

  private void driver(int pin, Levels levels, int weight) {
    int p = circuit.partOf[pin];
    long bit = 1L << circuit.bitOf[pin];
    boolean high = (levels.bits[p] & bit) != 0;
    boolean pulls = (levels.driven[p] & bit) != 0 && !(circuit.collector[pin] && high);
    int mv = levels.mv[circuit.netOf[pin]];
    if (pulls && high && mv < circuit.highMv[pin]) {
      double current = (double) (circuit.highMv[pin] - mv) / circuit.highOhm[pin];
      heat[p] += weight * current * (RAIL - mv);
      fromRail += weight * current;
    } else if (pulls && !high && mv > circuit.lowMv[pin]) {
      heat[p] += weight * (double) (mv - circuit.lowMv[pin]) / circuit.lowOhm[pin] * mv;
    }
  }

  private void pulled(int over, int from, int ohms, int weight) {
    if (over > 0 && from > 0 && circuit.railUp) {
      fromRail += (double) weight * over / ohms;
    }
  }

  private void coupled(Coupling group, Levels levels, int weight) {
    boolean[] closed = levels.closed(group);
    for (int e = 0; e < group.ohms().length; e++) {
      boolean onRail = rail(group.from()[e]) || rail(group.to()[e]);
      if (closed[e] && onRail) {
        int other = group.from()[e] < 0 ? group.to()[e] : group.from()[e];
        int drop = group.diode()[e] ? NetSolver.DIODE_MV : 0;
        boolean away = !group.diode()[e] || group.from()[e] < 0;
        if (other >= 0 && away) {
          pulled(RAIL - drop - levels.mv[group.nets()[other]], RAIL, group.ohms()[e], weight);
        }
      }
    }
  }

  private boolean rail(int end) {
    return end < 0 && circuit.source[-1 - end] == Circuit.RAIL;
  }

  /** Short circuits inside a part warm that part. */
  private void clamped(HarmNotes.Load load, Levels levels, int weight) {
    Pad pad = load.pin();
    int pin = circuit.pin(pad.ref(), pad.pin());
    int net = circuit.netOf[pin];
    if (circuit.source[net] == Circuit.NO_SOURCE) {
      double across = levels.mv[net] - load.millivolts();
      heat[circuit.partOf[pin]] += weight * across * across / load.ohms();
    }
  }

  /** Milliwatts in a part, the mean over what was sampled. */
  double milliwatts(int part) {
    return nanoseconds == 0 ? 0 : heat[part] / nanoseconds / 1000;
  }

  /** Milliamperes from the rail, the mean over what was sampled. */
  double milliamps() {
    return nanoseconds == 0 ? 0 : fromRail / nanoseconds;
  }
}
