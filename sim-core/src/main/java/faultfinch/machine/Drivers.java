package faultfinch.machine;

import java.util.Arrays;

/** What the pins of each part make of their nets, as far as it can be known before. */
final class Drivers {
  /** What one pin makes of its net while no other drives it. */
  interface Alone {
    int millivolts(int pin, boolean high);
  }

  /** Words of a seat. */
  static final int WORDS = 8;

  /** The pins that are the part's only one on a net that stands for itself. */
  static final int APART = 0;

  /** Of those, the pins that all readers read as driven while nobody else drives their nets. */
  static final int PLAIN = 1;

  /** Of the pins apart, those that let go where they would drive high. */
  static final int COLLECTORS = 2;

  /** The pins that a fault drives, and how. */
  static final int FORCED = 3;

  static final int FORCED_TO = 4;

  /** The number of its first pin. */
  static final int BASE = 5;

  /** Figures of a lead. */
  static final int FIGURES = 4;

  /** Its net, that one's millivolts with this pin alone on it, and its place in the key. */
  static final int NET = 0;

  static final int LOW_MV = 1;
  static final int HIGH_MV = 2;
  static final int SHIFT = 3;

  /** What there is to know of a part, and of a pin, in words that lie together. */
  final long[] seats;

  final int[] leads;

  private final Circuit circuit;

  /** Drivers of a circuit's nets. */
  Drivers(Circuit circuit, Listeners listeners, NetVolts volts, Alone alone) {
    this.circuit = circuit;
    int parts = circuit.parts.length;
    seats = new long[WORDS * parts];
    leads = new int[FIGURES * circuit.netOf.length];
    for (int p = 0; p < parts; p++) {
      int seat = WORDS * p;
      seats[seat + BASE] = circuit.pinBase[p];
      seats[seat + FORCED] = circuit.forceMask[p];
      seats[seat + FORCED_TO] = circuit.forceBits[p];
      seats[seat + APART] = apart(p);
      for (long left = seats[seat + APART]; left != 0; left &= left - 1) {
        int bit = Long.numberOfTrailingZeros(left);
        int pin = circuit.pinBase[p] + bit;
        int lead = FIGURES * pin;
        leads[lead + NET] = circuit.netOf[pin];
        leads[lead + LOW_MV] = alone.millivolts(pin, false);
        leads[lead + HIGH_MV] = alone.millivolts(pin, true);
        leads[lead + SHIFT] = volts.shift(pin);
        seats[seat + COLLECTORS] |= circuit.collector[pin] ? 1L << bit : 0;
        seats[seat + PLAIN] |= plain(pin, listeners) ? 1L << bit : 0;
      }
    }
  }

  private long apart(int part) {
    long driven = 0;
    for (int node : circuit.nodesOf[part]) {
      driven |= circuit.nodeGroup[node] < 0 ? circuit.nodePins[node] : 0;
    }
    int base = circuit.pinBase[part];
    long apart = 0;
    for (long left = driven; left != 0; left &= left - 1) {
      int bit = Long.numberOfTrailingZeros(left);
      int net = circuit.netOf[base + bit];
      boolean alone = circuit.groupOf[net] < 0 && circuit.source[net] == Circuit.NO_SOURCE;
      for (long others = driven & ~(1L << bit); others != 0; others &= others - 1) {
        alone &= circuit.netOf[base + Long.numberOfTrailingZeros(others)] != net;
      }
      apart |= alone ? 1L << bit : 0;
    }
    return apart;
  }

  private boolean plain(int pin, Listeners listeners) {
    int net = circuit.netOf[pin];
    boolean switched = Arrays.stream(circuit.loadSwitch[net]).anyMatch(gate -> gate >= 0);
    return !switched
        && listeners.all(net, leads[FIGURES * pin + LOW_MV]) == Listeners.LOW
        && listeners.all(net, leads[FIGURES * pin + HIGH_MV]) == Listeners.HIGH;
  }
}
