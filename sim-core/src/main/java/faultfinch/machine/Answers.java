package faultfinch.machine;

import faultfinch.part.DualPortMemory;
import faultfinch.part.M6502;
import faultfinch.part.Memory;
import faultfinch.part.RowMemory;
import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Writes down as a {@link Shortcut} what two trials of an access showed: which cells were read or
 * written and where they are for other addresses, what the lines carried, or which parts to run.
 */
final class Answers {
  private static final Bus DATA = new M6502().pinout().bus("D");
  private static final int LINES = 16;
  private static final int BYTES = 256;

  private final PlainCycle plain;
  private final Circuit c;
  private final Reach reach;
  private final Influence influence;
  private final int[] lineNets;
  private final MaskClasses classes;
  private final LineDrivers drivers;

  Answers(
      PlainCycle plain,
      Reach reach,
      Influence influence,
      MaskClasses classes,
      LineDrivers drivers) {
    this.drivers = drivers;
    this.plain = plain;
    this.c = plain.circuit;
    this.reach = reach;
    this.influence = influence;
    this.classes = classes;
    this.lineNets = c.cpu < 0 ? new int[0] : new HeldLines(c).nets();
  }

  Shortcut device(Trial a, Trial b, int address, boolean reads, int driver) {
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
        carried(a, b),
        Rows.NONE);
  }

  private Shortcut.Seen seen(Trial a, Trial b, int address, int lines) {
    int[][] sways = new int[c.parts.length][];
    boolean[] unheard = drivers.unheard(a);
    for (int p = 0; p < sways.length; p++) {
      sways[p] = new int[c.parts[p].pinout().pins().size()];
      for (int bit = 0; bit < sways[p].length; bit++) {
        int net = c.netOf[c.pinBase[p] + bit];
        // What is only held there moves with accesses that are played.
        boolean held = reach.holds[net] && a.kind[net] == Levels.FLOATS;
        sways[p][bit] = held || unheard[net] ? Influence.CLOCKWORK : influence.atEnd(p, bit);
      }
    }
    return new Shortcut.Seen(a.in, b.in, address, lines, sways);
  }

  /** A read answered by memories alone. */
  Shortcut read(Trial a, Trial b, int address, int[] drivers, int floats) {
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
  Shortcut write(Trial a, Trial b, int address) {
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
    return c.parts[part] instanceof Memory || c.parts[part] instanceof DualPortMemory;
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
      if (!own) {
        return false;
      }
    }
    return sideBySide(places);
  }

  /** Whether all cells are bits of one byte. */
  private boolean sideBySide(Places places) {
    int[] parts = places.parts();
    for (int k = 0; k < parts.length; k++) {
      boolean same =
          c.cellBase[parts[k]] == c.cellBase[parts[0]]
              && places.cells()[k] == places.cells()[0]
              && Arrays.equals(places.flips()[k], places.flips()[0]);
      if (!same) {
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
        carried(a, b),
        Rows.NONE);
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
        carried(a, b),
        Rows.NONE);
  }

  /**
   * A read or a write of one byte of these memories, of which it is told value by value what
   * becomes of it.
   */
  Shortcut valued(Trial t, int address, int[] parts, int[] cells) {
    Places places = places(address, parts, part -> cells[Arrays.binarySearch(parts, part)]);
    if (!sideBySide(places) || stuck(places) || parts.length > 1 && !whole(parts)) {
      return Shortcut.plain();
    }
    int[] values = new int[BYTES];
    Arrays.fill(values, Shortcut.UNTRIED);
    return new Shortcut(
        Shortcut.Kind.VALUED,
        places,
        0,
        0,
        -1,
        values,
        null,
        new Shortcut.Step[0],
        seen(t, t, address, places.lines()),
        false,
        new long[] {-1, 0},
        0,
        new Shortcut.Carried(0, 0, false),
        Rows.NONE);
  }

  /** A read that some lines take no part in; only memories or nobody may drive the rest. */
  Shortcut loose(Trial a, Trial b, int address, Places places, int floats) {
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
        carried(a, b),
        Rows.NONE);
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

  /** Whether what these parts drive is each one cell, as it was looked up. */
  boolean allCells(Trial a, int[] parts) {
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

  boolean allStoreCells(Trial a) {
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
    return d.width() <= DATA.width();
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
