package faultfinch.machine;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Which outputs are to be settled, and which sleep: an output that drives nothing and by an enable
 * pin goes on so is not looked at again before that pin moves. And which clocked parts have seen a
 * pin move since they were last asked to commit.
 */
final class Marks {
  /** Words of marks are looked at so many at a time. */
  static final int SIDE_BY_SIDE = 4;

  /** First the outputs to settle, {@link #words} words; then the clocked parts. */
  final long[] all;

  /** Outputs that sleep. */
  final long[] asleep;

  final int words;

  /** Living parts with a clock, ascending. */
  final int[] clocked;

  private static final int[] NONE = {};

  private final Circuit circuit;

  /** By part the pins that silence any of its outputs. */
  private final long[] silencers;

  /** By part its place among the clocked ones, or -1. */
  private final int[] clock;

  Marks(Circuit circuit) {
    this.circuit = circuit;
    words = NodeSet.words(circuit);
    clocked =
        IntStream.range(0, circuit.parts.length)
            .filter(p -> circuit.alive[p] && circuit.edgePins(p) != 0)
            .toArray();
    int size = words + (clocked.length + 63) / 64;
    all = new long[(size + SIDE_BY_SIDE - 1) / SIDE_BY_SIDE * SIDE_BY_SIDE];
    asleep = new long[words];
    silencers = new long[circuit.parts.length];
    for (int node = 0; node < circuit.nodePart.length; node++) {
      silencers[circuit.nodePart[node]] |= circuit.silentHigh[node] | circuit.silentLow[node];
    }
    clock = new int[circuit.parts.length];
    Arrays.fill(clock, -1);
    for (int i = 0; i < clocked.length; i++) {
      clock[clocked[i]] = i;
    }
  }

  /** Whether a part may ask which of its pins rose or fell. */
  boolean asksForEdges(int part) {
    return circuit.alive[part]
        && (circuit.edgePins(part) != 0 || circuit.parts[part].asksForEdges());
  }

  /** Adds the marks that a pin makes when it reads another bit. */
  void following(int pin, long[] to, int at) {
    for (int node : circuit.followers[pin]) {
      to[at + (node >> 6)] |= 1L << node;
    }
    int place = clock[circuit.partOf[pin]];
    if (place >= 0) {
      to[at + words + (place >> 6)] |= 1L << place;
    }
  }

  /** Any clocked part may have seen an edge. */
  void anyEdge() {
    Arrays.fill(all, words, all.length, -1L);
  }

  /** A pin reads another bit. */
  void follow(int pin) {
    following(pin, all, 0);
    int part = circuit.partOf[pin];
    long bit = 1L << circuit.bitOf[pin];
    for (int node : (silencers[part] & bit) == 0 ? NONE : circuit.nodesOf[part]) {
      if (((circuit.silentHigh[node] | circuit.silentLow[node]) & bit) != 0) {
        asleep[node >> 6] &= ~(1L << node);
      }
    }
  }
}
