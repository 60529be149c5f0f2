package faultfinch.machine;

import java.util.Arrays;

/** What the pins of each part make of their nets, as far as it can be known before. */
final class Drivers {
  /** What one pin makes of its net while no other drives it. */
  interface Alone {
    int millivolts(int pin, boolean high);
  }

  /** Per part the pins that are the part's only one on a net that stands for itself. */
  final long[] apart;

  /** Of those, the pins that all readers read as driven while nobody else drives their nets. */
  final long[] plain;

  /** Per part the pins apart that let go where they would drive high. */
  final long[] collectors;

  /** By pin apart its net's millivolts with this pin alone on it. */
  final int[] lowMv;

  final int[] highMv;
  private final Circuit circuit;

  /** Drivers of a circuit's nets. */
  Drivers(Circuit circuit, Listeners listeners, Alone alone) {
    this.circuit = circuit;
    int parts = circuit.parts.length;
    apart = new long[parts];
    plain = new long[parts];
    collectors = new long[parts];
    lowMv = new int[circuit.netOf.length];
    highMv = new int[circuit.netOf.length];
    for (int p = 0; p < parts; p++) {
      apart[p] = apart(p);
      for (long left = apart[p]; left != 0; left &= left - 1) {
        int bit = Long.numberOfTrailingZeros(left);
        int pin = circuit.pinBase[p] + bit;
        lowMv[pin] = alone.millivolts(pin, false);
        highMv[pin] = alone.millivolts(pin, true);
        collectors[p] |= circuit.collector[pin] ? 1L << bit : 0;
        plain[p] |= plain(pin, listeners) ? 1L << bit : 0;
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
        && listeners.all(net, lowMv[pin]) == Listeners.LOW
        && listeners.all(net, highMv[pin]) == Listeners.HIGH;
  }
}
