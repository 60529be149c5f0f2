package faultfinch.machine;

import faultfinch.part.Part;
import faultfinch.signal.Phase;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Asks the plain machine what an access does, and keeps the answers by the slow levels they hold
 * for.
 *
 * <p>The cycle is played twice on a copy, with everything that drives the data lines overruled to
 * all zeros and to all ones; {@link Judge} decides what of it may be remembered, {@link Influence}
 * for which other addresses.
 */
final class Shortcuts {
  /** Numbers that say what a part tells: which pins drive and how, in halves. */
  private static final int TOLD = 4;

  private static final int ALL_LINES = 0xFFFF;

  private final PlainCycle plain;
  private final Circuit c;
  private final Reach reach;
  private final long[] lineDrivers;
  private final Lore lore;
  private final Influence influence;
  private final Judge judge;
  private final Actors actors;

  /** The lowest pin of each net. */
  private final int[] first;

  private final boolean[] isolated;
  private final Levels.Copy copy;
  private final PlainCycle.Agenda agenda;
  private final SlowSide slowSide;
  private final Chatter chatter;
  private final int[] keyed;

  /** Parts that could tell of their stored state by pins on fast nets. */
  private final int[] telling;

  private int[] holders;

  private Tables current;
  private final boolean[] onlySlow;
  private boolean flushed;
  private int[] scratch;

  /**
   * Asks a machine.
   *
   * @param lore what is known of its wiring, and where it is kept
   */
  Shortcuts(PlainCycle plain, Reach reach, Lore lore) {
    this.plain = plain;
    this.c = plain.circuit;
    this.reach = reach;
    this.lore = lore;
    this.first = new int[c.netCount];
    for (int g = c.netOf.length - 1; g >= 0; g--) {
      first[c.netOf[g]] = g;
    }
    this.copy = new Levels.Copy(plain.levels);
    this.agenda = new PlainCycle.Agenda(plain);
    this.slowSide = new SlowSide(plain, reach);
    this.holders = holders();
    this.isolated = isolated();
    this.chatter = new Chatter(plain, reach, isolated);
    this.onlySlow = new boolean[c.parts.length];
    for (int p = 0; p < c.parts.length; p++) {
      onlySlow[p] = reach.onlySlow(p);
    }
    this.lineDrivers = new long[c.parts.length];
    for (int g = 0; g < c.partOf.length; g++) {
      if (reach.lineOf[c.netOf[g]] != 0 && c.partOf[g] != c.cpu) {
        lineDrivers[c.partOf[g]] |= 1L << c.bitOf[g] & ~reach.passing[c.partOf[g]];
      }
    }
    this.influence = c.cpu < 0 ? null : new Influence(plain, reach, lineDrivers);
    this.judge = new Judge(plain, reach, influence, lineDrivers, lore.classes);
    this.actors = new Actors(plain.levels);
    this.telling =
        IntStream.range(0, c.parts.length).filter(p -> judge.telling()[p] != 0).toArray();
    this.keyed = new int[reach.keys.length + TOLD * telling.length + 1];
  }

  /** Whether the wiring allows no tables at all. */
  boolean refused() {
    return reach.refused;
  }

  Reach reach() {
    return reach;
  }

  /** The nets that no access moves. */
  SlowSide slowSide() {
    return slowSide;
  }

  /** Parts that talk among themselves. */
  Chatter chatter() {
    return chatter;
  }

  int[] and() {
    return lore.classes.and;
  }

  int[] or() {
    return lore.classes.or;
  }

  /** The clockwork's way from here on, or empty if it does not come round. */
  Optional<Orbit> orbit(long cycle) {
    Optional<Orbit> way =
        lore.way
            .flatMap(known -> known.on(plain, reach.clockwork, cycle))
            .or(() -> Orbit.from(plain, reach, influence, cycle));
    lore.way = way.or(() -> lore.way);
    return way;
  }

  /** What of the clockwork has a say in the clocks of parts that take data. */
  List<Takings.Gate> gates() {
    if (lore.gates.isEmpty()) {
      lore.gates = Optional.of(Takings.gates(reach.clockwork));
    }
    return lore.gates.get();
  }

