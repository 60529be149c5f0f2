package faultfinch.machine;

import faultfinch.part.M6502;
import faultfinch.part.Memory;
import faultfinch.part.Part;
import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Asks the plain machine what an access does and decides whether that may be remembered.
 *
 * <p>The cycle is played twice on a copy, with everything that drives the data lines overruled to
 * all zeros and to all ones. What both have in common does not depend on data; what differs must be
 * data pins following their line. Anything else (a part that commits on what the data say, a line
 * nobody drives, a loop) is played plainly each time.
 */
final class Shortcuts {
  private static final Bus DATA = new M6502().pinout().bus("D");
  private static final int ALL_LINES = 0xFF;
  private static final int KEPT = 64;

  private final PlainCycle plain;
  private final Circuit c;
  private final Reach reach;
  private final long[] lineDrivers;
  private final Map<List<Integer>, Tables> bySlow = new LinkedHashMap<>();
  private final List<Integer> classes = new ArrayList<>();
  private int[] and = new int[1 << (31 - FastBus.CELL_BITS)];
  private int[] or = new int[1 << (31 - FastBus.CELL_BITS)];
  private final boolean[] drivenOnce;
  private final boolean[] floatedOnce;
  private final boolean[] contended;
  private final boolean[] isolated;
  private final Levels.Copy copy;
  private final Store saved;
  private final PlainCycle.Agenda agenda;
  private final boolean[] hasRegister;
  private final int[] lineNets;
  private final int[] keyed;
  private final int[] holders;
  private Tables current;
  private final long[] tellers;
  private final boolean[] onlySlow;
  private final long[] restAt;
  private final boolean[] restKnown;
  private boolean flushed;

  Shortcuts(PlainCycle plain) {
    this.plain = plain;
    this.c = plain.circuit;
    // Class 0, which the direct path takes for granted: every line follows its source.
    classes.add(ALL_LINES << 8);
    and[0] = ALL_LINES;
    this.reach = new Reach(c);
    this.copy = new Levels.Copy(plain.levels);
    this.saved = plain.store.copy();
    this.agenda = new PlainCycle.Agenda(plain);
    this.lineNets = c.cpu < 0 ? new int[0] : new HeldLines(c).nets();
    this.keyed = new int[reach.keys.length];
    this.holders = holders();
    this.isolated = isolated();
    this.hasRegister = new boolean[c.parts.length];
    for (int p = 0; p < c.parts.length; p++) {
      for (int net : reach.lowAddress) {
        hasRegister[p] |= onNet(p, net);
      }
    }
    this.tellers = tellers();
    this.onlySlow = new boolean[c.parts.length];
    for (int p = 0; p < c.parts.length; p++) {
      long receives =
          c.parts[p].pinout().pins().stream()
              .filter(Pin::receives)
              .mapToLong(Pin::mask)
              .reduce(0, (x, y) -> x | y);
      onlySlow[p] = (receives & ~reach.slowPins[p]) == 0;
    }
    this.restAt = new long[c.parts.length];
    this.restKnown = new boolean[c.parts.length];
    this.drivenOnce = new boolean[c.netCount];
    this.floatedOnce = new boolean[c.netCount];
    this.contended = new boolean[c.netCount];
    this.lineDrivers = new long[c.parts.length];
    for (int g = 0; g < c.partOf.length; g++) {
      if (reach.lineOf[c.netOf[g]] != 0 && c.partOf[g] != c.cpu) {
        lineDrivers[c.partOf[g]] |= 1L << c.bitOf[g] & ~reach.passing[c.partOf[g]];
      }
    }
  }

  /** Whether the wiring allows no tables at all. */
  boolean refused() {
    return reach.refused;
  }

  Reach reach() {
    return reach;
  }

  int[] and() {
    return and;
  }

  int[] or() {
    return or;
  }

