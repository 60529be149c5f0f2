package faultfinch.machine;

import faultfinch.part.DualPortMemory;
import faultfinch.part.Memory;
import faultfinch.part.Part;
import faultfinch.part.RowMemory;
import faultfinch.signal.Phase;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The fast machine: for every address and direction, what the plain machine said of it once.
 *
 * <p>Most cycles read or write one byte of one memory with nothing else happening; for those a
 * table gives the byte's place and the masks of the data lines. Cycles in which a device is read or
 * written run only that device. All else, and every cycle near an event, is played plainly on the
 * same arrays, so there is one definition and the tables only remember it.
 */
final class FastBus extends CycleBus {
  static final int CELL_BITS = 20;
  static final int CELL_MASK = (1 << CELL_BITS) - 1;

  private static final int ADDRESSES = 0x10000;
  private static final int NOT_KNOWN = -1;
  private static final int MARGIN = 8;

  /**
   * Cycles played plainly at the end of a run: every chain of latches of ours is shorter. What was
   * taken longer ago is told by {@link Takings}.
   */
  private static final int FRESH = 24;

  /** So many wirings are remembered that are no kin. */
  private static final int LORES = 4;

  /**
   * Cycles until it is asked again whether a locked processor stands: levels held are lost by then.
   */
  private static final int STANDS_AGAIN = 2_000;

  /** Cycles played plainly after slow levels moved, so that parts have seen them. */
  private static final int SETTLING = 2;

  /** The same after a part stored a word: what it does next may depend on that. */
  private static final int STIRRED = 1;

  /** What a locked processor reads. */
  private static final int LOCKED_AT = 0xFFFF;

  private static final int READS = 1 << 24;
  private static final int SYNC = 1 << 25;

  /** Set where the last access carries what was read; a table read leaves it to be looked up. */
  private static final int VALUED = 1 << 26;

  private final int[] none = new int[ADDRESSES];
  private byte[] cells = new byte[0];
  private int[] memories = new int[0];
  private Tables tables;
  private int[] fetchAt = none;
  private int[] readAt = none;
  private int[] writeAt = none;
  private int[] and = new int[1];
  private int[] or = new int[1];
  private Shortcuts shortcuts;

  /** What is known of each wiring that may come back. */
  private final Map<PlainCycle, Shortcuts> known = new IdentityHashMap<>();

  /** What was found out about wirings, the one used last at the front. */
  private final Deque<Lore> lores = new ArrayDeque<>();

  /** The way last found in each wiring. */
  private final Map<PlainCycle, Orbit> ways = new IdentityHashMap<>();

  private HeldLines lines;

  /** The last access: address, value, direction, sync; what the levels are brought up from. */
  private int last;

  /** Number of the cycle the levels stand at the end of, if that is the last one. */
  private long liveAt = -1;

  /** Counts the moments at which slow levels may have moved. */
  private long slowVersion;

  private boolean plainly;

  /**
   * Whether the next instruction may not end before an event: its cycles are looked up one by one,
   * and played from the event on.
   */
  private boolean edging;

  /** The cycle of that event. */
  private long playFrom = Long.MAX_VALUE;

  /** What {@link #free()} says now. */
  private boolean free;

  private Foresight ahead;
  private SlowSide slowSide;
  private Chatter chatter;

  private int settling;

  /** The last steady read, its value, and the count of slow moves for which it holds. */
  private int steadyAt = -1;

  private int steadyValue;
  private long steadyVersion;

  /** Before this cycle it is not asked again whether a locked processor's reads may be left out. */
  private long standAgainAt;

  /** The way of what runs by itself; null while none is known, or there is nothing of the kind. */
  private Orbit orbit;

  private boolean clockwork;
  private RowClocks rowClocks;
  private Takings takings;

  private final Searches searches = new Searches();

  /** From this cycle on all is played, so that what takes data stands right at the end of a run. */
  private long takersFrom = Long.MAX_VALUE;

