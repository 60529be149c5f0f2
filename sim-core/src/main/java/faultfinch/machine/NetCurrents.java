package faultfinch.machine;

import java.util.ArrayList;
import java.util.List;

/**
 * What flows into one net of a circuit at each driver and each load of it, summed over time: as it
 * is, and as it would be if the net were joined to the supply, or to ground, through {@value
 * #PUSH_OHMS} ohms. So little current leaves every level what it is, and goes to whatever holds the
 * net, by the law of the levels with one more resistor.
 *
 * <p>Drivers change seldom, so currents are worked out when they do and only time is added between.
 */
final class NetCurrents {
  /** What a net is pushed through; 5 mA at most. */
  static final int PUSH_OHMS = 1000;

  private static final int PUSH_MV = 5000;

  /** Between a low and a high level. */
  private static final int BETWEEN_MV = 1400;

  private static final int WAYS = PinCurrents.Way.values().length;

  private final Circuit circuit;
  private final int net;

  /** Pins of the circuit: drivers, then loads. */
  private final int[] pins;

  private final int[] drivers;
  private final int[] loadMv;
  private final int[] loadOhms;

  /** By way and pin: milliamperes now, and milliamperes times nanoseconds before. */
  private final double[][] now;

  private final double[][] sum;

  /** What the drivers do now, two bits each. */
  private final long[] state;

  private int mv;
  private double since;
  private boolean begun;
  private int lowest = Integer.MAX_VALUE;
  private int highest = Integer.MIN_VALUE;

  NetCurrents(Circuit circuit, int net) {
    this.circuit = circuit;
    this.net = net;
    drivers = circuit.drivers[net];
    List<HarmNotes.Load> loads = new ArrayList<>();
    for (HarmNotes.Load load : circuit.harm.loads) {
      int g = circuit.pin(load.pin().ref(), load.pin().pin());
      if (g >= 0 && circuit.netOf[g] == net) {
        loads.add(load);
      }
    }
    pins = new int[drivers.length + loads.size()];
    System.arraycopy(drivers, 0, pins, 0, drivers.length);
    loadMv = loads.stream().mapToInt(HarmNotes.Load::millivolts).toArray();
    loadOhms = loads.stream().mapToInt(HarmNotes.Load::ohms).toArray();
    for (int i = 0; i < loads.size(); i++) {
      pins[drivers.length + i] = circuit.pin(loads.get(i).pin().ref(), loads.get(i).pin().pin());
    }
    now = new double[WAYS][pins.length];
    sum = new double[WAYS][pins.length];
    state = new long[drivers.length];
  }

  void sample(Levels levels, double nanoseconds) {
    if (pins.length == 0) {
      lowest = Math.min(lowest, levels.mv[net]);
      highest = Math.max(highest, levels.mv[net]);
      return;
    }
    if (changed(levels)) {
      settle();
      currents();
    }
    since += nanoseconds;
  }

  private boolean changed(Levels levels) {
    boolean changed = !begun || mv != levels.mv[net];
    begun = true;
    for (int i = 0; i < drivers.length; i++) {
      int p = circuit.partOf[drivers[i]];
      int bit = circuit.bitOf[drivers[i]];
      long is = (levels.driven[p] >>> bit & 1) << 1 | levels.bits[p] >>> bit & 1;
      changed |= is != state[i];
      state[i] = is;
    }
    mv = levels.mv[net];
    lowest = Math.min(lowest, mv);
    highest = Math.max(highest, mv);
    return changed;
  }

  /** Counts what flowed until now. */
  private void settle() {
    for (int way = 0; way < WAYS; way++) {
      for (int i = 0; i < pins.length; i++) {
        sum[way][i] += now[way][i] * since;
      }
    }
    since = 0;
  }

  private void currents() {
    double siemens = 1.0 / PUSH_OHMS;
    double milliamps = 0;
    for (int i = 0; i < pins.length; i++) {
      if (ohms(i) != 0) {
        siemens += 1.0 / ohms(i);
        milliamps += (double) millivolts(i) / ohms(i);
      }
    }
    double[] across = {
      mv, (milliamps + (double) PUSH_MV / PUSH_OHMS) / siemens, milliamps / siemens
    };
    for (int way = 0; way < WAYS; way++) {
      for (int i = 0; i < pins.length; i++) {
        now[way][i] = ohms(i) == 0 ? 0 : (millivolts(i) - across[way]) / ohms(i);
      }
    }
  }

  private boolean isHigh(int i) {
    return (state[i] & 1) != 0;
  }

  /** Of a driver or a load; 0 if it does not drive. */
  private int ohms(int i) {
    if (i >= drivers.length) {
      return loadOhms[i - drivers.length];
    }
    boolean drives = (state[i] & 2) != 0 && !(circuit.collector[pins[i]] && isHigh(i));
    return !drives ? 0 : isHigh(i) ? circuit.highOhm[pins[i]] : circuit.lowOhm[pins[i]];
  }

  private int millivolts(int i) {
    if (i >= drivers.length) {
      return loadMv[i - drivers.length];
    }
    return isHigh(i) ? circuit.highMv[pins[i]] : circuit.lowMv[pins[i]];
  }

  /** Milliamperes times nanoseconds that came in at a pin. */
  double flowed(int pin, PinCurrents.Way way) {
    settle();
    double flowed = 0;
    for (int i = 0; i < pins.length; i++) {
      flowed += pins[i] == pin ? sum[way.ordinal()][i] : 0;
    }
    return flowed;
  }

  /** Whether the net was low, or high, whenever it was sampled. */
  boolean stays(boolean high) {
    return high ? lowest >= BETWEEN_MV : highest < BETWEEN_MV;
  }
}
