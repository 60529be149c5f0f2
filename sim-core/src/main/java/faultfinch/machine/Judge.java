package faultfinch.machine;

import faultfinch.part.BusDevice;
import faultfinch.part.Memory;
import faultfinch.part.RowMemory;
import faultfinch.signal.Bus;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Decides from two trials of an access, one with all data low and one with all high, what of it may
 * be remembered. What both have in common does not depend on data; what differs must be data pins
 * following their line. Anything else (a part that commits on what the data say, two answers on one
 * line, a loop) is played plainly each time.
 */
final class Judge {
  private final PlainCycle plain;
  private final Circuit c;
  private final Reach reach;
  private final Influence influence;
  private final LineDrivers drivers;
  private final int[] lineNets;
  private final long[] tellers;
  private final Loops loops;
  private final Answers answers;

  Judge(PlainCycle plain, Reach reach, Influence influence, long[] drivers, MaskClasses classes) {
    this.plain = plain;
    this.c = plain.circuit;
    this.reach = reach;
    this.influence = influence;
    this.drivers = new LineDrivers(plain.levels, reach, drivers);
    this.answers = new Answers(plain, reach, influence, classes, this.drivers);
    this.lineNets = c.cpu < 0 ? new int[0] : new HeldLines(c).nets();
    this.tellers = tellers();
    this.loops = new Loops(plain.levels, reach);
  }

  /** Whether a loop stands otherwise than when it was last told what it is. */
  boolean loopsMoved() {
    return loops.moved();
  }

  /**
   * What may be remembered.
   *
   * @param held whether the access has to be played for the sake of a level that is only held
   */
  Shortcut of(Trial a, Trial b, int address, boolean reads, boolean held) {
    Shortcut s = answer(a, b, address, reads, held);
    if (s.kind() == Shortcut.Kind.PLAIN) {
      return s;
    }
    return rows(a).map(rows -> rows.none() ? s : s.strobing(rows)).orElse(Shortcut.plain());
  }

  private Shortcut answer(Trial a, Trial b, int address, boolean reads, boolean held) {
    boolean odd = held || influence.refused() || a.stirs || b.stirs;
    odd |= !a.steps.equals(b.steps) || !sameKinds(a, b) || !dataOnly(a, b) || !stepsFollow(a, b);
    if (odd || !quiet(a) || loops.closed(a.driven) || tells(a) || clockworkSelected(a)) {
      return Shortcut.plain();
    }
    if (reads && (a.read & ~b.read) != 0) {
      return Shortcut.plain();
    }
    int floats = HeldLines.floats(a.kind, lineNets);
    int[] drivers = this.drivers.of(a);
    // What somebody else puts on the lines of a write is not told by the two trials.
    if (!reads && drivers.length > 0) {
      return Shortcut.plain();
    }
    if (reads && !Arrays.equals(drivers, this.drivers.of(b)) || floats != 0 && !reads) {
      return Shortcut.plain();
    }
    if (reads && a.steps.isEmpty() && drivers.length > 0 && answers.allCells(a, drivers)) {
      return answers.read(a, b, address, drivers, floats);
    }
    if (drivers.length > 1) {
      return Shortcut.plain();
    }
    if (floats != 0) {
      return drivers.length == 0 && a.steps.isEmpty()
          ? answers.loose(a, b, address, Places.NONE, floats)
          : Shortcut.plain();
    }
    if (!reads
        && !a.steps.isEmpty()
        && a.stepCells.equals(b.stepCells)
        && answers.allStoreCells(a)) {
      Shortcut written = answers.write(a, b, address);
      if (written != null) {
        return written;
      }
    }
    return influence.driverSwayed() || rowAmong(a, drivers)
        ? Shortcut.plain()
        : answers.device(a, b, address, reads, drivers.length == 0 ? -1 : drivers[0]);
  }

