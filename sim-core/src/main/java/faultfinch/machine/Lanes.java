package faultfinch.machine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Who reads what one part drives. Lines of a bus mostly stand side by side at the driver and at a
 * reader, so that all of them go over in one step, as the lanes of a road do; the other readers are
 * told line by line.
 */
final class Lanes {
  /** Fewer lanes than this are told line by line. */
  private static final int NARROW = 3;

  /** The lanes to one part that are shifted alike and followed by the same outputs. */
  private record Road(PartPins reader, int shift, long lanes, long[] followers) {}

  private final Circuit circuit;
  private final Road[] roads;

  /** Per pin of the driver the readers that no road leads to. */
  private final Readers[] rest;

  /** Pins of the driver whose nets it drives by this pin alone, so that all can be told at once. */
  final long apart;

  /** Lanes of a part's outputs to all that read them. */
  Lanes(Circuit circuit, int part, PartPins[] pins, Listeners listeners) {
    this.circuit = circuit;
    this.rest = new Readers[Long.SIZE];
    int base = circuit.pinBase[part];
    apart = apart(part);
    Map<List<Object>, List<int[]>> found = new TreeMap<>(Lanes::compare);
    for (long left = apart; left != 0; left &= left - 1) {
      int bit = Long.numberOfTrailingZeros(left);
      for (int reader : listeners.free(circuit.netOf[base + bit])) {
        int shift = circuit.bitOf[reader] - bit & Long.SIZE - 1;
        String followers = Arrays.toString(circuit.followers[reader]);
        found
            .computeIfAbsent(
                List.of(circuit.partOf[reader], shift, followers), k -> new ArrayList<>())
            .add(new int[] {bit, reader});
      }
    }
    List<Road> wide = new ArrayList<>();
    List<int[]> narrow = new ArrayList<>();
    found.forEach(
        (key, lanes) -> {
          if (lanes.size() < NARROW) {
            narrow.addAll(lanes);
          } else {
            wide.add(road(pins[(int) key.get(0)], (int) key.get(1), lanes));
          }
        });
    roads = wide.toArray(Road[]::new);
    for (long left = apart; left != 0; left &= left - 1) {
      int bit = Long.numberOfTrailingZeros(left);
      int[] own = narrow.stream().filter(l -> l[0] == bit).mapToInt(l -> l[1]).toArray();
      rest[bit] = new Readers(circuit, pins, own);
    }
  }

  private static int compare(List<Object> a, List<Object> b) {
    int byPart = Integer.compare((int) a.get(0), (int) b.get(0));
    int byShift = byPart != 0 ? byPart : Integer.compare((int) a.get(1), (int) b.get(1));
    return byShift != 0 ? byShift : ((String) a.get(2)).compareTo((String) b.get(2));
  }

  /** Pins that are the only ones of the part on a net, a net whose readers fit one word. */
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
      boolean alone = circuit.groupOf[net] < 0 && circuit.receivers[net].length <= Readers.MOST;
      for (long others = driven & ~(1L << bit); others != 0; others &= others - 1) {
        alone &= circuit.netOf[base + Long.numberOfTrailingZeros(others)] != net;
      }
      apart |= alone ? 1L << bit : 0;
    }
    return apart;
  }

  private Road road(PartPins reader, int shift, List<int[]> lanes) {
    long bits = 0;
    long[] followers = new long[(circuit.nodePart.length + 63) / 64];
    for (int[] lane : lanes) {
      bits |= 1L << lane[0];
      for (int node : circuit.followers[lane[1]]) {
        followers[node >> 6] |= 1L << node;
      }
    }
    return new Road(reader, shift, bits, followers);
  }

  /** Every reader of these pins, bits of the driver, reads them high and low; marks followers. */
  void tell(long high, long low, long[] marks, int[] counted) {
    for (Road road : roads) {
      if (((high | low) & road.lanes) != 0) {
        tell(road, high, low, marks, counted);
      }
    }
    for (long left = high; left != 0; left &= left - 1) {
      rest[Long.numberOfTrailingZeros(left)].tell(true, marks, counted);
    }
    for (long left = low; left != 0; left &= left - 1) {
      rest[Long.numberOfTrailingZeros(left)].tell(false, marks, counted);
    }
  }

  private void tell(Road road, long high, long low, long[] marks, int[] counted) {
    PartPins reader = road.reader;
    long up = Long.rotateLeft(high & road.lanes, road.shift) & ~reader.in;
    long down = Long.rotateLeft(low & road.lanes, road.shift) & reader.in;
    if ((up | down) == 0) {
      return;
    }
    reader.in ^= up | down;
    reader.rose |= up;
    reader.fell |= down;
    if (counted != null) {
      counted[reader.part] += Long.bitCount(up & circuit.risePins[reader.part]);
    }
    for (int w = 0; w < marks.length; w++) {
      marks[w] |= road.followers[w];
    }
  }
}