  /** Whether a switch to a supply net loads a net that is not slow: no level tells of it. */
  boolean gated() {
    for (int net = 0; net < c.netCount; net++) {
      for (int gate : c.loadSwitch[net]) {
        if (gate >= 0 && (reach.fast[net] || reach.clockwork.nets[net])) {
          return true;
        }
      }
    }
    return false;
  }

  /** Goes on with what is known of a wiring that has come back. */
  void resume() {
    holders = holders();
    if (judge.loopsMoved() || gated()) {
      forget();
    }
  }

  /** Drops what is known if a loop stands otherwise than when that was asked. */
  void forgetLoops() {
    if (judge.loopsMoved()) {
      forget();
    }
  }

  /** Drops all that is known: what it depends on is otherwise, and no level tells of it. */
  void forget() {
    lore.forget();
    current = null;
  }

  /** The number of the rows that need no clock now; what is tabled depends on them. */
  private int refreshed() {
    boolean[][] rows = plain.levels.refreshed;
    return rows == null ? -1 : lore.number(rows);
  }

  /** The tables that hold while the slow levels are as they are now. */
  Tables tables() {
    boolean same = current != null;
    for (int i = 0; i < keyed.length; i++) {
      int now = key(i);
      same &= keyed[i] == now;
      keyed[i] = now;
    }
    if (same) {
      return current;
    }
    current = lore.tables(Arrays.stream(keyed).boxed().toList(), reach.syncRead);
    return current;
  }

  /**
   * Levels of the nets that tables depend on; then what parts tell by pins on fast nets; then the
   * rows that need no clock.
   */
  private int key(int i) {
    Levels levels = plain.levels;
    if (i < reach.keys.length) {
      return levels.mv[reach.keys[i]];
    }
    if (i == keyed.length - 1) {
      return refreshed();
    }
    int which = i - reach.keys.length;
    int p = telling[which / TOLD];
    long pins = judge.telling()[p] & levels.driven[p];
    long told = (which & 1) == 0 ? pins : pins & levels.bits[p];
    return (int) ((which & 2) == 0 ? told : told >>> 32);
  }

  /** Whether a net turned out contended since this was last asked, so that tables were dropped. */
  boolean flushed() {
    boolean was = flushed;
    flushed = false;
    return was;
  }

  /**
   * Whether what happens by itself at a cycle moves only slow nets that no table depends on and the
   * processor reads for interrupts alone, and nothing else happens until some cycles later.
   *
   * @return cycles for which parts then talk of it among themselves, 0 if none stores anything in
   *     the phases after; {@link Chatter#LOUD} if it is not so or not known
   */
  int quiet(long cycle, int apart) {
    plain.save(agenda);
    plain.store.begin();
    plain.levels.save(copy);
    boolean moved = plain.levels.moved;
    int[] due = happens(cycle);
    int talk = Chatter.LOUD;
    if (movesOnlyIsolated()) {
      talk = slowSide.undisturbed(due, copy.mv) ? 0 : chatter.tried(due, copy);
      if (talk == Chatter.LOUD) {
        undo(moved);
        plain.store.begin();
        happens(cycle);
        talk = plain.stirs() ? Chatter.LOUD : 0;
      }
    }
    boolean alone = plain.nextEvent >= cycle + talk + 2L * apart;
    undo(moved);
    return alone ? talk : Chatter.LOUD;
  }

  /** Lets happen what is due at a cycle; says which parts that were. */
  private int[] happens(long cycle) {
    plain.levels.now = cycle;
    int[] due = plain.due(cycle);
    plain.events();
    plain.levels.settle();
    return due;
  }

  private void undo(boolean moved) {
    plain.levels.load(copy);
    plain.store.back();
    plain.load(agenda);
    plain.levels.moved = moved;
  }

  private boolean movesOnlyIsolated() {
    boolean only = true;
    for (int net = 0; net < c.netCount; net++) {
      only &= plain.levels.mv[net] == copy.mv[net] || isolated[net];
    }
    return only;
  }