  /** The tables that hold while the slow levels are as they are now. */
  Tables tables() {
    boolean same = current != null;
    for (int i = 0; same && i < keyed.length; i++) {
      same = keyed[i] == plain.levels.mv[reach.keys[i]];
    }
    if (same) {
      return current;
    }
    List<Integer> key = new ArrayList<>(reach.keys.length);
    for (int i = 0; i < keyed.length; i++) {
      keyed[i] = plain.levels.mv[reach.keys[i]];
      key.add(keyed[i]);
    }
    Tables tables = bySlow.get(key);
    if (tables == null) {
      if (bySlow.size() >= KEPT) {
        bySlow.remove(bySlow.keySet().iterator().next());
      }
      tables = new Tables(reach.syncRead);
      bySlow.put(key, tables);
    }
    current = tables;
    return tables;
  }

  /** Whether a net turned out contended since this was last asked, so that tables were dropped. */
  boolean flushed() {
    boolean was = flushed;
    flushed = false;
    return was;
  }

  /**
   * Whether what happens by itself at a cycle moves only slow nets that no table depends on and the
   * processor does not read, makes no part store anything in the phases after, and nothing else
   * happens until some cycles later.
   */
  boolean quiet(long cycle, int apart) {
    Levels levels = plain.levels;
    levels.save(copy);
    saved.set(plain.store);
    plain.save(agenda);
    boolean moved = levels.moved;
    levels.now = cycle;
    plain.events();
    levels.settle();
    boolean quiet = plain.nextEvent >= cycle + 2L * apart;
    for (int net = 0; net < c.netCount; net++) {
      quiet &= levels.mv[net] == copy.mv[net] || isolated[net];
    }
    if (quiet) {
      quiet = !plain.stirs();
    }
    levels.load(copy);
    plain.store.set(saved);
    plain.load(agenda);
    levels.moved = moved;
    return quiet;
  }

  private boolean[] isolated() {
    boolean[] isolated = new boolean[c.netCount];
    for (int net = 0; net < c.netCount; net++) {
      isolated[net] = !reach.fast[net];
      for (int g : c.receivers[net]) {
        isolated[net] &= c.partOf[g] != c.cpu;
      }
    }
    for (int key : reach.keys) {
      isolated[key] = false;
    }
    return isolated;
  }

  /** Cycle at which a level is next lost that tables depend on or a slow pin reads. */
  long nextExpiry() {
    Levels levels = plain.levels;
    long next = Part.NEVER;
    for (int net : holders) {
      next = Math.min(next, levels.expiresAt(net));
    }
    return next;
  }

  /** Nets that can hold a level that matters here: what nothing ever drives has none to lose. */
  private int[] holders() {
    return IntStream.range(0, c.netCount)
        .filter(net -> !reach.holds[net] && reach.lineOf[net] == 0)
        .filter(net -> c.drivers[net].length > 0 || c.groupOf[net] >= 0)
        .filter(net -> c.loadMv[net].length == 0 && c.lsInputs[net] == 0)
        .toArray();
  }

  /** One trial of a cycle on a copy. */
  private static final class Trial implements Recorder {
    final List<Integer> steps = new ArrayList<>();
    final List<Integer> stepCells = new ArrayList<>();
    final List<Long> stepIn = new ArrayList<>();
    final List<Long> stepBefore = new ArrayList<>();
    final int[] looked;
    final PlainCycle plain;
    final boolean[] onlySlow;
    long[] in;
    long[] driven;
    long[] everDriven;
    byte[] kind;
    int[] mv;
    int read;

    /** Whether a slow net moved, or a clock was not where it rests. */
    boolean stirs;

    Trial(PlainCycle plain, boolean[] onlySlow) {
      this.plain = plain;
      this.onlySlow = onlySlow;
      this.looked = new int[plain.circuit.parts.length];
      this.everDriven = new long[plain.circuit.parts.length];
      Arrays.fill(looked, -1);
    }

    @Override
    public void held(int part, boolean changed) {
      // What only slow levels tell a part to store, it has stored long since, or it is not at rest.
      if (changed || !onlySlow[part]) {
        note(part, -1);
        stirs |= onlySlow[part];
      }
    }

    @Override
    public void looked(int part, int cell) {
      looked[part] = cell;
    }

