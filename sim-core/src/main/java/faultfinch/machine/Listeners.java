package faultfinch.machine;

import faultfinch.signal.Electrical;
import faultfinch.signal.Technology;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Who reads each net, from which level on they all read it alike, and what they last read.
 *
 * <p>Where all read alike and it is known how they read before, either none of them moves or all
 * do: what follows them is then marked for the net as a whole.
 */
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

  /** By net where its readers begin and where those end whose part may ask for edges. */
  private final int[] span;

  /** The readers whose bit is free to move: part and bit. */
  private final PartPins[] who;

  private final byte[] bit;
  private final int[] pins;

  /** By net the marks that its readers make when all of them move, as {@link Marks#all}. */
  private final long[] follows;

  private final int stride;

  /** By net the outputs that its readers wake when they fall and when they rise, or null. */
  private final NodeSet[][] wakes;

  /** By net whether a reader of it takes a step as it rises, which somebody may count. */
  private final boolean[] steps;

  /** By net what all of its readers read, or {@link #EACH} where that is not known. */
  private final byte[] heard;

  /** The readers of a circuit's nets. */
  Listeners(Circuit circuit, PartPins[] parts, Marks marks) {
    this.circuit = circuit;
    int nets = circuit.netCount;
    lowTo = new int[nets];
    highFrom = new int[nets];
    floatsHigh = new boolean[nets];
    heard = new byte[nets];
    steps = new boolean[nets];
    span = new int[2 * nets + 1];
    wakes = new NodeSet[2][nets];
    stride = marks.all.length;
    follows = new long[stride * nets];
    List<Integer> all = new ArrayList<>();
    for (int net = 0; net < nets; net++) {
      List<Integer> free = join(net);
      span[2 * net] = all.size();
      add(all, free, true, marks);
      span[2 * net + 1] = all.size();
      add(all, free, false, marks);
      for (int pin : free) {
        marks.following(pin, follows, stride * net);
      }
      wakes[LOW][net] = NodeSet.woken(circuit, free, false).orElse(null);
      wakes[HIGH][net] = NodeSet.woken(circuit, free, true).orElse(null);
    }
    span[2 * nets] = all.size();
    pins = new int[all.size()];
    who = new PartPins[pins.length];
    bit = new byte[pins.length];
    for (int i = 0; i < pins.length; i++) {
      pins[i] = all.get(i);
      who[i] = parts[circuit.partOf[pins[i]]];
      bit[i] = (byte) circuit.bitOf[pins[i]];
    }
    forget();
  }

  private void add(List<Integer> to, List<Integer> pins, boolean asking, Marks marks) {
    for (int pin : pins) {
      if (marks.asksForEdges(circuit.partOf[pin]) == asking) {
        to.add(pin);
      }
    }
  }

  private List<Integer> join(int net) {
    lowTo[net] = Integer.MAX_VALUE;
    highFrom[net] = Integer.MIN_VALUE;
    floatsHigh[net] = circuit.lsInputs[net] > 0;
    List<Integer> free = new ArrayList<>();
    boolean each = false;
    for (int pin : circuit.receivers[net]) {
      each |= circuit.level[pin];
      if ((circuit.readMask[circuit.partOf[pin]] >>> circuit.bitOf[pin] & 1) == 0) {
        free.add(pin);
        steps[net] |= (circuit.risePins[circuit.partOf[pin]] >>> circuit.bitOf[pin] & 1) != 0;
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
    return free;
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

  /** The pins of a net were told each by itself. */
  void forget(int net) {
    heard[net] = EACH;
  }

  /** Writes down what the readers of each net read. */
  void save(byte[] copy) {
    System.arraycopy(heard, 0, copy, 0, heard.length);
  }

  /** The readers read again what they read then. */
  void load(byte[] copy) {
    System.arraycopy(copy, 0, heard, 0, heard.length);
  }

  /** What pins read has been changed by others. */
  void forget() {
    Arrays.fill(heard, (byte) EACH);
  }

  /** Every pin of a net reads this; marks what follows those that read otherwise before. */
  void tell(int net, int level, Marks marks, int[] counted) {
    int had = heard[net];
    if (had == level) {
      return;
    }
    heard[net] = (byte) level;
    if (had == EACH || counted != null && steps[net]) {
      tellEach(net, level == HIGH, marks, counted);
      return;
    }
    int at = span[2 * net];
    int edges = span[2 * net + 1];
    int to = span[2 * net + 2];
    for (; at < edges; at++) {
      PartPins part = who[at];
      long pin = 1L << bit[at];
      part.in ^= pin;
      if (level == HIGH) {
        part.rose |= pin;
      } else {
        part.fell |= pin;
      }
    }
    for (; at < to; at++) {
      who[at].in ^= 1L << bit[at];
    }
    long[] all = marks.all;
    int follow = stride * net;
    for (int w = 0; w < all.length; w += Marks.SIDE_BY_SIDE) {
      all[w] |= follows[follow + w];
      all[w + 1] |= follows[follow + w + 1];
      all[w + 2] |= follows[follow + w + 2];
      all[w + 3] |= follows[follow + w + 3];
    }
    if (wakes[level][net] != null) {
      wakes[level][net].clear(marks.asleep);
    }
  }

  private void tellEach(int net, boolean high, Marks marks, int[] counted) {
    for (int at = span[2 * net]; at < span[2 * net + 2]; at++) {
      PartPins part = who[at];
      long pin = 1L << bit[at];
      if ((part.in & pin) != 0 != high) {
        part.in ^= pin;
        if (high) {
          part.rose |= pin;
        } else {
          part.fell |= pin;
        }
        marks.follow(pins[at]);
        if (counted != null && high && (circuit.risePins[part.part] & pin) != 0) {
          counted[part.part]++;
        }
      }
    }
  }
}