  /**
   * What may be remembered of an access that was played with the data as they are: one byte of one
   * memory read or stored, whatever it is and becomes.
   */
  Shortcut valued(Trial t, int address, boolean reads, boolean held) {
    boolean odd = held || influence.refused() || t.stirs || !quiet(t) || tells(t);
    odd |= loops.closed(t.driven) || clockworkSelected(t);
    odd |= HeldLines.floats(t.kind, lineNets) != 0;
    int[] cells = new int[c.parts.length];
    int[] parts = reads ? sources(t, cells) : stores(t, cells);
    if (odd || parts.length == 0) {
      return Shortcut.plain();
    }
    int[] own = IntStream.of(parts).map(p -> cells[p]).toArray();
    Shortcut s = answers.valued(t, address, parts, own);
    return s.kind() == Shortcut.Kind.PLAIN
        ? s
        : rows(t).map(rows -> rows.none() ? s : s.strobing(rows)).orElse(Shortcut.plain());
  }

  /** The memories that alone drive the data lines, nobody storing, with their cells; or none. */
  private int[] sources(Trial t, int[] cells) {
    int[] parts =
        IntStream.range(0, t.driven.length).filter(p -> drivers.driving(t, p) != 0).toArray();
    for (int p : parts) {
      boolean memory = c.parts[p] instanceof Memory || c.parts[p] instanceof RowMemory;
      if (!memory || t.looked[p] < 0 || parts.length > 1 && c.parts[p] instanceof Memory) {
        return new int[0];
      }
      cells[p] = t.looked[p];
    }
    return t.steps.isEmpty() ? parts : new int[0];
  }

  /** The memories that alone store, one cell each, nobody driving the data lines; or none. */
  private int[] stores(Trial t, int[] cells) {
    int[] parts = IntStream.range(0, t.steps.size()).map(t::part).distinct().sorted().toArray();
    boolean driven = IntStream.range(0, t.driven.length).anyMatch(p -> drivers.driving(t, p) != 0);
    Arrays.fill(cells, -1);
    for (int i = 0; i < t.steps.size(); i++) {
      int p = t.part(i);
      boolean same = cells[p] < 0 || cells[p] == t.stepCells.get(i);
      if (!same || t.stepCells.get(i) < 0 || parts.length > 1 && c.parts[p] instanceof Memory) {
        return new int[0];
      }
      cells[p] = t.stepCells.get(i);
    }
    return driven || !answers.allStoreCells(t) ? new int[0] : parts;
  }

  /** Whether a trial of another byte says the same of an address as this answer. */
  boolean alike(Shortcut s, Shortcut other, int address) {
    boolean alike = other.kind() == Shortcut.Kind.VALUED;
    alike &= (s.places().lines() & ~other.places().lines()) == 0;
    alike &= Arrays.equals(s.places().parts(), other.places().parts());
    alike &= alike && s.rows().none() && other.rows().none();
    return alike && s.places().cell(0, address) == other.places().cell(0, address);
  }

  /**
   * Whether an access that was played with the data as they are does the same however often it is
   * repeated, and whatever the clockwork does meanwhile: nobody stores anything, no level is only
   * held, no output feeds itself.
   */
  boolean stands(Trial t) {
    boolean odd = influence.refused() || influence.driverSwayed() || t.stirs;
    return !odd
        && t.steps.isEmpty()
        && quiet(t)
        && !loops.closed(t.everDriven)
        && !clockworkSelected(t)
        && rows(t).filter(Rows::none).isPresent();
  }

  /** Whether a memory whose row would have to be strobed first drives or stores beside others. */
  private boolean rowAmong(Trial a, int[] drivers) {
    boolean row = false;
    for (int p : drivers) {
      row |= c.parts[p] instanceof RowMemory;
    }
    for (int i = 0; i < a.steps.size(); i++) {
      row |= c.parts[a.part(i)] instanceof RowMemory;
    }
    return row;
  }

  private boolean sameKinds(Trial a, Trial b) {
    for (int net = 0; net < a.kind.length; net++) {
      if (a.kind[net] != b.kind[net] && !reach.clockwork.nets[net]) {
        return false;
      }
    }
    return true;
  }

