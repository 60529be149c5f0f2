package faultfinch.machine;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;

/**
 * Millivolts of each net by what its drivers do now, worked out once per set of active drivers and
 * kept.
 *
 * <p>Two bits a driver make the key of a net: 0 lets go, 2 drives low, 3 drives high. The key is
 * kept up to date as drivers move, so that looking a net up costs nothing for its silent drivers.
 */
final class NetVolts {
  /** The widest key of a net that is simply an index. */
  private static final int DIRECT = 3;

  /** Drivers whose states fit a key; nets with more are worked out each time. */
  static final int KEYED = 31;

  /** What a driver does makes no difference to the net. */
  static final int SAME = 0;

  static final int MOVED = 1;

  /** It does, and no other driver of the net does anything. */
  static final int ALONE = 2;

  private static final int SLOTS = 64;
  private static final int PROBES = 4;
  private static final int NOT_KNOWN = Integer.MAX_VALUE;

  private final Circuit circuit;
  private final IntUnaryOperator solve;

  /** Per driving pin where its state stands in the key of its net. */
  private final byte[] shift;

  private final long[] key;

  /** Whether a net has more drivers than fit a key. */
  private final boolean[] crowded;

  /** Where keys are noted; null where nobody wants to know. */
  private DriveNotes notes;

  /** What a net comes to that nothing drives. */
  private final int[] idle;

  private final int[][] known;
  private final long[][] knownFor;

  /** Volts of a circuit's nets; {@code solve} works out one net from what its drivers do now. */
  NetVolts(Circuit circuit, IntUnaryOperator solve) {
    this.circuit = circuit;
    this.solve = solve;
    this.shift = new byte[circuit.partOf.length];
    this.key = new long[circuit.netCount];
    this.idle = new int[circuit.netCount];
    Arrays.fill(idle, NOT_KNOWN);
    this.known = new int[circuit.netCount][];
    this.knownFor = new long[circuit.netCount][];
    this.crowded = new boolean[circuit.netCount];
    for (int net = 0; net < circuit.netCount; net++) {
      int[] drivers = circuit.drivers[net];
      crowded[net] = drivers.length > KEYED;
      for (int i = 0; i < drivers.length; i++) {
        shift[drivers[i]] = (byte) (i < KEYED ? 2 * i : 0);
      }
    }
  }

  /** Notes the keys of all nets from now on. */
  void note(DriveNotes into) {
    notes = into;
  }

  /** Notes them as they are. */
  void noteAll() {
    for (int net = 0; net < key.length; net++) {
      notes.note(net, key[net]);
    }
  }

  /** A driving pin of a net does this now; says what that makes of the net. */
  int drives(int pin, int net, int state) {
    long was = key[net];
    long own = (long) state << shift[pin];
    long now = was & ~(3L << shift[pin]) | own;
    key[net] = now;
    if (notes != null) {
      notes.note(net, now);
    }
    if (crowded[net]) {
      return MOVED;
    }
    return now == was ? SAME : now == own ? ALONE : MOVED;
  }

  /** What holds a net has changed otherwise: nothing is known of it any more. */
  void forget(int net) {
    idle[net] = NOT_KNOWN;
    known[net] = null;
    knownFor[net] = null;
  }

  /** The same of a net that nothing drives now. */
  int undriven(int net) {
    if (idle[net] == NOT_KNOWN) {
      idle[net] = solve.applyAsInt(net);
    }
    return idle[net];
  }

  /** Millivolts of a net, or {@link NetSolver#FLOATING}. */
  int of(int net) {
    if (key[net] == 0 && !crowded[net]) {
      return undriven(net);
    }
    int drivers = circuit.drivers[net].length;
    if (drivers <= DIRECT) {
      int[] direct = known[net];
      if (direct == null) {
        direct = new int[1 << 2 * drivers];
        Arrays.fill(direct, NOT_KNOWN);
        known[net] = direct;
      }
      int at = (int) key[net];
      if (direct[at] == NOT_KNOWN) {
        direct[at] = solve.applyAsInt(net);
      }
      return direct[at];
    }
    return drivers > KEYED ? solve.applyAsInt(net) : lookedUp(net);
  }

  private int lookedUp(int net) {
    long[] keys = knownFor[net];
    if (keys == null) {
      keys = new long[SLOTS];
      Arrays.fill(keys, -1);
      knownFor[net] = keys;
      known[net] = new int[SLOTS];
    }
    long wanted = key[net];
    int first = (int) ((wanted * 0x9E3779B97F4A7C15L) >>> 58);
    for (int i = 0; i < PROBES; i++) {
      int slot = (first + i) % SLOTS;
      if (keys[slot] == wanted) {
        return known[net][slot];
      }
      if (keys[slot] == -1) {
        return learn(net, slot);
      }
    }
    return learn(net, first);
  }

  private int learn(int net, int slot) {
    known[net][slot] = solve.applyAsInt(net);
    knownFor[net][slot] = key[net];
    return known[net][slot];
  }

  void save(long[] keys) {
    System.arraycopy(key, 0, keys, 0, key.length);
  }

  void load(long[] keys) {
    System.arraycopy(keys, 0, key, 0, key.length);
  }
}
