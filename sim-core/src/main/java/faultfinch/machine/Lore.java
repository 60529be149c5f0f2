package faultfinch.machine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was found out about a wiring, and holds for every wiring that is kin to it. */
final class Lore {
  private static final int KEPT = 64;

  final MaskClasses classes = new MaskClasses();

  /** Per net, by its lowest pin, whether it was ever driven, and ever let go, in an access. */
  final boolean[] drivenOnce;

  final boolean[] floatedOnce;
  final boolean[] contended;

  /** Levels of clock pins between two cycles, once known. */
  final long[] restAt;

  final boolean[] restKnown;

  /** The way that what runs by itself was last seen to go. */
  Optional<Orbit> way = Optional.empty();

  /** What has a say in the clocks of parts that take data, once asked. */
  Optional<List<Takings.Gate>> gates = Optional.empty();

  private final Circuit circuit;
  private final Reach reach;
  private final Map<List<Integer>, Tables> bySlow = new LinkedHashMap<>();

  /** The sets of rows that needed no clock so far. */
  private final List<boolean[][]> rowsSeen = new ArrayList<>();

  /** Nothing yet about a wiring. */
  Lore(Circuit circuit, Reach reach) {
    this.circuit = circuit;
    this.reach = reach;
    int pins = circuit.netOf.length;
    drivenOnce = new boolean[pins];
    floatedOnce = new boolean[pins];
    contended = new boolean[pins];
    restAt = new long[circuit.parts.length];
    restKnown = new boolean[circuit.parts.length];
  }

  /** Whether it holds for another wiring of the same parts too. */
  boolean holdsFor(Circuit other, Reach otherReach) {
    return circuit == other || Kin.are(circuit, reach, other, otherReach);
  }

  /** The tables for slow levels as told. */
  Tables tables(List<Integer> slow, boolean syncRead) {
    Tables tables = bySlow.get(slow);
    if (tables == null) {
      if (bySlow.size() >= KEPT) {
        bySlow.remove(bySlow.keySet().iterator().next());
      }
      tables = new Tables(syncRead);
      bySlow.put(slow, tables);
    }
    return tables;
  }

  /** Drops all tables: what they depend on is otherwise, and no level tells of it. */
  void forget() {
    bySlow.clear();
  }

  /** The number of a set of rows that need no clock. */
  int number(boolean[][] rows) {
    for (int i = 0; i < rowsSeen.size(); i++) {
      if (Arrays.deepEquals(rowsSeen.get(i), rows)) {
        return i;
      }
    }
    rowsSeen.add(rows);
    return rowsSeen.size() - 1;
  }
}
