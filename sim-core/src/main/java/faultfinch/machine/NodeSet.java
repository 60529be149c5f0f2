package faultfinch.machine;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Output nodes of a circuit that are marked for settling together, as words of marks. */
final class NodeSet {
  private static final long[] NONE = {};

  private final int first;
  private final long mask;

  /** What lies in the words after the first. */
  private final long[] more;

  /** The set of these nodes. */
  NodeSet(int[] nodes) {
    int low = Integer.MAX_VALUE;
    int high = 0;
    for (int node : nodes) {
      low = Math.min(low, node >> 6);
      high = Math.max(high, node >> 6);
    }
    first = nodes.length == 0 ? 0 : low;
    more = nodes.length == 0 || high == low ? NONE : new long[high - low];
    long own = 0;
    for (int node : nodes) {
      if (node >> 6 == first) {
        own |= 1L << node;
      } else {
        more[(node >> 6) - first - 1] |= 1L << node;
      }
    }
    mask = own;
  }

  /** Marks all of them. */
  void mark(long[] marks) {
    marks[first] |= mask;
    for (int i = 0; i < more.length; i++) {
      marks[first + 1 + i] |= more[i];
    }
  }

  boolean isEmpty() {
    return mask == 0;
  }

  /** Takes their marks off. */
  void clear(long[] marks) {
    marks[first] &= ~mask;
    for (int i = 0; i < more.length; i++) {
      marks[first + 1 + i] &= ~more[i];
    }
  }

  /** The nodes that any of these pins silences no longer when it reads this; empty if none. */
  static Optional<NodeSet> woken(Circuit circuit, List<Integer> pins, boolean high) {
    long[] silent = high ? circuit.silentLow : circuit.silentHigh;
    boolean[] seen = new boolean[circuit.nodePart.length];
    int[] found = new int[seen.length];
    int n = 0;
    for (int pin : pins) {
      for (int node : circuit.nodesOf[circuit.partOf[pin]]) {
        if ((silent[node] >>> circuit.bitOf[pin] & 1) != 0 && !seen[node]) {
          seen[node] = true;
          found[n++] = node;
        }
      }
    }
    return n == 0 ? Optional.empty() : Optional.of(new NodeSet(Arrays.copyOf(found, n)));
  }

  /** Words that marks of a circuit's nodes take; one where there is no node. */
  static int words(Circuit circuit) {
    return Math.max(1, (circuit.nodePart.length + 63) / 64);
  }
}