  /** Pins that read otherwise in the two trials are data pins on a data line, and follow it. */
  private boolean dataOnly(Trial a, Trial b) {
    for (int p = 0; p < a.in.length; p++) {
      long differs = reach.clockwork.parts[p] ? 0 : a.in[p] ^ b.in[p];
      for (; differs != 0; differs &= differs - 1) {
        int bit = Long.numberOfTrailingZeros(differs);
        int g = c.pinBase[p] + bit;
        boolean aside = reach.clockwork.nets[c.netOf[g]];
        boolean data = c.parts[p].pinout().pins().get(bit).role() == Pin.Role.DATA;
        boolean line = reach.lineOf[c.netOf[g]] != 0 && (a.in[p] >>> bit & 1) == 0;
        if (!aside && (!line || !data && tellsMore(g, a, b))) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether something follows an input on a data line and others read it, but not as a line. */
  private boolean tellsMore(int g, Trial a, Trial b) {
    int p = c.partOf[g];
    for (int node : c.followers[g]) {
      // A latch that lets data through moves a slow net, which is seen elsewhere.
      if (Reach.keepsOut(c, node, g)) {
        continue;
      }
      long on = (a.everDriven[p] | b.everDriven[p]) & c.nodePins[node] & ~reach.passing[p];
      for (; on != 0; on &= on - 1) {
        int net = c.netOf[c.pinBase[p] + Long.numberOfTrailingZeros(on)];
        if (!reach.clockwork.nets[net] && readByOthers(net, p)) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * What a part read as it stored differs only where its pins follow data lines; no clock edges.
   */
  private boolean stepsFollow(Trial a, Trial b) {
    for (int i = 0; i < a.steps.size(); i++) {
      int p = a.part(i);
      long inA = a.stepIn.get(i);
      long differs = inA ^ b.stepIn.get(i);
      if ((differs & inA) != 0 || c.edgePins(p) != 0 && !c.parts[p].commitsEveryPhase()) {
        return false;
      }
      for (; differs != 0; differs &= differs - 1) {
        int bit = Long.numberOfTrailingZeros(differs);
        if (reach.lineOf[c.netOf[c.pinBase[p] + bit]] == 0) {
          return false;
        }
      }
    }
    return true;
  }

  /** Nothing but the clockwork stores in the video half, and nothing else oscillates. */
  private boolean quiet(Trial a) {
    for (int i = 0; i < a.steps.size(); i++) {
      if (!a.phase(i).processorHalf()) {
        return false;
      }
    }
    for (int net = 0; net < c.netCount; net++) {
      if (a.kind[net] == Levels.OSCILLATES && !reach.clockwork.nets[net]) {
        return false;
      }
    }
    return true;
  }

  /**
   * The rows that the access strobes and that need a clock; empty if which ones is not to be told
   * from the address.
   */
  private Optional<Rows> rows(Trial a) {
    Map<List<Integer>, List<Integer>> alike = new LinkedHashMap<>();
    for (int p = 0; p < c.parts.length; p++) {
      boolean kept = a.row[p] >= 0 && a.rowKept[p];
      if (kept && (a.drivenLate[p] != 0 || stores(a, p) || !refreshed(p))) {
        return Optional.empty();
      }
      if (a.row[p] >= 0 && !refreshed(p, a.row[p])) {
        Bus pins = ((RowMemory) c.parts[p]).address();
        List<Integer> kind = new ArrayList<>();
        int base = a.row[p];
        for (int i = 0; i < pins.width(); i++) {
          int set = influence.atRow(p, pins.shift() + i);
          if (set >= Influence.CLOCKWORK || Integer.bitCount(set) > 1) {
            return Optional.empty();
          }
          base &= set == 0 ? ~0 : ~(1 << i);
          kind.add(set == 0 ? -1 : Integer.numberOfTrailingZeros(set));
        }
        kind.add(base);
        alike.computeIfAbsent(kind, k -> new ArrayList<>()).add(p);
      }
    }
    if (alike.isEmpty()) {
      return Optional.of(Rows.NONE);
    }
    return Optional.of(
        new Rows(
            alike.values().stream().map(Judge::array).toArray(int[][]::new),
            alike.keySet().stream().mapToInt(k -> k.get(k.size() - 1)).toArray(),
            alike.keySet().stream()
                .map(k -> array(k.subList(0, k.size() - 1)))
                .toArray(int[][]::new)));
  }

  /**
   * Per part the row that it strobes in a row phase just looked at, or -1; empty if the clockwork
   * has a say in which, or in whether.
   */
  Optional<int[]> rowsOf(Levels levels) {
    int[] rows = new int[c.parts.length];
    for (int p = 0; p < rows.length; p++) {
      rows[p] = -1;
      if (c.alive[p] && c.parts[p] instanceof RowMemory memory) {
        long in = levels.pins[p].in;
        long decide = memory.address().mask() | c.parts[p].pinout().role(Pin.Role.LATCH);
        for (long left = decide; left != 0; left &= left - 1) {
          if (influence.atRow(p, Long.numberOfTrailingZeros(left)) != 0) {
            return Optional.empty();
          }
        }
        rows[p] = memory.strobes(in) ? memory.address().of(in) : -1;
      }
    }
    return Optional.of(rows);
  }

  private static int[] array(List<Integer> of) {
    return of.stream().mapToInt(i -> i).toArray();
  }

  private static boolean stores(Trial a, int p) {
    return IntStream.range(0, a.steps.size()).anyMatch(i -> a.part(i) == p);
  }

  /** Whether no row of a memory needs a clock. */
  private boolean refreshed(int p) {
    int rows = 1 << ((RowMemory) c.parts[p]).address().width();
    return IntStream.range(0, rows).allMatch(plain.levels.pins[p]::refreshed);
  }

  /** Whether no row that a memory strobes, at any address the access stands for, needs a clock. */
  private boolean refreshed(int p, int row) {
    Bus pins = ((RowMemory) c.parts[p]).address();
    int free = 0;
    for (int i = 0; i < pins.width(); i++) {
      free |= influence.atRow(p, pins.shift() + i) != 0 ? 1 << i : 0;
    }
    int base = row & ~free;
    int some = 0;
    do {
      if (!plain.levels.pins[p].refreshed(base | some)) {
        return false;
      }
      some = some - free & free;
    } while (some != 0);
    return true;
  }

  /** Whether the access gets at registers of a part of the clockwork, but to write its cells. */
  private boolean clockworkSelected(Trial a) {
    for (int p = 0; p < c.parts.length; p++) {
      boolean written = reach.clockwork.dualPort[p] && stores(a, p);
      if (reach.clockwork.parts[p] && c.parts[p] instanceof BusDevice && !written) {
        boolean selected = true;
        for (Pin pin : c.parts[p].pinout().pins()) {
          boolean high = (a.in[p] & pin.mask()) != 0;
          selected &= pin.role() != Pin.Role.SELECT || high != pin.activeLow();
        }
        if (selected) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether a part tells others of its stored state by fast nets that are no data lines. */
  private boolean tells(Trial a) {
    for (int p = 0; p < a.driven.length; p++) {
      if ((a.driven[p] & tellers[p]) != 0) {
        return true;
      }
    }
    return false;
  }

  /** Pins of each part by which it could tell others of its stored state on fast nets. */
  long[] telling() {
    return tellers;
  }

  private long[] tellers() {
    long[] tellers = new long[c.parts.length];
    for (int g = 0; g < c.partOf.length; g++) {
      int p = c.partOf[g];
      int net = c.netOf[g];
      boolean stores = p != c.cpu && Clockwork.stores(c, p) && !reach.clockwork.parts[p];
      if (stores && reach.fast[net] && reach.lineOf[net] == 0 && readByOthers(net, p)) {
        tellers[p] |= 1L << c.bitOf[g];
      }
    }
    return tellers;
  }

  private boolean readByOthers(int net, int part) {
    int[] all = c.groupOf[net] < 0 ? new int[] {net} : c.groups[c.groupOf[net]].nets();
    for (int other : all) {
      for (int g : c.receivers[other]) {
        if (c.partOf[g] != part) {
          return true;
        }
      }
    }
    return false;
  }
}
