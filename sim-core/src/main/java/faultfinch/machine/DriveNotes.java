package faultfinch.machine;

import java.util.Arrays;

/**
 * What drove each net of a wiring while it ran: every set of outputs that was active together, be
 * it for a moment within a settle. Small keys are bits of a word, the others stand in a table.
 */
final class DriveNotes {
  private static final int SMALL = 64;
  private static final long EMPTY = -1;

  final Circuit circuit;
  private final long[] small;
  private final long[][] large;
  private final int[] count;

  /** Nets that an output on a loop drives: what they pass through while settling counts too. */
  private final boolean[] looped;

  /** Whether all is noted; not while a wiring just made comes to rest. */
  private boolean awake = true;

  private boolean oscillated;

  DriveNotes(Circuit circuit) {
    this.circuit = circuit;
    small = new long[circuit.netCount];
    large = new long[circuit.netCount][];
    count = new int[circuit.netCount];
    looped = new boolean[circuit.netCount];
    for (int node = 0; node < circuit.nodePart.length; node++) {
      if (circuit.looped[node] && circuit.nodeGroup[node] < 0) {
        int base = circuit.pinBase[circuit.nodePart[node]];
        for (long left = circuit.nodePins[node]; left != 0; left &= left - 1) {
          looped[circuit.netOf[base + Long.numberOfTrailingZeros(left)]] = true;
        }
      }
    }
  }

  void awake(boolean now) {
    awake = now;
  }

  void oscillates() {
    oscillated = true;
  }

  /** Whether some net did not come to rest. */
  boolean oscillated() {
    return oscillated;
  }

  void note(int net, long key) {
    if (awake || looped[net]) {
      if (key >= 0 && key < SMALL) {
        small[net] |= 1L << key;
      } else {
        enter(net, key);
      }
    }
  }

  private void enter(int net, long key) {
    if (large[net] == null) {
      large[net] = new long[SMALL];
      Arrays.fill(large[net], EMPTY);
    }
    long[] keys = large[net];
    int at = slot(key, keys.length);
    while (keys[at] != key && keys[at] != EMPTY) {
      at = (at + 1) % keys.length;
    }
    if (keys[at] == EMPTY) {
      keys[at] = key;
      count[net]++;
      if (2 * count[net] > keys.length) {
        grow(net);
      }
    }
  }

  private void grow(int net) {
    long[] had = large[net];
    large[net] = new long[2 * had.length];
    Arrays.fill(large[net], EMPTY);
    count[net] = 0;
    for (long key : had) {
      if (key != EMPTY) {
        enter(net, key);
      }
    }
  }

  private static int slot(long key, int size) {
    return (int) ((key * 0x9E3779B97F4A7C15L >>> 33) % size);
  }

  /** The keys noted of a net, as {@link NetVolts} makes them. */
  long[] keys(int net) {
    long[] found = new long[Long.bitCount(small[net]) + count[net]];
    int n = 0;
    for (long left = small[net]; left != 0; left &= left - 1) {
      found[n++] = Long.numberOfTrailingZeros(left);
    }
    for (int i = 0; large[net] != null && i < large[net].length; i++) {
      if (large[net][i] != EMPTY) {
        found[n++] = large[net][i];
      }
    }
    return found;
  }
}