  private boolean[] isolated() {
    boolean[] isolated = new boolean[c.netCount];
    for (int net = 0; net < c.netCount; net++) {
      isolated[net] = !reach.fast[net];
      boolean read = false;
      for (int g : c.receivers[net]) {
        read |= c.partOf[g] == c.cpu;
      }
      // The core may be told of an interrupt late.
      isolated[net] &= !read || reach.fastControl == 0 && SlowSide.interrupts(c, net);
    }
    for (int key : reach.keys) {
      isolated[key] = false;
    }
    for (int key : reach.clockwork.keys) {
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

  /**
   * Nets that can hold a level that matters here: what nothing ever drives has none to lose but one
   * from before a key was let go.
   */
  private int[] holders() {
    return IntStream.range(0, c.netCount)
        .filter(net -> !reach.holds[net] && reach.lineOf[net] == 0)
        .filter(
            net ->
                c.drivers[net].length > 0
                    || c.groupOf[net] >= 0
                    || plain.levels.expiresAt(net) != Part.NEVER)
        .filter(net -> c.loadMv[net].length == 0 && c.lsInputs[net] == 0)
        .toArray();
  }

  /** Plays the access on a copy and says what may be remembered of it. */
  Shortcut ask(int address, boolean reads, boolean sync, boolean alone) {
    if (reach.shared) {
      Shortcut s = valued(address, reads, 0, sync, alone ? 0 : ALL_LINES);
      restore();
      return s;
    }
    plain.levels.save(copy);
    plain.store.begin();
    plain.save(agenda);
    influence.begin(alone ? 0 : ALL_LINES);
    Trial low = trial(address, reads, sync, false);
    restore();
    plain.store.begin();
    Trial high = trial(address, reads, sync, true);
    restore();
    return judge.of(low, high, address, reads, heldMatters(low));
  }

  /** Plays the access on a copy with the data as they are; the levels are left as it left them. */
  private Shortcut valued(int address, boolean reads, int data, boolean sync, int lines) {
    plain.levels.save(copy);
    plain.store.begin();
    plain.save(agenda);
    influence.begin(lines);
    Trial t = new Trial(plain, onlySlow, reach.clockwork);
    played(t, address, reads, data, sync, () -> {});
    return judge.valued(t, address, reads, heldMatters(t));
  }

  /** What the byte that an access reads, or these data that it writes, become. */
  int value(Shortcut s, int address, boolean reads, int data, boolean sync) {
    Shortcut tried = valued(address, reads, data, sync, s.places().lines());
    boolean alike = judge.alike(s, tried, address);
    int at = s.cell(c, address);
    int value = reads ? plain.read : plain.store.cells()[at] & 0xFF;
    restore();
    return alike ? value : Shortcut.PLAYED;
  }

  /** Whether a read of this address, made once more, leaves all as it was, and so again after. */
  boolean stands(int address) {
    boolean[] driven = new boolean[c.netCount];
    plain.levels.save(copy);
    plain.store.begin();
    plain.save(agenda);
    influence.begin(0);
    int read = plain.read;
    Trial t = new Trial(plain, onlySlow, reach.clockwork);
    played(
        t,
        address,
        true,
        0,
        false,
        () -> {
          for (int net = 0; net < driven.length; net++) {
            driven[net] |= plain.levels.kind[net] == Levels.DRIVEN;
          }
        });
    boolean stands = t.read == read && judge.stands(t);
    for (int net = 0; net < driven.length; net++) {
      boolean holds = t.kind[net] == Levels.FLOATS && !clockwork(net);
      stands &= !holds || !driven[net] && plain.levels.expiresAt(net) == Part.NEVER;
      stands &= clockwork(net) || t.mv[net] == copy.mv[net];
    }
    restore();
    plain.read = read;
    return stands;
  }

  /**
   * Per part the row that the access now on the pins strobes in the processor's half, or -1; empty
   * if the clockwork has a say in which.
   */
  Optional<int[]> rows() {
    Levels levels = plain.levels;
    boolean moved = levels.moved;
    levels.save(copy);
    levels.phase = Phase.C_ROW;
    plain.touchPhased();
    levels.touch(c.cpu);
    levels.settle();
    influence.begin(0);
    influence.phase(Phase.C_ROW);
    Optional<int[]> rows = judge.rowsOf(levels);
    levels.load(copy);
    levels.moved = moved;
    return rows;
  }

  private void restore() {
    plain.levels.load(copy);
    plain.store.back();
    plain.load(agenda);
    plain.levels.moved = false;
    plain.levels.recorder = Recorder.NONE;
    plain.levels.overrule = -1;
  }

  private Trial trial(int address, boolean reads, boolean sync, boolean ones) {
    Trial t = new Trial(plain, onlySlow, reach.clockwork);
    Levels levels = plain.levels;
    levels.overrule = reads ? (ones ? 1 : 0) : -1;
    levels.overruled = lineDrivers;
    for (int p = 0; p < lineDrivers.length; p++) {
      if (lineDrivers[p] != 0) {
        levels.touch(p);
      }
    }
    played(t, address, reads, ones ? 0xFF : 0, sync, () -> {});
    return t;
  }

  private void played(
      Trial t, int address, boolean reads, int data, boolean sync, Runnable settled) {
    plain.levels.recorder = t;
    plain.watchPhases(
        (phase, ns) -> {
          t.stirs |= moved(phase);
          t.settled(phase);
          influence.phase(phase);
          settled.run();
        });
    plain.play(address, reads, data, sync);
    plain.watchPhases(PhaseTap.NOBODY);
    t.read = plain.read;
  }

  /** Whether a slow net has moved since the access began, or a fast clock is not at rest. */
  private boolean moved(Phase phase) {
    for (int net = 0; net < c.netCount; net++) {
      boolean slow = !reach.fast[net] && !clockwork(net);
      if (slow && plain.levels.mv[net] != copy.mv[net]) {
        return true;
      }
    }
    return (phase == Phase.V_ROW || phase == Phase.C_END) && !clocksRest();
  }

  /** Whether a net is the clockwork's own, and nobody else's business. */
  private boolean clockwork(int net) {
    return reach.clockwork.nets[net] && !reach.clockwork.visible[net];
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
        lore.restAt[p] = lore.restKnown[p] ? lore.restAt[p] : now;
        lore.restKnown[p] = true;
        rest &= now == lore.restAt[p];
      }
    }
    return rest;
  }