  /** Who watches what the processor does to a picture that is not played; null if nobody does. */
  private Overlooked overlooked;

  FastBus(Machine machine) {
    super(machine);
    Arrays.fill(none, NOT_KNOWN);
  }

  @Override
  void rewired(PlainCycle plain) {
    super.rewired(plain);
    cells = plain.store.cells();
    Circuit c = plain.circuit;
    memories =
        IntStream.range(0, c.parts.length)
            .filter(p -> c.alive[p])
            .filter(p -> c.parts[p] instanceof Memory || c.parts[p] instanceof DualPortMemory)
            .toArray();
    shortcuts = known.computeIfAbsent(plain, this::asking);
    shortcuts.resume();
    ahead = new Foresight(plain, shortcuts, MARGIN);
    slowSide = shortcuts.slowSide();
    chatter = shortcuts.chatter();
    chatter.stop();
    lines = new HeldLines(c);
    liveAt = core.cycle - 1;
    settling = SETTLING;
    endOrbit();
    steadyAt = -1;
    standAgainAt = 0;
    searches.rewired();
    clockwork = shortcuts.reach().clockwork.any();
    rowClocks = new RowClocks(plain);
    takings = new Takings(shortcuts.gates());
    for (int p = 0; p < c.parts.length; p++) {
      boolean row = c.parts[p] instanceof RowMemory;
      plain.levels.unnoticed[p] = row || shortcuts.reach().clockwork.parts[p];
    }
    slowMoved();
  }

  private Shortcuts asking(PlainCycle wiring) {
    Reach reach = new Reach(wiring.circuit);
    Lore found =
        lores.stream()
            .filter(lore -> lore.holdsFor(wiring.circuit, reach))
            .findFirst()
            .orElseGet(() -> new Lore(wiring.circuit, reach));
    lores.remove(found);
    lores.addFirst(found);
    if (lores.size() > LORES) {
      lores.removeLast();
    }
    return new Shortcuts(wiring, reach, found);
  }

  @Override
  void forget(PlainCycle wiring) {
    known.remove(wiring);
    ways.remove(wiring);
  }

  /** The tables now in use, for tests. */
  Tables tables() {
    return tables;
  }

  /** Cycles in which what runs by itself was last seen to come round, 0 if never; for tests. */
  int round() {
    return ways.containsKey(plain) ? ways.get(plain).round() : 0;
  }

  /** What the processor's cycle can move, for tests. */
  Reach reach() {
    return shortcuts.reach();
  }

  @Override
  void slowChanged() {
    super.slowChanged();
    if (shortcuts.gated()) {
      loseOrbit();
      shortcuts.forget();
    }
    ahead.forget();
    chatter.stop();
    settling = SETTLING;
    slowMoved();
  }

  /** Slow levels may have moved: takes the tables that hold for them as they are now. */
  private void slowMoved() {
    slowVersion++;
    if (!hopes()) {
      // Whatever tables come next are others than these, so that slow levels are seen before.
      tables = null;
      choose();
      return;
    }
    Tables now = shortcuts.tables();
    if (now != tables) {
      tables = now;
      settling = SETTLING;
    }
    choose();
  }

  @Override
  protected void choose() {
    free = free();
    boolean direct = tabled() && !edging;
    fetchAt = direct ? tables.fetchAt : none;
    readAt = direct ? tables.readAt : none;
    writeAt = direct && overlooked == null ? tables.writeAt : none;
    and = shortcuts.and();
    or = shortcuts.or();
  }

  /** Whether a cycle may soon not be played; until then nothing is worked out for that. */
  private boolean hopes() {
    boolean runs = orbit != null || (clockwork ? searches.due(core.cycle) : rowClocks.none());
    return runs && (core.locked || !shortcuts.refused());
  }

  private boolean tabled() {
    return free && !shortcuts.refused();
  }