    @Override
    public void stored(int part, int cell) {
      note(part, cell);
    }

    private void note(int part, int cell) {
      if (part != plain.circuit.cpu) {
        int step = part * Phase.values().length + plain.levels.phase.ordinal();
        int at = steps.indexOf(step);
        if (at < 0) {
          steps.add(step);
          stepCells.add(cell);
          stepIn.add(plain.levels.pins[part].in);
          stepBefore.add(plain.levels.pins[part].before);
        } else if (stepIn.get(at) != plain.levels.pins[part].in) {
          stirs = true;
        } else if (stepCells.get(at) != cell) {
          stepCells.set(at, -1);
        }
      }
    }
  }

  /** Plays the access on a copy and says what may be remembered of it. */
  Shortcut ask(int address, boolean reads, boolean sync) {
    plain.levels.save(copy);
    saved.set(plain.store);
    plain.save(agenda);
    Trial low = trial(address, reads, sync, false);
    restore();
    Trial high = trial(address, reads, sync, true);
    restore();
    return judge(low, high, reads);
  }

  private void restore() {
    plain.levels.load(copy);
    plain.store.set(saved);
    plain.load(agenda);
    plain.levels.moved = false;
    plain.levels.recorder = Recorder.NONE;
    plain.levels.overrule = -1;
  }

  private Trial trial(int address, boolean reads, boolean sync, boolean ones) {
    Trial t = new Trial(plain, onlySlow);
    Levels levels = plain.levels;
    levels.recorder = t;
    levels.overrule = reads ? (ones ? 1 : 0) : -1;
    levels.overruled = lineDrivers;
    for (int p = 0; p < lineDrivers.length; p++) {
      if (lineDrivers[p] != 0) {
        levels.touch(p);
      }
    }
    plain.watchPhases(
        (phase, ns) -> {
          t.stirs |= moved(phase);
          for (int p = 0; p < t.everDriven.length; p++) {
            t.everDriven[p] |= levels.driven[p];
          }
          if (phase == Phase.C_END) {
            t.in = Arrays.stream(levels.pins).mapToLong(p -> p.in).toArray();
            t.driven = levels.driven.clone();
            t.kind = levels.kind.clone();
            t.mv = levels.mv.clone();
          }
        });
    plain.play(address, reads, ones ? 0xFF : 0, sync);
    plain.watchPhases((phase, ns) -> {});
    t.read = plain.read;
    return t;
  }

  /** Whether a slow net has moved since the access began, or a fast clock is not at rest. */
  private boolean moved(Phase phase) {
    for (int net = 0; net < c.netCount; net++) {
      if (!reach.fast[net] && plain.levels.mv[net] != copy.mv[net]) {
        return true;
      }
    }
    return (phase == Phase.V_ROW || phase == Phase.C_END) && !clocksRest();
  }

  /**
   * Whether every clock pin on a fast net is at the level it has at the edge between two cycles,
   * and every control pin of the processor there is high. The level of a clock is learnt from the
   * first access; then no edge falls between one remembered cycle and the next.
   */
  boolean clocksRest() {
    boolean rest =
        reach.fastControl == 0 || (~plain.levels.pins[c.cpu].in & reach.fastControl) == 0;
    for (int p = 0; p < c.parts.length; p++) {
      if (reach.fastEdges[p] != 0) {
        long now = plain.levels.pins[p].in & reach.fastEdges[p];
        restAt[p] = restKnown[p] ? restAt[p] : now;
        restKnown[p] = true;
        rest &= now == restAt[p];
      }
    }
    return rest;
  }

