package faultfinch.machine;

import faultfinch.part.BusDevice;
import faultfinch.part.M6502;
import faultfinch.part.Memory;
import faultfinch.part.RowMemory;
import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Decides from two trials of an access, one with all data low and one with all high, what of it may
 * be remembered. What both have in common does not depend on data; what differs must be data pins
 * following their line. Anything else (a part that commits on what the data say, two answers on one
 * line, a loop) is played plainly each time.
 */
final class Judge {
  private static final Bus DATA = new M6502().pinout().bus("D");
  private static final int MANY = -2;
  private static final int LINES = 16;

  private final PlainCycle plain;
  private final Circuit c;
  private final Reach reach;
  private final Influence influence;
  private final long[] lineDrivers;
  private final int[] lineNets;
  private final long[] tellers;
  private final Loops loops;
  private final MaskClasses classes;

  Judge(PlainCycle plain, Reach reach, Influence influence, long[] drivers, MaskClasses classes) {
    this.plain = plain;
    this.c = plain.circuit;
    this.reach = reach;
    this.influence = influence;
    this.lineDrivers = drivers;
    this.classes = classes;
    this.lineNets = c.cpu < 0 ? new int[0] : new HeldLines(c).nets();
    this.tellers = tellers();
    this.loops = new Loops(c);
  }