  /** Whether nothing is about to happen, and what runs by itself goes a known way. */
  private boolean free() {
    boolean runs = orbit != null || !clockwork && rowClocks.none();
    return runs && !plainly && !watched && settling == 0 && !interrupted();
  }

  @Override
  public int fetch(int address) {
    int e = fetchAt[address];
    if (e >>> CELL_BITS != 0) {
      return masked(e, address, true);
    }
    int value = cells[e] & 0xFF;
    last = address | READS | SYNC;
    return value;
  }

  @Override
  public int read(int address) {
    int e = readAt[address];
    if (e >>> CELL_BITS != 0) {
      return masked(e, address, false);
    }
    int value = cells[e] & 0xFF;
    last = address | READS;
    return value;
  }

  /** A read that data faults change, or that no table knows. */
  private int masked(int e, int address, boolean sync) {
    if (e < 0) {
      return waitsOn(address, sync) ? waited(address) : slow(address, true, 0, sync);
    }
    int value = (cells[e & CELL_MASK] & and[e >>> CELL_BITS]) | or[e >>> CELL_BITS];
    last = address | READS | (sync ? SYNC : 0);
    return value;
  }

  /** Whether a read is the last steady one once more: a loop that waits for something slow. */
  private boolean waitsOn(int address, boolean sync) {
    return address == steadyAt
        && !sync
        && !edging
        && steadyVersion == slowVersion
        && free
        && nextQuiet() > core.cycle;
  }

  /** Whether a locked processor reads what it read, and nothing moves. */
  private boolean stands() {
    return core.locked && free && steadyAt == LOCKED_AT && steadyVersion == slowVersion;
  }

  /** A locked processor has read this, and reads it again and again: sees whether that is all. */
  private void stand(int address, int value) {
    if (free && core.locked && address == LOCKED_AT && core.cycle >= standAgainAt) {
      if (shortcuts.stands(address)) {
        steadyAt = address;
        steadyValue = value;
        steadyVersion = slowVersion;
      } else {
        standAgainAt = core.cycle + STANDS_AGAIN;
      }
    }
  }

  private int waited(int address) {
    last = address | steadyValue << 16 | READS | VALUED;
    return steadyValue;
  }

  @Override
  public void write(int address, int value) {
    int e = writeAt[address];
    if (e < 0) {
      slow(address, false, value, false);
      overlook();
      return;
    }
    cells[e & CELL_MASK] = (byte) ((value & and[e >>> CELL_BITS]) | or[e >>> CELL_BITS]);
    last = address | value << 16;
  }

  private void overlook() {
    if (overlooked != null) {
      overlooked.look();
    }
  }

  /** Has the processor watched, or no longer if this is null. */
  void overlookedBy(Overlooked by) {
    overlooked = by;
    if (orbit != null) {
      orbit.watchPicture(by != null);
    }
    choose();
  }

  /** Whether what runs by itself goes a known way and most cycles need not be played. */
  boolean runsFree() {
    return orbit != null && !shortcuts.refused();
  }

  private int slow(int address, boolean reads, int data, boolean sync) {
    if (!tabled() || edging && (replays() || core.cycle >= playFrom)) {
      return plain(address, reads, data, sync);
    }
    int noted = noted();
    int value = known(address, reads, data, sync);
    if (noted == noted()) {
      note(value);
    }
    return value;
  }

  private int known(int address, boolean reads, int data, boolean sync) {
    Shortcut s = tables.find(address, Tables.Access.of(reads, sync));
    if ((s == null || s.kind() == Shortcut.Kind.DEVICE) && partsTalk()) {
      return plain(address, reads, data, sync);
    }
    if (s == null) {
      s = ask(address, reads, sync);
    }
    if (sync && machine.reached(address, core.cycle)) {
      tables.fetched(address, shortcuts);
    }
    if (!s.rows().none() && s.kind() != Shortcut.Kind.PLAIN) {
      rowClocks.strobe(s.rows(), address, orbit, core.cycle);
    }
    switch (s.kind()) {
      case MEMORY -> {
        return memory(s, address, reads, data, sync);
      }
      case WIDE -> {
        return wide(s, address, reads, data, sync);
      }
      case VALUED -> {
        return valued(s, address, reads, data, sync);
      }
      case DEVICE -> {
        return device(s, address, reads, data, sync);
      }
      case LOOSE -> {
        return loose(s, address, sync);
      }
      default -> {
        return plain(address, reads, data, sync);
      }
    }
  }