  private Shortcut judge(Trial a, Trial b, boolean reads) {
    boolean held = heldMatters(a);
    boolean same = a.steps.equals(b.steps) && Arrays.equals(a.kind, b.kind);
    boolean odd = held || !same || a.stirs || b.stirs || !dataOnly(a, b) || !stepsFollow(a, b);
    if (odd || !quiet(a) || loops(a) || tells(a)) {
      return Shortcut.plain();
    }
    int driver = reads ? soleDriver(a) : -1;
    boolean cellsSame = a.stepCells.equals(b.stepCells);
    if (driver == MANY || driver != soleDriver(b) && reads) {
      return Shortcut.plain();
    }
    int and = b.read & ~a.read;
    int or = a.read & b.read;
    if (reads && (a.read & ~b.read) != 0) {
      return Shortcut.plain();
    }
    int floats = HeldLines.floats(a.kind, lineNets);
    if (floats != 0) {
      return loose(a, b, reads, driver, floats);
    }
    if (reads && a.steps.isEmpty() && driver >= 0 && plainCell(a, driver)) {
      return memory(a, b, c.cellBase[driver] + a.looked[driver], and, or);
    }
    if (!reads && cellsSame && oneCell(a) >= 0) {
      int at = oneCell(a);
      int part = a.steps.get(0) / Phase.values().length;
      long lowIn = a.in[part];
      long highIn = b.in[part];
      Bus d = c.parts[part].pinout().bus("D");
      if (ownLines(part, d)) {
        int dl = d.of(lowIn);
        int dh = d.of(highIn);
        return memory(a, b, c.cellBase[part] + at, dh & ~dl, dl & dh);
      }
    }
    Shortcut.Step drives =
        driver < 0 ? null : step(a, driver, Phase.C_END, a.in[driver], 0L, b.in[driver]);
    Shortcut.Step[] steps = new Shortcut.Step[a.steps.size()];
    for (int i = 0; i < steps.length; i++) {
      int part = a.steps.get(i) / Phase.values().length;
      Phase phase = Phase.values()[a.steps.get(i) % Phase.values().length];
      steps[i] = step(a, part, phase, a.stepIn.get(i), a.stepBefore.get(i), b.stepIn.get(i));
    }
    boolean steady = reads && steps.length == 0 && (driver < 0 || stateless(driver));
    return new Shortcut(
        Shortcut.Kind.DEVICE,
        0,
        and,
        or,
        -1,
        drives,
        steps,
        a.in,
        b.in,
        steady,
        new long[] {-1, 0},
        0,
        clean(a) && clean(b));
  }

  private boolean stateless(int part) {
    return c.parts[part].pinout().words().isEmpty()
        && c.parts[part].pinout().cellArrays().isEmpty();
  }

  private static final int MANY = -2;

