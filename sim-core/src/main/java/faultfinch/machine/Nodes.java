package faultfinch.machine;

/**
 * What settling an output needs to know of it, a few words one after the other: the machine looks
 * at so many outputs in a cycle that what lies far apart would cost more than the work.
 */
final class Nodes {
  static final int WORDS = 4;

  /** The nodes of its word from this one on that one settle of their part serves, as marks. */
  static final int BATCH = 0;

  /** The pins of all those. */
  static final int PINS = 1;

  /** The part, and what else there is to heed; negative in a loop. */
  static final int KIND = 2;

  /** Some of those nodes can sleep, or the node controls a group of nets. */
  static final long CAREFUL = 1L << 32;

  static final long GROUPED = 1L << 33;

  private static final long LOOPED = 1L << 63;

  private Nodes() {}

  static long[] of(Circuit circuit) {
    int n = circuit.nodePart.length;
    long[] nodes = new long[WORDS * n];
    for (int from = 0; from < n; from++) {
      int to = Math.min(circuit.batchTo[from], (from | 63) + 1);
      long kind = circuit.nodePart[from];
      long pins = 0;
      for (int node = from; node < to; node++) {
        pins |= circuit.nodePins[node];
        boolean sleeps = (circuit.silentHigh[node] | circuit.silentLow[node]) != 0;
        kind |= sleeps ? CAREFUL : 0;
        kind |= circuit.nodeGroup[node] >= 0 ? CAREFUL | GROUPED : 0;
      }
      nodes[WORDS * from + BATCH] = within(from >> 6, from, to);
      nodes[WORDS * from + PINS] = pins;
      nodes[WORDS * from + KIND] = kind | (circuit.looped[from] ? LOOPED : 0);
    }
    return nodes;
  }

  /** The nodes of a word of marks that stand in a range; it touches the word. */
  static long within(int word, int from, int to) {
    long after = from >> 6 == word ? -1L << from : -1L;
    return to - 1 >> 6 == word ? after & -1L >>> -to : after;
  }
}