  /** Whether parts store in the cycle at hand what they tell each other. */
  private boolean partsTalk() {
    catchUp(core.cycle);
    boolean begin = ahead.quiet() && ahead.talk() > 0 && plain.nextEvent == core.cycle;
    return begin || chatter.at() == core.cycle;
  }

  /** A read some lines of which nobody drives: they keep what they last carried. */
  private int loose(Shortcut s, int address, boolean sync) {
    catchUp(core.cycle);
    if (!tables.clean() || !linesKnown(core.cycle - 1)) {
      return plain(address, true, 0, sync);
    }
    plain.levels.now = core.cycle;
    int at = s.cell(plain.circuit, address);
    int value = at < 0 ? s.or() : (cells[at] & s.and()) | s.or();
    int read = lines.read(plain.levels, s.floats(), value, core.cycle);
    last = address | read << 16 | READS | VALUED | (sync ? SYNC : 0);
    return read;
  }

  /** Brings up what the data lines carried at the end of the last cycle. */
  private boolean linesKnown(long cycle) {
    if (lines.standsAt(cycle)) {
      return true;
    }
    if (liveAt == cycle) {
      return lines.take(plain.levels, cycle);
    }
    int value = last >>> 16 & 0xFF;
    if ((last & READS) != 0 && (last & VALUED) == 0) {
      int e = ((last & SYNC) != 0 ? tables.fetchAt : tables.readAt)[last & 0xFFFF];
      if (e < 0) {
        return false;
      }
      value = (cells[e & CELL_MASK] & and[e >>> CELL_BITS]) | or[e >>> CELL_BITS];
    }
    if ((last & READS) == 0) {
      Shortcut written = tables.find(last & 0xFFFF, Tables.Access.WRITE);
      if (written == null || written.kind() == Shortcut.Kind.PLAIN) {
        return false;
      }
      value = (value & written.carried().and()) | written.carried().or();
    }
    lines.allDriven(value, cycle);
    return true;
  }

  private Shortcut ask(int address, boolean reads, boolean sync) {
    materialise();
    plain.levels.now = core.cycle;
    Tables.Access access = Tables.Access.of(reads, sync);
    Shortcut s = shortcuts.ask(address, reads, sync, tables.alone(address));
    if (shortcuts.flushed()) {
      tables = shortcuts.tables();
    }
    tables.keep(address, access, s, shortcuts, machine.unreached());
    choose();
    return s;
  }

  private int memory(Shortcut s, int address, boolean reads, int data, boolean sync) {
    int at = s.cell(plain.circuit, address);
    if (reads) {
      int value = (cells[at] & s.and()) | s.or();
      last = address | value << 16 | READS | VALUED | (sync ? SYNC : 0);
      return value;
    }
    cells[at] = (byte) ((data & s.and()) | s.or());
    last = address | data << 16;
    return data;
  }

  private int wide(Shortcut s, int address, boolean reads, int data, boolean sync) {
    if (reads) {
      int value = s.readWide(plain, address);
      last = address | value << 16 | READS | VALUED | (sync ? SYNC : 0);
      return value;
    }
    s.writeWide(plain, address, data);
    last = address | data << 16;
    return data;
  }