  /**
   * Whether this access has to be played for the sake of a level that is only held. A net that
   * something could have driven must not float in a remembered access in which somebody acts on
   * what he reads there: what it holds is not known. Where nobody does, what it holds shows on a
   * probe all the same; then the accesses that drive it are played, so that its last level is
   * always at hand.
   */
  private boolean heldMatters(Trial a) {
    boolean plainly = false;
    for (int net = 0; net < c.netCount; net++) {
      if (reach.holds[net]) {
        boolean floats = a.kind[net] == Levels.FLOATS;
        plainly |= floats && actors.any(net, a);
        int pin = first[net];
        lore.floatedOnce[pin] |= floats;
        lore.drivenOnce[pin] |= !floats;
        if (lore.floatedOnce[pin] && lore.drivenOnce[pin] && !lore.contended[pin]) {
          lore.contended[pin] = true;
          flushed = true;
          forget();
        }
        plainly |= !floats && lore.contended[pin];
      }
    }
    return plainly;
  }

  /**
   * Cell and mask class as a table keeps them, or -1 if the access goes the slower way.
   *
   * @param index of the cell in its own memory
   */
  int packed(Shortcut s, int index) {
    boolean direct = s.kind() == Shortcut.Kind.MEMORY && s.maskClass() >= 0 && s.rows().none();
    int cell = direct ? c.cellBase[s.places().parts()[0]] + index : -1;
    return cell < 0 || cell > FastBus.CELL_MASK ? -1 : s.maskClass() << FastBus.CELL_BITS | cell;
  }

  /** Room for a number per address. */
  int[] scratch() {
    scratch = scratch == null ? new int[ALL_LINES + 1] : scratch;
    return scratch;
  }

  /** Whether a memory of an answer has any stuck cell. */
  boolean anyStuck(Shortcut s) {
    boolean any = false;
    for (int p : s.places().parts()) {
      any |= plain.levels.pins[p].anyStuck();
    }
    return any;
  }

  /** Whether a cell of a memory has a stuck bit. */
  boolean stuck(int part, int cell) {
    return plain.levels.pins[part].stuck(cell);
  }
}