  /** A read that some lines take no part in; only a memory or nobody may drive the rest. */
  private Shortcut loose(Trial a, Trial b, boolean reads, int driver, int floats) {
    boolean memory = driver >= 0 && plainCell(a, driver);
    boolean ownEyes = (c.readMask[c.cpu] & DATA.mask()) == 0;
    if (!reads || !a.steps.isEmpty() || driver >= 0 && !memory || !ownEyes) {
      return Shortcut.plain();
    }
    if (!clean(a) || !clean(b)) {
      return Shortcut.plain();
    }
    return new Shortcut(
        Shortcut.Kind.LOOSE,
        memory ? c.cellBase[driver] + a.looked[driver] : -1,
        b.read & ~a.read & ~floats,
        a.read & b.read & ~floats,
        -1,
        null,
        new Shortcut.Step[0],
        a.in,
        b.in,
        false,
        new long[] {-1, 0},
        floats,
        true);
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

  /** Whether a read that nobody answers is the same all over its page. */
  boolean pageWideSilence(Shortcut s) {
    return s.kind() == Shortcut.Kind.LOOSE
        && s.cell() < 0
        && reach.lowAddressPlain
        && !registersSelected(s);
  }

  private Shortcut memory(Trial a, Trial b, int cell, int and, int or) {
    int masks = and << 8 | or;
    int index = classes.indexOf(masks);
    if (index < 0 && classes.size() < this.and.length) {
      index = classes.size();
      classes.add(masks);
      this.and[index] = and;
      this.or[index] = or;
    }
    int packed = index < 0 || cell > FastBus.CELL_MASK ? -1 : index << FastBus.CELL_BITS | cell;
    return new Shortcut(
        Shortcut.Kind.MEMORY,
        cell,
        and,
        or,
        packed,
        null,
        new Shortcut.Step[0],
        a.in,
        b.in,
        false,
        new long[] {-1, 0},
        0,
        clean(a) && clean(b));
  }

  /** Pins that read otherwise in the two trials are data pins on a data line, and follow it. */
  private boolean dataOnly(Trial a, Trial b) {
    for (int p = 0; p < a.in.length; p++) {
      long differs = a.in[p] ^ b.in[p];
      if ((differs & a.in[p]) != 0) {
        return false;
      }
      while (differs != 0) {
        int bit = Long.numberOfTrailingZeros(differs);
        differs &= differs - 1;
        int g = c.pinBase[p] + bit;
        boolean data = c.parts[p].pinout().pins().get(bit).role() == Pin.Role.DATA;
        if (reach.lineOf[c.netOf[g]] == 0 || !data && tellsMore(g, a, b)) {
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
      while (on != 0) {
        int bit = Long.numberOfTrailingZeros(on);
        on &= on - 1;
        if (readByOthers(c.netOf[c.pinBase[p] + bit], p)) {
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
      int p = a.steps.get(i) / Phase.values().length;
      long inA = a.stepIn.get(i);
      long differs = inA ^ b.stepIn.get(i);
      if ((differs & inA) != 0 || c.edgePins(p) != 0 && !c.parts[p].commitsEveryPhase()) {
        return false;
      }
      while (differs != 0) {
        int bit = Long.numberOfTrailingZeros(differs);
        differs &= differs - 1;
        if (reach.lineOf[c.netOf[c.pinBase[p] + bit]] == 0) {
          return false;
        }
      }
    }
    return true;
  }

  /** Nothing is stored in the video half and nothing oscillates. */
  private boolean quiet(Trial a) {
    for (int step : a.steps) {
      if (step % Phase.values().length < Phase.C_ROW.ordinal()) {
        return false;
      }
    }
    for (int net = 0; net < c.netCount; net++) {
      if (a.kind[net] == Levels.OSCILLATES) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether outputs that actually drive feed themselves: then the levels depend on the phase
   * before. An output that lets go follows only what enables it.
   */
  private boolean loops(Trial a) {
    int n = c.nodePart.length;
    byte[] seen = new byte[n];
    for (int node = 0; node < n; node++) {
      if (c.looped[node] && cycle(node, a, seen)) {
        return true;
      }
    }
    return false;
  }

  private boolean cycle(int node, Trial a, byte[] seen) {
    if (seen[node] != 0) {
      return seen[node] == 1;
    }
    seen[node] = 1;
    if (c.nodeGroup[node] >= 0) {
      return true;
    }
    int p = c.nodePart[node];
    boolean drives = (a.driven[p] & c.nodePins[node]) != 0;
    for (int other = c.islandFrom[node]; other < c.islandTo[node]; other++) {
      long on = drives || c.nodeEnables[node] == 0 ? c.nodeFollows[node] : c.nodeEnables[node];
      if (feeds(other, p, on) && cycle(other, a, seen)) {
        return true;
      }
    }
    seen[node] = 2;
    return false;
  }

  private boolean feeds(int node, int part, long pins) {
    long left = pins;
    while (left != 0) {
      int bit = Long.numberOfTrailingZeros(left);
      left &= left - 1;
      int net = c.netOf[c.pinBase[part] + bit];
      int[] all = c.groupOf[net] < 0 ? new int[] {net} : c.groups[c.groupOf[net]].nets();
      for (int reached : all) {
        for (int g : c.drivers[reached]) {
          if (c.partOf[g] == c.nodePart[node] && (c.nodePins[node] >>> c.bitOf[g] & 1) != 0) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /**
   * Whether this access has to be played for the sake of a level that is only held. A net that
   * something could have driven and that somebody reads must not float in a remembered access: what
   * it holds is not known there. Where nobody reads it, what it holds shows on a probe all the
   * same; then the accesses that drive it are played, so that its last level is always at hand.
   */
  private boolean heldMatters(Trial a) {
    boolean plainly = false;
    for (int net = 0; net < c.netCount; net++) {
      if (reach.holds[net]) {
        boolean floats = a.kind[net] == Levels.FLOATS;
        if (Reach.isRead(c, net)) {
          plainly |= floats;
        } else {
          floatedOnce[net] |= floats;
          drivenOnce[net] |= !floats;
          if (floatedOnce[net] && drivenOnce[net] && !contended[net]) {
            contended[net] = true;
            flushed = true;
            bySlow.clear();
            current = null;
          }
          plainly |= !floats && contended[net];
        }
      }
    }
    return plainly;
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
      boolean stores =
          p != c.cpu
              && !c.parts[p].pinout().words().isEmpty() | c.parts[p].pinout().cellCount() > 0;
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

  private int soleDriver(Trial a) {
    int driver = -1;
    for (int p = 0; p < a.driven.length; p++) {
      // A pin that drives whatever the part wants says nothing of its own.
      if ((a.driven[p] & lineDrivers[p] & ~c.forceMask[p]) != 0) {
        if (driver >= 0) {
          return MANY;
        }
        driver = p;
      }
    }
    return driver;
  }

  private boolean plainCell(Trial a, int part) {
    return c.parts[part] instanceof Memory
        && a.looked[part] >= 0
        && !plain.levels.pins[part].stuck(a.looked[part])
        && ownLines(part, c.parts[part].pinout().bus("D"));
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

  /**
   * Whether what was found for one address holds for its whole page, cell by cell: the low address
   * lines reach nothing but register pins, this memory's own low lines are those, and no other part
   * is selected whose next register might do something.
   */
  boolean pageWide(Shortcut s) {
    return s.packed() >= 0
        && reach.lowAddressPlain
        && lowLinesOwn(memoryOf(s.cell()))
        && !registersSelected(s);
  }

  private boolean onNet(int part, int net) {
    for (int g : c.receivers[net]) {
      if (c.partOf[g] == part) {
        return true;
      }
    }
    return false;
  }

  /** Whether a part with registers, other than a memory, is selected; it is if nothing selects. */
  private boolean registersSelected(Shortcut s) {
    for (int p = 0; p < c.parts.length; p++) {
      if (c.alive[p] && !(c.parts[p] instanceof Memory) && hasRegister[p]) {
        boolean selected = true;
        for (Pin pin : c.parts[p].pinout().pins()) {
          boolean high = (s.readsA()[p] & pin.mask()) != 0;
          selected &= pin.role() != Pin.Role.SELECT || high != pin.activeLow();
        }
        if (selected) {
          return true;
        }
      }
    }
    return false;
  }

  private int memoryOf(int cell) {
    int at = Arrays.binarySearch(c.cellBase, cell);
    if (at < 0) {
      return -at - 2;
    }
    // Parts without cells share the base of the next one that has them.
    while (at + 1 < c.cellBase.length && c.cellBase[at + 1] == cell) {
      at++;
    }
    return at;
  }

  private boolean lowLinesOwn(int part) {
    Bus address = c.parts[part].pinout().bus("A");
    for (int i = 0; i < reach.lowAddress.length; i++) {
      int bit = address.shift() + i;
      boolean own = c.netOf[c.pinBase[part] + bit] == reach.lowAddress[i];
      if (!own || (c.readMask[part] >>> bit & 1) != 0) {
        return false;
      }
    }
    return true;
  }

  /** Whether a cell has a stuck bit. */
  boolean stuck(int cell) {
    int part = memoryOf(cell);
    return plain.levels.pins[part].stuck(cell - c.cellBase[part]);
  }

  /** The one memory cell that is all this write does, or -1. */
  private int oneCell(Trial a) {
    int cell = a.stepCells.isEmpty() ? -1 : a.stepCells.get(0);
    for (int i = 0; i < a.steps.size(); i++) {
      int part = a.steps.get(i) / Phase.values().length;
      boolean fits =
          a.stepCells.get(i) == cell
              && part == a.steps.get(0) / Phase.values().length
              && c.parts[part] instanceof Memory;
      if (!fits) {
        return -1;
      }
    }
    return cell;
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