  /** A byte that is read or stored as another, the same for the same byte. */
  private int valued(Shortcut s, int address, boolean reads, int data, boolean sync) {
    int at = s.cell(plain.circuit, address);
    int key = reads ? cells[at] & 0xFF : data;
    int value = s.follows()[key];
    if (value == Shortcut.UNTRIED) {
      materialise();
      plain.levels.now = core.cycle;
      value = shortcuts.value(s, address, reads, data, sync);
      s.follows()[key] = value;
    }
    if (value == Shortcut.PLAYED) {
      return plain(address, reads, data, sync);
    }
    if (reads) {
      last = address | value << 16 | READS | VALUED | (sync ? SYNC : 0);
      return value;
    }
    cells[at] = (byte) value;
    last = address | data << 16;
    return data;
  }

  private int device(Shortcut s, int address, boolean reads, int data, boolean sync) {
    catchUp(core.cycle + 1);
    if (s.steady() && s.memo()[0] == slowVersion) {
      int known = (int) s.memo()[1];
      if (!sync && s.rows().none()) {
        steadyAt = address;
        steadyValue = known;
        steadyVersion = slowVersion;
      }
      last = address | known << 16 | READS | VALUED | (sync ? SYNC : 0);
      return known;
    }
    plain.levels.now = core.cycle;
    plain.levels.moved = false;
    int value = s.run(plain, data);
    s.memo()[0] = slowVersion;
    s.memo()[1] = value;
    int carried = (reads ? value : data) << 16;
    last = address | carried | VALUED | (reads ? READS : 0) | (sync ? SYNC : 0);
    if (plain.levels.moved) {
      if (!slowSide.settled(s)) {
        bringUp(core.cycle);
        plain.followEdges(Phase.C_END);
        settling = Math.max(settling, STIRRED);
      }
      plain.levels.now = core.cycle;
      plain.schedule();
      plain.levels.now = core.cycle + 1;
      processor.sample(cpuIn(), core, core.cycle);
      machine.look();
      slowMoved();
      overlook();
      plainNow();
    }
    return value;
  }

  private int plain(int address, boolean reads, int data, boolean sync) {
    if (replays()) {
      return played(address, reads, data, sync);
    }
    catchUp(core.cycle);
    if (!interrupted()) {
      materialise();
    }
    chatter.stop();
    int value = played(address, reads, data, sync);
    last = address | value << 16 | (reads ? READS : 0) | (sync ? SYNC : 0);
    liveAt = core.cycle;
    if (settling > 0) {
      settling--;
    }
    if (plain.stirred || !shortcuts.clocksRest()) {
      settling = Math.max(settling, STIRRED);
    }
    if (clockwork) {
      follow(core.cycle + 1);
    }
    shortcuts.forgetLoops();
    plainNow();
    slowMoved();
    overlook();
    stand(address, value);
    return value;
  }

  /** Levels are live at the start of this cycle: sees whether the clockwork goes a known way. */
  private void follow(long cycle) {
    if (orbit != null && orbit.holds(cycle, shortcuts.reach().clockwork)) {
      orbit.standAt(cycle);
      if (overlooked != null && orbit.disturbed()) {
        overlooked.spoil();
      }
      if (orbit.current()) {
        return;
      }
    }
    loseOrbit();
    if (tables != null && hopes() && settling == 0 && !processor.inReset()) {
      find(cycle);
    }
  }

  private void find(long cycle) {
    Optional<Orbit> known = knownWay(cycle);
    Orbit found = known.or(() -> shortcuts.orbit(cycle)).orElse(null);
    if (found != null) {
      ways.put(plain, found);
      orbit = found;
      orbit.begin(cycle);
      orbit.watchPicture(overlooked != null);
      plain.levels.refreshed = found.strobed();
      searches.found(cycle, known.isPresent() ? 0 : found.played());
      slowMoved();
    } else {
      searches.inVain(cycle);
    }
  }

