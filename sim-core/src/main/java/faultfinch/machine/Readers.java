package faultfinch.machine;

/**
 * Pins that read one net and whose bits are free to move. All are told at once what they read; if
 * all moved, all outputs that follow them are marked at once.
 */
final class Readers {
  /** Pins that fit a word of marks. */
  static final int MOST = 63;

  private final Circuit circuit;
  private final PartPins[] parts;
  private final long[] bits;
  private final int[] pins;

  /** The outputs that follow any of the pins, as words of marks. */
  private final long[] followers;

  /** Readers by the numbers of their pins, at most {@value #MOST}. */
  Readers(Circuit circuit, PartPins[] all, int[] pins) {
    this.circuit = circuit;
    this.pins = pins;
    this.parts = new PartPins[pins.length];
    this.bits = new long[pins.length];
    this.followers = new long[(circuit.nodePart.length + 63) / 64];
    for (int i = 0; i < pins.length; i++) {
      parts[i] = all[circuit.partOf[pins[i]]];
      bits[i] = 1L << circuit.bitOf[pins[i]];
      for (int node : circuit.followers[pins[i]]) {
        followers[node >> 6] |= 1L << node;
      }
    }
  }

  /** Every pin reads this; marks what follows those that read otherwise before. */
  void tell(boolean high, long[] marks, int[] counted) {
    long moved = 0;
    for (int i = 0; i < bits.length; i++) {
      PartPins part = parts[i];
      if ((part.in & bits[i]) != 0 == high) {
        continue;
      }
      part.in ^= bits[i];
      moved |= 1L << i;
      if (high) {
        part.rose |= bits[i];
      } else {
        part.fell |= bits[i];
      }
    }
    if (moved == 0) {
      return;
    }
    if (counted != null && high) {
      count(moved, counted);
    }
    if (moved == (1L << bits.length) - 1) {
      for (int w = 0; w < marks.length; w++) {
        marks[w] |= followers[w];
      }
    } else {
      mark(moved, marks);
    }
  }

  private void count(long moved, int[] counted) {
    for (long left = moved; left != 0; left &= left - 1) {
      int i = Long.numberOfTrailingZeros(left);
      counted[parts[i].part] += (circuit.risePins[parts[i].part] & bits[i]) != 0 ? 1 : 0;
    }
  }

  private void mark(long moved, long[] marks) {
    for (long left = moved; left != 0; left &= left - 1) {
      for (int node : circuit.followers[pins[Long.numberOfTrailingZeros(left)]]) {
        marks[node >> 6] |= 1L << node;
      }
    }
  }
}