  /**
   * What may be remembered.
   *
   * @param held whether the access has to be played for the sake of a level that is only held
   */
  Shortcut of(Trial a, Trial b, int address, boolean reads, boolean held) {
    boolean odd = held || influence.refused() || a.stirs || b.stirs;
    odd |= !a.steps.equals(b.steps) || !sameKinds(a, b) || !dataOnly(a, b) || !stepsFollow(a, b);
    if (odd
        || !quiet(a)
        || loops.closed(a.driven)
        || tells(a)
        || clockworkSelected(a)
        || !rowsRefreshed(a)) {
      return Shortcut.plain();
    }
    if (reads && (a.read & ~b.read) != 0) {
      return Shortcut.plain();
    }
    int floats = HeldLines.floats(a.kind, lineNets);
    int[] drivers = drivers(a);
    // What somebody else puts on the lines of a write is not told by the two trials.
    if (!reads && drivers.length > 0) {
      return Shortcut.plain();
    }
    if (reads && !Arrays.equals(drivers, drivers(b)) || floats != 0 && !reads) {
      return Shortcut.plain();
    }
    if (reads && a.steps.isEmpty() && drivers.length > 0 && allCells(a, drivers)) {
      return read(a, b, address, drivers, floats);
    }
    if (drivers.length > 1) {
      return Shortcut.plain();
    }
    if (floats != 0) {
      return drivers.length == 0 && a.steps.isEmpty()
          ? loose(a, b, address, Places.NONE, floats)
          : Shortcut.plain();
    }
    if (!reads && !a.steps.isEmpty() && a.stepCells.equals(b.stepCells) && allStoreCells(a)) {
      Shortcut written = write(a, b, address);
      if (written != null) {
        return written;
      }
    }
    return influence.driverSwayed() || rowAmong(a, drivers)
        ? Shortcut.plain()
        : device(a, b, address, reads, drivers.length == 0 ? -1 : drivers[0]);
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

  private Shortcut device(Trial a, Trial b, int address, boolean reads, int driver) {
    Shortcut.Step drives =
        driver < 0 ? null : step(a, driver, Phase.C_END, a.in[driver], 0L, b.in[driver]);
    Shortcut.Step[] steps = new Shortcut.Step[a.steps.size()];
    for (int i = 0; i < steps.length; i++) {
      long before = a.stepBefore.get(i);
      steps[i] = step(a, a.part(i), a.phase(i), a.stepIn.get(i), before, b.stepIn.get(i));
    }
    boolean stateless = driver < 0 || !Clockwork.stores(c, driver);
    int lines = driver < 0 && steps.length == 0 ? influence.lines() : 0;
    return new Shortcut(
        Shortcut.Kind.DEVICE,
        Places.NONE,
        b.read & ~a.read,
        a.read & b.read,
        -1,
        new int[0],
        drives,
        steps,
        seen(a, b, address, lines),
        reads && steps.length == 0 && stateless,
        new long[] {-1, 0},
        0,
        carried(a, b));
  }

  private Shortcut.Seen seen(Trial a, Trial b, int address, int lines) {
    int[][] sways = new int[c.parts.length][];
    for (int p = 0; p < sways.length; p++) {
      sways[p] = new int[c.parts[p].pinout().pins().size()];
      for (int bit = 0; bit < sways[p].length; bit++) {
        sways[p][bit] = influence.atEnd(p, bit);
      }
    }
    return new Shortcut.Seen(a.in, b.in, address, lines, sways);
  }

  /** A read answered by memories alone. */
  private Shortcut read(Trial a, Trial b, int address, int[] drivers, int floats) {
    Places places = places(address, drivers, part -> a.looked[part]);
    int and = b.read & ~a.read & ~floats;
    int or = a.read & b.read & ~floats;
    int[] follows = new int[drivers.length];
    for (int k = 0; k < follows.length; k++) {
      follows[k] = drivers.length == 1 && wide(drivers[0]) ? 0 : lineOfData(drivers[k]) - 1;
    }
    boolean together = together(places, follows) && !stuck(places);
    if (floats != 0) {
      return together ? loose(a, b, address, places, floats) : Shortcut.plain();
    }
    return together ? memory(a, b, places, and, or) : wide(a, b, places, follows, and, or);
  }

  /** A write that does nothing but store cells; null if it does more. */
  private Shortcut write(Trial a, Trial b, int address) {
    int[] parts = IntStream.range(0, a.steps.size()).map(a::part).distinct().sorted().toArray();
    int[] cells = new int[parts.length];
    int[] follows = new int[parts.length];
    boolean one = parts.length == 1 && wide(parts[0]);
    for (int k = 0; k < parts.length; k++) {
      cells[k] = -1;
      for (int i = 0; i < a.steps.size(); i++) {
        if (a.part(i) == parts[k]) {
          if (cells[k] >= 0 && cells[k] != a.stepCells.get(i) || a.stepCells.get(i) < 0) {
            return null;
          }
          cells[k] = a.stepCells.get(i);
          follows[k] = one ? 0 : follows(parts[k], a.stepIn.get(i), b.stepIn.get(i));
        }
      }
    }
    Places places = places(address, parts, part -> cells[Arrays.binarySearch(parts, part)]);
    if (one) {
      Bus d = c.parts[parts[0]].pinout().bus("D");
      if (!ownLines(parts[0], d)) {
        return null;
      }
      int low = d.of(a.in[parts[0]]);
      int high = d.of(b.in[parts[0]]);
      return memory(a, b, places, high & ~low, low & high);
    }
    for (int p : parts) {
      if (wide(p)) {
        return null;
      }
    }
    if (!together(places, follows) || !whole(parts)) {
      return wide(a, b, places, follows, 0, 0);
    }
    int and = 0;
    int or = 0;
    for (int k = 0; k < parts.length; k++) {
      int own = 1 << c.cellShift[parts[k]];
      and |= follows[k] < Shortcut.LOW ? own : 0;
      or |= follows[k] == Shortcut.HIGH ? own : 0;
    }
    return memory(a, b, places, and, or);
  }

  private boolean wide(int part) {
    return c.parts[part] instanceof Memory;
  }

  /** Line that the one data input of a memory one bit wide follows, or the level it keeps. */
  private int follows(int part, long low, long high) {
    for (Pin pin : c.parts[part].pinout().pins()) {
      if (pin.role() == Pin.Role.DATA && pin.receives()) {
        if (((low ^ high) & pin.mask()) != 0) {
          return reach.lineOf[c.netOf[c.pinBase[part] + pin.bit()]] - 1;
        }
        return (low & pin.mask()) != 0 ? Shortcut.HIGH : Shortcut.LOW;
      }
    }
    throw new IllegalStateException(c.refs[part] + " has no data input");
  }

  /** Line of the net that the data output of a memory one bit wide is on, plus one; or 0. */
  private int lineOfData(int part) {
    for (Pin pin : c.parts[part].pinout().pins()) {
      if (pin.role() == Pin.Role.DATA && pin.drives()) {
        return reach.lineOf[c.netOf[c.pinBase[part] + pin.bit()]];
      }
    }
    return 0;
  }

  /** Whether all cells are bits of one byte, each on the line of its place in it. */
  private boolean together(Places places, int[] follows) {
    int[] parts = places.parts();
    for (int k = 0; k < parts.length; k++) {
      boolean own =
          wide(parts[k]) || follows[k] >= Shortcut.LOW || follows[k] == c.cellShift[parts[k]];
      boolean same =
          c.cellBase[parts[k]] == c.cellBase[parts[0]]
              && places.cells()[k] == places.cells()[0]
              && Arrays.equals(places.flips()[k], places.flips()[0]);
      if (!own || !same) {
        return false;
      }
    }
    return true;
  }

  private boolean stuck(Places places) {
    for (int k = 0; k < places.parts().length; k++) {
      if (plain.levels.pins[places.parts()[k]].stuck(places.cells()[k])) {
        return true;
      }
    }
    return false;
  }

  /** Whether no memory outside shares the byte of these. */
  private boolean whole(int[] parts) {
    for (int p = 0; p < c.parts.length; p++) {
      boolean shares = c.parts[p] instanceof RowMemory && c.cellBase[p] == c.cellBase[parts[0]];
      if (shares && Arrays.binarySearch(parts, p) < 0) {
        return false;
      }
    }
    return true;
  }

  private Places places(int address, int[] parts, java.util.function.IntUnaryOperator cell) {
    int[] cells = new int[parts.length];
    int[][] flips = new int[parts.length][LINES];
    for (int k = 0; k < parts.length; k++) {
      cells[k] = cell.applyAsInt(parts[k]);
      boolean row = c.parts[parts[k]] instanceof RowMemory;
      Bus pins =
          row ? ((RowMemory) c.parts[parts[k]]).address() : c.parts[parts[k]].pinout().bus("A");
      for (int i = 0; i < pins.width(); i++) {
        flip(flips[k], influence.atEnd(parts[k], pins.shift() + i), 1 << i);
        if (row) {
          flip(flips[k], influence.atRow(parts[k], pins.shift() + i), 1 << pins.width() + i);
        }
      }
    }
    return new Places(address, influence.lines(), parts, cells, flips);
  }

  private static void flip(int[] flips, int set, int bit) {
    if (set != 0 && set < Influence.CLOCKWORK) {
      flips[Integer.numberOfTrailingZeros(set)] ^= bit;
    }
  }

  private Shortcut memory(Trial a, Trial b, Places places, int and, int or) {
    return new Shortcut(
        Shortcut.Kind.MEMORY,
        places,
        and,
        or,
        classes.of(and, or),
        new int[0],
        null,
        new Shortcut.Step[0],
        seen(a, b, places.base(), places.lines()),
        false,
        new long[] {-1, 0},
        0,
        carried(a, b));
  }

  private Shortcut wide(Trial a, Trial b, Places places, int[] follows, int and, int or) {
    return new Shortcut(
        Shortcut.Kind.WIDE,
        places,
        and,
        or,
        -1,
        follows,
        null,
        new Shortcut.Step[0],
        seen(a, b, places.base(), places.lines()),
        false,
        new long[] {-1, 0},
        0,
        carried(a, b));
  }

  /** A read that some lines take no part in; only memories or nobody may drive the rest. */
  private Shortcut loose(Trial a, Trial b, int address, Places places, int floats) {
    boolean ownEyes = (c.readMask[c.cpu] & DATA.mask()) == 0;
    if (!ownEyes || !clean(a) || !clean(b) || drivenEarly(a, floats)) {
      return Shortcut.plain();
    }
    return new Shortcut(
        Shortcut.Kind.LOOSE,
        places,
        b.read & ~a.read & ~floats,
        a.read & b.read & ~floats,
        -1,
        new int[0],
        null,
        new Shortcut.Step[0],
        seen(a, b, address, influence.lines()),
        false,
        new long[] {-1, 0},
        floats,
        carried(a, b));
  }

  /** Whether a line that floats at the end carried something else before it in the same cycle. */
  private boolean drivenEarly(Trial t, int floats) {
    for (int i = 0; i < lineNets.length; i++) {
      if ((floats >>> i & 1) != 0 && t.drivenEarly[lineNets[i]]) {
        return true;
      }
    }
    return false;
  }

  /** Whether every driven data line is high or low, none in between. */
  private boolean clean(Trial t) {
    for (int net : lineNets) {
      if (t.kind[net] != Levels.FLOATS && Levels.mid(t.mv[net])) {
        return false;
      }
    }
    return true;
  }

  private Shortcut.Carried carried(Trial a, Trial b) {
    int and = 0;
    int or = 0;
    for (int i = 0; i < lineNets.length; i++) {
      boolean low = Levels.high(a.mv[lineNets[i]]);
      boolean high = Levels.high(b.mv[lineNets[i]]);
      and |= !low && high ? 1 << i : 0;
      or |= low && high ? 1 << i : 0;
    }
    return new Shortcut.Carried(and, or, clean(a) && clean(b));
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

  /** Whether no row that the access strobes, at any address it stands for, needs a clock. */
  private boolean rowsRefreshed(Trial a) {
    for (int p = 0; p < c.parts.length; p++) {
      if (a.row[p] >= 0) {
        Bus pins = ((RowMemory) c.parts[p]).address();
        int free = 0;
        for (int i = 0; i < pins.width(); i++) {
          free |= influence.atRow(p, pins.shift() + i) != 0 ? 1 << i : 0;
        }
        int base = a.row[p] & ~free;
        int some = 0;
        do {
          if (!plain.levels.pins[p].refreshed(base | some)) {
            return false;
          }
          some = some - free & free;
        } while (some != 0);
      }
    }
    return true;
  }

  /** Whether the access gets at registers of a part of the clockwork. */
  private boolean clockworkSelected(Trial a) {
    for (int p = 0; p < c.parts.length; p++) {
      if (reach.clockwork.parts[p] && c.parts[p] instanceof BusDevice) {
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

  /** The parts that drive data lines; {MANY, ...} if two of them drive one. */
  private int[] drivers(Trial t) {
    int[] drivers = IntStream.range(0, t.driven.length).filter(p -> driving(t, p) != 0).toArray();
    int[] onLine = new int[c.netCount];
    for (int p : drivers) {
      for (long left = driving(t, p); left != 0; left &= left - 1) {
        int net = c.netOf[c.pinBase[p] + Long.numberOfTrailingZeros(left)];
        if (onLine[net]++ > 0) {
          return new int[] {MANY, MANY};
        }
      }
    }
    return drivers;
  }

  // A pin that drives whatever the part wants says nothing of its own.
  private long driving(Trial t, int p) {
    return t.driven[p] & lineDrivers[p] & ~c.forceMask[p];
  }

  /** Whether what these parts drive is each one cell, as it was looked up. */
  private boolean allCells(Trial a, int[] parts) {
    for (int p : parts) {
      boolean cell =
          p >= 0 && a.looked[p] >= 0 && (parts.length == 1 && plainCell(p) || rowCell(p));
      if (!cell || wide(p) && plain.levels.pins[p].stuck(a.looked[p])) {
        return false;
      }
    }
    return true;
  }

  private boolean plainCell(int part) {
    return wide(part) && ownLines(part, c.parts[part].pinout().bus("D"));
  }

  private boolean rowCell(int part) {
    return c.parts[part] instanceof RowMemory && lineOfData(part) > 0;
  }

  private boolean allStoreCells(Trial a) {
    for (int i = 0; i < a.steps.size(); i++) {
      int p = a.part(i);
      if (a.stepCells.get(i) < 0 || !wide(p) && !(c.parts[p] instanceof RowMemory)) {
        return false;
      }
    }
    return true;
  }

  /** Each data pin is on the line of its number or on no line. */
  private boolean ownLines(int part, Bus d) {
    for (int i = 0; i < d.width(); i++) {
      int line = reach.lineOf[c.netOf[c.pinBase[part] + d.shift() + i]];
      if (line != 0 && line != i + 1) {
        return false;
      }
    }
    return d.width() == DATA.width();
  }

  private Shortcut.Step step(Trial a, int part, Phase phase, long inA, long before, long inB) {
    long differs = inA ^ inB;
    byte[] line = new byte[c.parts[part].pinout().pins().size()];
    for (int bit = 0; bit < line.length; bit++) {
      boolean follows = (differs >>> bit & 1) != 0;
      boolean drivesLine = (a.driven[part] >>> bit & 1) != 0;
      if (follows || drivesLine) {
        line[bit] = reach.lineOf[c.netOf[c.pinBase[part] + bit]];
      }
    }
    long slow = reach.slowPins[part];
    return new Shortcut.Step(part, phase, inA & ~slow & ~differs, before, slow, line);
  }
}