  /** The way that was found in this wiring before, if what runs by itself is still on it. */
  private Optional<Orbit> knownWay(long cycle) {
    Orbit way = ways.get(plain);
    if (way == null || !way.holds(cycle, shortcuts.reach().clockwork)) {
      return Optional.empty();
    }
    way.standAt(cycle);
    return way.current() ? Optional.of(way) : Optional.empty();
  }

  private void loseOrbit() {
    if (overlooked != null) {
      overlooked.spoil();
    }
    noteRows();
    plain.levels.refreshed = null;
    endOrbit();
  }

  private void endOrbit() {
    if (orbit != null) {
      searches.lost(core.cycle);
    }
    orbit = null;
  }

  private void noteRows() {
    if (orbit != null) {
      rowClocks.note(orbit);
    }
  }

  @Override
  void show() {
    materialise();
    noteRows();
  }

  @Override
  void leave() {
    materialise();
    loseOrbit();
    choose();
  }

  @Override
  void materialise() {
    catchUp(core.cycle);
    if (liveAt != core.cycle - 1) {
      bringUp(core.cycle - 1);
    }
  }

  /** Levels as the last access left them at the end of this cycle. */
  private void bringUp(long cycle) {
    Levels levels = plain.levels;
    boolean moved = levels.moved;
    levels.now = cycle;
    if (orbit != null) {
      orbit.bringTo(cycle + 1);
      orbit.noteRows(cycle + 1, false);
      present(Phase.C_ROW);
      rowClocks.strobe();
    }
    for (int p : memories) {
      levels.touch(p);
    }
    present(Phase.C_END);
    levels.settle();
    if (lines.standsAt(cycle)) {
      lines.restore(levels);
    }
    // Cycles that drive what can float were played: what floats now was let go right after those.
    levels.released(shortcuts.reach().holds, cycle, liveAt + 1);
    plain.forgetEdges(shortcuts.reach().waiting);
    levels.moved = moved;
    levels.now = cycle + 1;
    liveAt = cycle;
  }

  /** Puts the last access on the processor's pins in a phase. */
  private void present(Phase phase) {
    plain.levels.phase = phase;
    plain.touchPhased();
    plain.present(last & 0xFFFF, (last & READS) != 0, last >>> 16 & 0xFF, (last & SYNC) != 0);
  }

  /** An event too near for a table sends the next cycles the plain way. */
  private void plainNow() {
    look(core.cycle);
    core.endBy(horizon());
    playFrom = playedFrom();
    edging = core.cycle + MARGIN >= playFrom;
    plainly = core.cycle >= playFrom || processor.inReset() || !processor.ready(cpuIn());
    choose();
  }

  /** Looks ahead; while parts talk there is time for that, and all is not yet as it will be. */
  private void look(long cycle) {
    if (chatter.at() == Part.NEVER) {
      ahead.look(cycle, hopes());
    }
  }

  /** Cycle by which whole instructions from the tables have to end. */
  private long horizon() {
    long asks =
        orbit == null || takersFrom == Long.MAX_VALUE
            ? Long.MAX_VALUE
            : takings.asksAt(core.cycle, takersFrom + FRESH);
    return Math.min(asks, Math.min(nextQuiet(), playedFrom() - MARGIN));
  }

  /** Cycle from which on all is played: something happens then that is not quiet. */
  private long playedFrom() {
    long event = ahead.quiet() ? Long.MAX_VALUE : plain.nextEvent;
    event = interruptsQuietly() ? event : Math.min(event, nextShown());
    event = Math.min(event, takenFrom(takersFrom));
    return Math.min(event, Math.min(takersFrom, shortcuts.nextExpiry()));
  }

  /** From when on what takes data has to see cycles played, if all is from this cycle on. */
  private long takenFrom(long played) {
    return orbit == null || played == Long.MAX_VALUE
        ? Long.MAX_VALUE
        : takings.from(orbit, core.cycle, played + FRESH);
  }

  /** Whether the clockwork shows the processor nothing but interrupts. */
  private boolean interruptsQuietly() {
    return orbit != null && orbit.interruptsOnly();
  }

