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

  private static final int WORDS = 3;
  private static final int PART_BITS = 20;
  private static final int PART_MASK = (1 << PART_BITS) - 1;
  private static final long WIDE = 1L << 61;
  private static final long SILENCES = 1L << 62;
  private static final long RISES = 1L << 63;

  private final Circuit circuit;

  /** Up to this many millivolts every pin reads low; above the other every pin reads high. */
  private final int[] lowTo;

  private final int[] highFrom;

  /** Whether every pin reads a net high that floats with an LS input on it. */
  private final boolean[] floatsHigh;

  /** By net where its readers begin in the words below, and those of the next net. */
  private final int[] from;

  /**
   * Three words a reader whose bit is free to move: its bit, the outputs that follow it as marks of
   * one word, and its part, that word and what else there is to do. The inner loop reads one after
   * the other and nothing else.
   */
  private final long[] words;

  private final int[] pins;
  private final NodeSet[] silenced;
  private final PartPins[] parts;

  /** The readers of a circuit's nets. */
  Listeners(Circuit circuit, PartPins[] parts) {
    this.circuit = circuit;
    int nets = circuit.netCount;
    lowTo = new int[nets];
    highFrom = new int[nets];
    floatsHigh = new boolean[nets];
    this.parts = parts;
    int[][] free = new int[nets][];
    from = new int[nets + 1];
    for (int net = 0; net < nets; net++) {
      free[net] = join(net);
      from[net + 1] = from[net] + free[net].length;
    }
    words = new long[WORDS * from[nets]];
    pins = new int[from[nets]];
    silenced = new NodeSet[from[nets]];
    for (int net = 0; net < nets; net++) {
      for (int i = 0; i < free[net].length; i++) {
        enter(from[net] + i, free[net][i]);
      }
    }
  }

  private void enter(int at, int pin) {
    int p = circuit.partOf[pin];
    long bit = 1L << circuit.bitOf[pin];
    int[] followers = circuit.followers[pin];
    int word = followers.length == 0 ? 0 : followers[0] >> 6;
    long marks = 0;
    long flags = (circuit.risePins[p] & bit) != 0 ? RISES : 0;
    for (int node : followers) {
      marks |= 1L << node;
      flags |= node >> 6 != word ? WIDE : 0;
    }
    pins[at] = pin;
    silenced[at] = NodeSet.silenced(circuit, p, bit);
    flags |= silenced[at].isEmpty() ? 0 : SILENCES;
    words[WORDS * at] = bit;
    words[WORDS * at + 1] = marks;
    words[WORDS * at + 2] = flags | (long) word << PART_BITS | p;
  }

  private int[] join(int net) {
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
    if (each) {
      lowTo[net] = Integer.MIN_VALUE;
      highFrom[net] = Integer.MAX_VALUE;
      floatsHigh[net] = false;
    }
    return Arrays.copyOf(found, n);
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
  void tell(int net, boolean high, Marks marks, int[] counted) {
    int end = WORDS * from[net + 1];
    for (int at = WORDS * from[net]; at < end; at += WORDS) {
      long bit = words[at];
      long rest = words[at + 2];
      PartPins part = parts[(int) rest & PART_MASK];
      if ((part.in & bit) != 0 == high) {
        continue;
      }
      part.in ^= bit;
      if (high) {
        part.rose |= bit;
      } else {
        part.fell |= bit;
      }
      if ((rest & WIDE) == 0) {
        marks.dirty[(int) (rest >>> PART_BITS) & PART_MASK] |= words[at + 1];
      }
      if ((rest & (WIDE | SILENCES)) != 0) {
        more(at / WORDS, rest, marks);
      }
      if (counted != null && high && (rest & RISES) != 0) {
        counted[part.part]++;
      }
    }
  }

  /** What moves with few pins: outputs beyond one word of marks, and outputs put to sleep. */
  private void more(int at, long rest, Marks marks) {
    if ((rest & WIDE) != 0) {
      for (int node : circuit.followers[pins[at]]) {
        marks.dirty[node >> 6] |= 1L << node;
      }
    }
    silenced[at].clear(marks.asleep);
  }
}
