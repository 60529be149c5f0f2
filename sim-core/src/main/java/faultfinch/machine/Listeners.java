package faultfinch.machine;

import faultfinch.signal.Electrical;
import faultfinch.signal.Technology;
import java.util.Arrays;

/** Who reads each net, and from which level on they all read it alike. */
final class Listeners {
  /** The pins of the net read a level each in its own way. */
  static final int EACH = -1;

  static final int LOW = 0;
  static final int HIGH = 1;

  private static final int SCHMITT_FALLING = Electrical.figure("threshold.schmitt.falling");

  private final Circuit circuit;

  /** Up to this many millivolts every pin reads low; above the other every pin reads high. */
  private final int[] lowTo;

  private final int[] highFrom;

  /** Whether every pin reads a net high that floats with an LS input on it. */
  private final boolean[] floatsHigh;

  private final int[][] free;
  private final Readers[] readers;

  /** The readers of a circuit's nets. */
  Listeners(Circuit circuit, PartPins[] parts) {
    this.circuit = circuit;
    int nets = circuit.netCount;
    lowTo = new int[nets];
    highFrom = new int[nets];
    floatsHigh = new boolean[nets];
    free = new int[nets][];
    readers = new Readers[nets];
    for (int net = 0; net < nets; net++) {
      join(net, parts);
    }
  }

  private void join(int net, PartPins[] parts) {
    lowTo[net] = Integer.MAX_VALUE;
    highFrom[net] = Integer.MIN_VALUE;
    floatsHigh[net] = true;
    int[] found = new int[circuit.receivers[net].length];
    int n = 0;
    boolean each = false;
    for (int pin : circuit.receivers[net]) {
      each |= circuit.level[pin];
      if ((circuit.readMask[circuit.partOf[pin]] >>> circuit.bitOf[pin] & 1) == 0) {
        found[n++] = pin;
        boolean schmitt = circuit.technology[pin] == Technology.SCHMITT.ordinal();
        int low = schmitt ? SCHMITT_FALLING - 1 : circuit.threshold[pin];
        lowTo[net] = Math.min(lowTo[net], low);
        highFrom[net] = Math.max(highFrom[net], circuit.threshold[pin]);
        floatsHigh[net] &= circuit.technology[pin] != Technology.CMOS.ordinal();
      }
    }
    free[net] = Arrays.copyOf(found, n);
    if (each || n > Readers.MOST) {
      lowTo[net] = Integer.MIN_VALUE;
      highFrom[net] = Integer.MAX_VALUE;
      floatsHigh[net] = false;
    } else {
      readers[net] = new Readers(circuit, parts, free[net]);
    }
  }

  /** The pins that read a net and whose bits are free to move. */
  int[] free(int net) {
    return free[net];
  }

  /** Whether every pin reads a net driven or held at this level low, high, or each its own way. */
  int all(int net, int millivolts) {
    if (millivolts <= lowTo[net]) {
      return LOW;
    }
    return millivolts > highFrom[net] ? HIGH : EACH;
  }

  /** The same of a net that oscillates or floats with an LS input on it. */
  int others(int net, byte how) {
    return how == Levels.FLOATS_ON_LS && floatsHigh[net] ? HIGH : EACH;
  }

  /** Every pin of a net reads this; marks what follows those that read otherwise before. */
  void tell(int net, boolean high, long[] marks, int[] counted) {
    readers[net].tell(high, marks, counted);
  }
}