  /** Cycle in which the clockwork next moves what the processor sees. */
  private long nextShown() {
    return orbit == null ? Long.MAX_VALUE : orbit.nextShown(core.cycle);
  }

  @Override
  protected void skipTo(long cycle) {
    if (!clockwork) {
      rowClocks.repeat(core.cycle, Math.max(core.cycle, cycle));
      super.skipTo(cycle);
      return;
    }
    if (watched) {
      // Who looks sees what runs by itself in every cycle, as with the plain machine.
      return;
    }
    if (orbit == null && searches.due(core.cycle)) {
      find(core.cycle);
    }
    long to = Math.min(cycle, nextShown()) - FRESH;
    to = Math.min(to, takenFrom(to));
    if (orbit != null && !orbit.stores() && to > core.cycle && rowsRepeat(to)) {
      orbit.standAt(core.cycle);
      orbit.bringTo(to);
      orbit.noteRows(to, true);
      plain.levels.settle();
      plain.forgetEdges(shortcuts.reach().waiting);
      core.cycle = to;
    }
  }

  /**
   * Strobes, for cycles left out, the rows that only the access on the pins strobes in each.
   *
   * @return whether it is known which these are
   */
  private boolean rowsRepeat(long to) {
    if (orbit.strobesAll()) {
      return true;
    }
    Optional<int[]> rows = shortcuts.rows();
    rows.ifPresent(known -> rowClocks.repeat(known, to));
    return rows.isPresent();
  }

  @Override
  void overtake() {
    catchUp(core.cycle + 1);
  }

  /** Cycle of the next event that is quiet, or in which the clockwork next interrupts. */
  private long nextQuiet() {
    long event = ahead.quiet() ? plain.nextEvent : Long.MAX_VALUE;
    event = Math.min(event, chatter.at());
    return interruptsQuietly() ? Math.min(event, nextShown()) : event;
  }

  /** Lets what is quiet happen that is due before a cycle, each at its own. */
  private void catchUp(long before) {
    for (long due = nextQuiet(); due < before; due = nextQuiet()) {
      Levels levels = plain.levels;
      levels.now = due;
      happens(due);
      levels.settle();
      plain.forgetEdges(shortcuts.reach().waiting);
      slowVersion++;
      processor.sample(cpuIn(), core, due);
      overlook();
      levels.now = due + 1;
      machine.look();
      look(due + 1);
    }
  }

  private void happens(long due) {
    boolean event = ahead.quiet() && plain.nextEvent == due && chatter.at() == Part.NEVER;
    if (event && ahead.talk() > 0) {
      chatter.begin(due, ahead.talk());
    } else if (event) {
      plain.events();
    } else if (chatter.at() != due) {
      orbit.bringTo(due + 1);
    }
    if (chatter.at() == due) {
      chatter.go();
    }
  }

  @Override
  protected void afterReset(int address) {
    last = address | READS;
    liveAt = core.cycle - 1;
    settling = SETTLING;
    if (clockwork) {
      follow(core.cycle);
    }
    slowMoved();
  }

  @Override
  void observe(long cycles, PhaseTap phases) {
    super.observe(cycles, phases);
    choose();
  }

  @Override
  void run(long until) {
    run(until, clockwork ? until - FRESH : Long.MAX_VALUE);
  }

  @Override
  void pass(long until) {
    run(until, Long.MAX_VALUE);
  }

  private void run(long until, long played) {
    takersFrom = played;
    while (core.cycle < until) {
      catchUp(core.cycle);
      plainNow();
      if ((!tabled() || edging) && !stands()) {
        if (processor.inReset()) {
          chatter.stop();
        }
        careful(until);
        liveAt = interrupted() ? core.cycle - 1 : liveAt;
      } else {
        core.run(Math.min(until, Math.max(horizon(), core.cycle + 1)));
      }
    }
    catchUp(core.cycle);
  }
}
