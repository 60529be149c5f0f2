package faultfinch.machine;

import faultfinch.part.Part;
import faultfinch.signal.Electrical;
import faultfinch.signal.Phase;
import faultfinch.signal.Technology;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The levels of a running circuit: what every output drives, what every net carries, what every pin
 * reads. {@link #settle} is the one definition of both machines.
 *
 * <p>Only what changed is settled: a pin that reads another bit makes the outputs that follow it
 * dirty, in the order of the circuit; an island is swept in board-file order until it is still.
 */
final class Levels {
  static final byte DRIVEN = 0;
  static final byte FLOATS_ON_LS = 1;
  static final byte FLOATS = 2;
  static final byte OSCILLATES = 3;

  private static final int LS_FLOAT_MV = Electrical.figure("ls-input.mv");
  private static final int HOLD_NS = Electrical.figure("hold.ns");
  private static final int MID_FROM = Electrical.figure("mid.from");
  private static final int MID_TO = Electrical.figure("mid.to");
  private static final int HELD_LOW_MV = 200;
  private static final int HELD_HIGH_MV = 3400;
  private static final int SCHMITT_FALLING = Electrical.figure("threshold.schmitt.falling");
  private static final byte CMOS = (byte) Technology.CMOS.ordinal();
  private static final byte SCHMITT = (byte) Technology.SCHMITT.ordinal();

  final Circuit circuit;
  final PartPins[] pins;
  final NetSolver solver;

  /** Lateness of slow parts; null where none is. */
  final Timing timing;

  final int[] mv;
  final byte[] kind;
  final long[] releasedAt;
  final long[] driven;
  final long[] bits;
  Recorder recorder = Recorder.NONE;
  Phase phase = Phase.V_ROW;
  long now;

  /** Data pins of parts other than the processor are overruled while a cycle is asked about. */
  int overrule = -1;

  long[] overruled;

  /** Per memory that forgets, the rows that need no clock: they are strobed in time. */
  boolean[][] refreshed;

  /** Per part how often its clock has risen, where anybody wants to know. */
  int[] counted;

  /** What drives the nets, where anybody wants to know. */
  private DriveNotes notes;

  /** Parts whose stored words may move without anybody being told. */
  boolean[] unnoticed;

  /** Set when a part's stored state moved since this was last cleared. */
  boolean moved;

  /** Length of a processor cycle and the time the count stands for, in nanoseconds. */
  private double cycleNs;

  private double startNs;
  private long startCycle;
  private long nextExpiry = Part.NEVER;
  final Marks marks;
  private final long[] dirty;

  /** How often marks were taken off; a part touched since then is marked. */
  private long rests = 1;

  private final long[] asleep;
  private final int words;

  /** What settling a node needs, see {@link Nodes}. */
  private final long[] nodes;

  /** Per part its nodes. */
  private final NodeSet[] outputs;

  private final long[] nodePins;
  private final long[] silentHigh;
  private final long[] silentLow;

  private final boolean[] oscillating;
  private boolean anyOscillates;
  private final boolean[] closed;

  /** Nets that a switch to a supply net loads, by switch, once it was asked for. */
  private final int[][] loaded;

  private final Sums sums;
  private final NetVolts volts;
  private final Listeners listeners;
  private final Drivers drivers;
  private final int[] netOf;
  private final Part[] parts;

  /** Levels of a circuit at power-on: nothing held, everything to settle. */
  Levels(Circuit circuit, Store store, double cycleNs) {
    this.circuit = circuit;
    this.netOf = circuit.netOf;
    this.cycleNs = cycleNs;
    this.solver = new NetSolver(circuit);
    this.mv = new int[circuit.netCount];
    this.kind = new byte[circuit.netCount];
    this.releasedAt = new long[circuit.netCount];
    this.closed = new boolean[circuit.railSwitches.length];
    loaded = new int[closed.length][];
    this.oscillating = new boolean[circuit.netCount];
    this.driven = new long[circuit.parts.length];
    this.bits = new long[circuit.parts.length];
    this.unnoticed = new boolean[circuit.parts.length];
    this.marks = new Marks(circuit);
    this.dirty = marks.all;
    this.asleep = marks.asleep;
    this.words = marks.words;
    this.nodes = Nodes.of(circuit);
    this.nodePins = circuit.nodePins;
    this.silentHigh = circuit.silentHigh;
    this.silentLow = circuit.silentLow;
    this.outputs = new NodeSet[circuit.parts.length];
    for (int p = 0; p < outputs.length; p++) {
      outputs[p] = new NodeSet(circuit.nodesOf[p]);
    }
    this.sums = new Sums(this, closed);
    this.volts = new NetVolts(circuit, sums::solve);
    this.overruled = new long[circuit.parts.length];
    this.pins = new PartPins[circuit.parts.length];
    for (int p = 0; p < pins.length; p++) {
      pins[p] = new PartPins(p, this, store);
    }
    this.listeners = new Listeners(circuit, pins, marks);
    this.parts = circuit.parts;
    this.drivers = new Drivers(circuit, listeners, sums::alone);
    timing = circuit.delays.map(d -> new Timing(this, d)).orElse(null);
    begin();
  }

  /** As at power-on: nothing is held, everything is to settle, no switch to a supply is closed. */
  private void begin() {
    Arrays.fill(mv, 0);
    Arrays.fill(kind, FLOATS);
    Arrays.fill(releasedAt, 0);
    Arrays.fill(driven, 0);
    Arrays.fill(bits, 0);
    Arrays.fill(oscillating, false);
    Arrays.fill(asleep, 0);
    volts.load(new long[circuit.netCount]);
    listeners.forget();
    marks.anyEdge();
    for (PartPins part : pins) {
      part.stored = true;
      part.in = 0;
      part.before = 0;
      part.rose = 0;
      part.fell = 0;
    }
    for (int gate = 0; gate < closed.length; gate++) {
      closed[gate] = false;
      forget(gate);
    }
    anyOscillates = false;
    nextExpiry = Part.NEVER;
    refreshed = null;
    moved = false;
    everything();
  }

  /**
   * Takes over anew, after others have gone on from here, as levels just made would: see {@link
   * #follow}.
   */
  void resume(Levels earlier) {
    now = 0;
    startNs = 0;
    startCycle = 0;
    phase = Phase.V_ROW;
    begin();
    follow(earlier);
  }

  /** Notes from now on what drives the nets. */
  void note(DriveNotes into) {
    notes = into;
    volts.note(into);
  }

  /** Comes to rest after a wiring was made or comes back; what is noted then is how it stands. */
  void noteAtRest(Runnable settling) {
    if (notes != null) {
      notes.awake(false);
    }
    settling.run();
    if (notes != null) {
      notes.awake(true);
      volts.noteAll();
    }
  }

  /** Closes or opens a switch to a supply net. */
  void close(int gate, boolean close) {
    closed[gate] = close;
    for (int net : forget(gate)) {
      update(net);
    }
  }

  /** Drops the volts known of the nets that a switch to a supply net loads; says which they are. */
  private int[] forget(int gate) {
    if (loaded[gate] == null) {
      loaded[gate] =
          IntStream.range(0, circuit.netCount)
              .filter(net -> Arrays.stream(circuit.loadSwitch[net]).anyMatch(g -> g == gate))
              .toArray();
    }
    for (int net : loaded[gate]) {
      volts.forget(net);
    }
    return loaded[gate];
  }

  /** Takes over from the levels of the same parts wired otherwise: time, and what nets carried. */
  void follow(Levels earlier) {
    now = earlier.now;
    startNs = earlier.startNs;
    startCycle = earlier.startCycle;
    cycleNs = earlier.cycleNs;
    phase = earlier.phase;
    if (timing != null) {
      timing.continueFrom(earlier.timing);
    }
    for (int gate = 0; gate < closed.length; gate++) {
      int was = earlier.circuit.railSwitch(circuit.railSwitches[gate]);
      if (was >= 0 && earlier.closed[was]) {
        close(gate, true);
      }
    }
    for (int pin = circuit.netOf.length - 1; pin >= 0; pin--) {
      int to = circuit.netOf[pin];
      int from = earlier.circuit.netOf[pin];
      if (kind[to] == FLOATS && circuit.source[to] == Circuit.NO_SOURCE) {
        boolean floated = earlier.kind[from] == FLOATS;
        held(to, held(earlier.mv[from]), floated ? earlier.releasedAt[from] : now);
      }
    }
    settle();
    for (int p = 0; p < pins.length; p++) {
      pins[p].before = earlier.pins[p].before;
      pins[p].rose = 0;
      pins[p].fell = 0;
    }
  }

  /**
   * Whether every net that keeps a level by itself kept that very level on the other board by
   * itself too. If not, what it carried before it was let go is not known from there.
   */
  boolean keepsOnlyWhat(Levels earlier) {
    for (int pin = 0; pin < circuit.netOf.length; pin++) {
      int net = circuit.netOf[pin];
      int there = earlier.circuit.netOf[pin];
      boolean alone = kind[net] == FLOATS && circuit.source[net] == Circuit.NO_SOURCE;
      if (alone && (earlier.kind[there] != FLOATS || earlier.mv[there] != mv[net])) {
        return false;
      }
    }
    return true;
  }

  /** Stands exactly where the levels of the same circuit stand. */
  void continueFrom(Levels other) {
    System.arraycopy(other.closed, 0, closed, 0, closed.length);
    Copy copy = new Copy(other);
    other.save(copy);
    load(copy);
    if (timing != null) {
      timing.continueFrom(other.timing);
    }
    startNs = other.startNs;
    startCycle = other.startCycle;
    cycleNs = other.cycleNs;
    moved = other.moved;
  }

  /** Sets the clock: from the current cycle on, a cycle takes this long. */
  void clock(double nanoseconds) {
    startNs = nanosecondsAt(now);
    startCycle = now;
    cycleNs = nanoseconds;
  }

  long nanosecondsAt(long cycle) {
    return (long) (startNs + (cycle - startCycle) * cycleNs);
  }

  long cycleAfter(long nanoseconds) {
    return startCycle + (long) StrictMath.ceil((nanoseconds - startNs) / cycleNs);
  }

  double cycleNanoseconds() {
    return cycleNs;
  }

  private long holdCycles() {
    return (long) StrictMath.ceil(HOLD_NS / cycleNs);
  }

  /** Marks everything for settling; used at power-on. */
  private void everything() {
    for (int n = 0; n < circuit.nodePart.length; n++) {
      mark(n);
    }
    for (int net = 0; net < circuit.netCount; net++) {
      update(net);
    }
    for (int p = 0; p < pins.length; p++) {
      pins[p].in = (pins[p].in & ~circuit.readMask[p]) | circuit.readBits[p];
    }
  }

  private void mark(int node) {
    dirty[node >> 6] |= 1L << node;
  }

  /** A part's stored state moved: its outputs may. */
  void stateMoved(int part) {
    moved |= !unnoticed[part];
    touch(part);
  }

  /** Marks the outputs of a part for settling. */
  void touch(int part) {
    PartPins view = pins[part];
    view.stored = true;
    if (view.touched != rests) {
      view.touched = rests;
      outputs[part].mark(dirty);
    }
  }

  /** Whether a pin reads what something left on its net, on which nothing drives any more. */
  boolean keeps(int part, long pin) {
    int net = netOf[circuit.pinBase[part] + Long.numberOfTrailingZeros(pin)];
    boolean told = (circuit.readMask[part] & pin) != 0;
    return !told
        && kind[net] == FLOATS
        && (circuit.drivers[net].length > 0 || circuit.groupOf[net] >= 0);
  }

  /** Whether no output is marked for settling but those that sleep. */
  boolean atRest() {
    long left = 0;
    for (int w = 0; w < words; w++) {
      left |= dirty[w] & ~asleep[w];
    }
    return left == 0;
  }

  /** Brings all levels to rest. */
  void settle() {
    if (now >= nextExpiry) {
      expire();
    }
    for (int w = 0; w < words; w++) {
      for (long left = dirty[w] & ~asleep[w]; left != 0; left = dirty[w] & ~asleep[w]) {
        int node = (w << 6) + Long.numberOfTrailingZeros(left);
        if (nodes[Nodes.WORDS * node + Nodes.KIND] < 0) {
          sweep(node);
        } else {
          evaluate(node);
        }
      }
      dirty[w] = 0;
    }
    rests++;
  }

  /**
   * Sweeps an island, and the islands of the same make that stand behind it and have nothing to do
   * with it, until all are still. An oscillating island is tried afresh every phase.
   */
  private void sweep(int node) {
    int from = circuit.islandFrom[node];
    int n = circuit.islandTo[node] - from;
    int to = circuit.sweepTo[from];
    dropSilent(from, to);
    for (int round = 0; round < n + 1 && anyDirty(from, to); round++) {
      for (int pass = 0; pass < 2 * n + 4 && anyDirty(from, to); pass++) {
        for (int i = from; i < from + n; i++) {
          evaluateAlike(i, to, n);
        }
      }
      for (int i = from; i < to; i++) {
        if ((dirty[i >> 6] & (1L << i)) != 0) {
          oscillates(i);
        }
      }
    }
    for (int w = from >> 6; w <= to - 1 >> 6; w++) {
      dirty[w] &= ~Nodes.within(w, from, to);
    }
  }

  /** Takes the marks off nodes that a settle would leave alone, as they stand. */
  private void dropSilent(int from, int to) {
    for (int w = from >> 6; w <= to - 1 >> 6; w++) {
      for (long left = dirty[w] & Nodes.within(w, from, to); left != 0; left &= left - 1) {
        int node = (w << 6) + Long.numberOfTrailingZeros(left);
        if (circuit.nodeGroup[node] < 0 && silent(node)) {
          dirty[w] &= ~(1L << node);
          asleep[w] |= 1L << node;
        }
      }
    }
  }

  /** Evaluates those marked of the nodes of one part that stand so many apart. */
  private void evaluateAlike(int first, int to, int step) {
    long mask = 0;
    int some = -1;
    for (int i = first; i < to; i += step) {
      if ((dirty[i >> 6] & 1L << i) != 0) {
        dirty[i >> 6] &= ~(1L << i);
        mask |= silent(i) ? 0 : circuit.nodePins[i];
        some = i;
      }
    }
    if (some >= 0) {
      evaluate(some, mask);
    }
  }

  private boolean anyDirty(int from, int to) {
    for (int w = from >> 6; w <= to - 1 >> 6; w++) {
      if ((dirty[w] & Nodes.within(w, from, to)) != 0) {
        return true;
      }
    }
    return false;
  }

  private void oscillates(int node) {
    if (circuit.nodeGroup[node] >= 0) {
      for (int net : circuit.groups[circuit.nodeGroup[node]].nets()) {
        oscillatesAt(net);
      }
      return;
    }
    int p = circuit.nodePart[node];
    long left = circuit.nodePins[node];
    while (left != 0) {
      int bit = Long.numberOfTrailingZeros(left);
      left &= left - 1;
      oscillatesAt(circuit.netOf[circuit.pinBase[p] + bit]);
    }
  }

  private void oscillatesAt(int net) {
    if (notes != null) {
      notes.oscillates();
    }
    if (!oscillating[net] && circuit.source[net] == Circuit.NO_SOURCE) {
      oscillating[net] = true;
      anyOscillates = true;
      set(net, LS_FLOAT_MV, OSCILLATES);
    }
  }

  /** Lets nets that oscillated in the last phase be tried again. */
  void retryOscillating() {
    if (!anyOscillates) {
      return;
    }
    anyOscillates = false;
    for (int net = 0; net < oscillating.length; net++) {
      if (oscillating[net]) {
        oscillating[net] = false;
        for (int g : circuit.drivers[net]) {
          touch(circuit.partOf[g]);
        }
        update(net);
      }
    }
  }

  /** Settles a part for the nodes that are served with this one, if not all of them sleep. */
  private void evaluate(int node) {
    int w = node >> 6;
    int at = Nodes.WORDS * node;
    long marked = dirty[w] & nodes[at + Nodes.BATCH];
    dirty[w] &= ~marked;
    long kind = nodes[at + Nodes.KIND];
    int p = (int) kind;
    if ((kind & Nodes.CAREFUL) == 0) {
      settlePart(p, nodes[at + Nodes.PINS]);
    } else if ((kind & Nodes.GROUPED) != 0) {
      updateGroup(circuit.groups[circuit.nodeGroup[node]]);
    } else {
      long mask = awake(w, marked & ~asleep[w], p);
      if (mask != 0) {
        settlePart(p, mask);
        if ((driven[p] & mask) == 0) {
          awake(w, marked & ~asleep[w] & ~dirty[w], p);
        }
      }
    }
  }

  /** The pins of those of some nodes that do not go to sleep. */
  private long awake(int w, long some, int p) {
    long in = pins[p].in;
    long drives = driven[p];
    long mask = 0;
    for (long left = some; left != 0; left &= left - 1) {
      int i = (w << 6) + Long.numberOfTrailingZeros(left);
      if ((in & silentHigh[i] | ~in & silentLow[i]) != 0 && (drives & nodePins[i]) == 0) {
        asleep[w] |= 1L << i;
      } else {
        mask |= nodePins[i];
      }
    }
    return mask;
  }

  /** Settles the part of a node for these of its pins, or the group the node controls. */
  private void evaluate(int node, long mask) {
    if (circuit.nodeGroup[node] >= 0) {
      updateGroup(circuit.groups[circuit.nodeGroup[node]]);
    } else if (mask != 0) {
      settlePart(circuit.nodePart[node], mask);
    }
  }

  private void settlePart(int p, long mask) {
    PartPins view = pins[p];
    view.driven = 0;
    view.bits = 0;
    if (timing != null && timing.plays(p)) {
      timing.settle(p, view);
    } else {
      parts[p].settle(view);
    }
    long on = view.driven & mask;
    long levels = view.bits & on;
    if (overrule >= 0) {
      long o = overruled[p] & on;
      levels = (levels & ~o) | (overrule == 0 ? 0 : o);
    }
    long forced = circuit.forceMask[p] & mask;
    on |= forced;
    levels = (levels & ~forced) | (circuit.forceBits[p] & forced);
    long changed = ((driven[p] ^ on) | (bits[p] ^ levels)) & mask;
    if (changed != 0) {
      driven[p] = (driven[p] & ~mask) | on;
      bits[p] = (bits[p] & ~mask) | levels;
      carry(p, changed, on, levels);
    }
  }

  /** These pins of a part drive something else: so do their nets, and so read those on them. */
  private void carry(int p, long changed, long on, long levels) {
    int base = circuit.pinBase[p];
    long apart = drivers.apart[p];
    if ((changed & ~apart) != 0) {
      carryJoined(base, changed & ~apart, on, levels);
    }
    long pulls = on & ~(levels & drivers.collectors[p]);
    long plain = anyOscillates ? 0 : drivers.plain[p];
    for (long left = changed & apart; left != 0; left &= left - 1) {
      int bit = Long.numberOfTrailingZeros(left);
      int pin = base + bit;
      int net = netOf[pin];
      int level = (int) (levels >>> bit) & 1;
      int state = (pulls >>> bit & 1) == 0 ? 0 : 2 + level;
      int now = volts.drives(pin, net, state);
      if (now == NetVolts.ALONE && state != 0 && (plain >>> bit & 1) != 0) {
        mv[net] = level == 0 ? drivers.lowMv[pin] : drivers.highMv[pin];
        kind[net] = DRIVEN;
        listeners.tell(net, level, marks, counted);
      } else if (now != NetVolts.SAME) {
        tell(net, renewed(net));
      }
    }
  }

  /** The same for pins of one part that may share a net or a group. */
  private void carryJoined(int base, long changed, long on, long levels) {
    long moved = 0;
    // Every key first: a net is worked out from what all its drivers do, and kept under its key.
    for (long left = changed; left != 0; left &= left - 1) {
      int bit = Long.numberOfTrailingZeros(left);
      int pin = base + bit;
      int state = sums.state(pin, on >>> bit, levels >>> bit);
      boolean moves = volts.drives(pin, circuit.netOf[pin], state) != NetVolts.SAME;
      moved |= moves ? 1L << bit : 0;
    }
    for (long left = moved; left != 0; left &= left - 1) {
      update(circuit.netOf[base + Long.numberOfTrailingZeros(left)]);
    }
  }

  /** Whether an output drives nothing and, by an enable pin, goes on driving nothing. */
  private boolean silent(int node) {
    int p = circuit.nodePart[node];
    long in = pins[p].in;
    return (in & circuit.silentHigh[node] | ~in & circuit.silentLow[node]) != 0
        && (driven[p] & circuit.nodePins[node]) == 0;
  }

  private void update(int net) {
    int group = circuit.groupOf[net];
    if (group >= 0) {
      updateGroup(circuit.groups[group]);
    } else {
      tell(net, renewed(net));
    }
  }

  /** Works a net out anew; what all its readers are to be told of it, see {@link #moved}. */
  private int renewed(int net) {
    if (circuit.source[net] != Circuit.NO_SOURCE) {
      return moved(net, circuit.sourceMv[net], DRIVEN);
    }
    return oscillating[net] ? Listeners.EACH : stored(net, volts.of(net));
  }

  private void tell(int net, int all) {
    if (all != Listeners.EACH) {
      listeners.tell(net, all, marks, counted);
    }
  }

  /** Whether a load of a net is joined to it: its switch, if it has one, is closed. */
  boolean loads(int net, int load) {
    return sums.loads(net, load);
  }

  private void updateGroup(Coupling group) {
    int n = group.nets().length;
    double[] g = new double[n];
    double[] gv = new double[n];
    for (int i = 0; i < n; i++) {
      double[] acting = sums.of(group.nets()[i]);
      g[i] = acting[0];
      gv[i] = acting[1];
    }
    int[] volts = solver.coupled(group, g, gv, closed(group));
    for (int i = 0; i < n; i++) {
      if (!oscillating[group.nets()[i]]) {
        store(group.nets()[i], volts[i]);
      }
    }
  }

  /** Per element of a group whether a switch in it is closed; a switch without power is not. */
  boolean[] closed(Coupling group) {
    int[] control = group.control();
    boolean[] closed = new boolean[control.length];
    for (int e = 0; e < control.length; e++) {
      int p = control[e] < 0 ? -1 : circuit.partOf[control[e]];
      closed[e] = p < 0 || circuit.alive[p] && (pins[p].in >>> circuit.bitOf[control[e]] & 1) != 0;
    }
    return closed;
  }

  private void store(int net, int millivolts) {
    tell(net, stored(net, millivolts));
  }

  private int stored(int net, int millivolts) {
    if (millivolts != NetSolver.FLOATING) {
      return moved(net, millivolts, DRIVEN);
    }
    if (circuit.lsInputs[net] > 0) {
      return moved(net, LS_FLOAT_MV, FLOATS_ON_LS);
    }
    if (kind[net] == FLOATS) {
      return Listeners.EACH;
    }
    releasedAt[net] = now;
    int held = held(mv[net]);
    if (held >= MID_FROM) {
      nextExpiry = Math.min(nextExpiry, now + holdCycles());
    }
    return moved(net, held, FLOATS);
  }

  /** A floating net keeps a clean level; only a mid one keeps its millivolts. */
  static int held(int millivolts) {
    if (millivolts < MID_FROM) {
      return millivolts == 0 ? 0 : HELD_LOW_MV;
    }
    return millivolts > MID_TO ? HELD_HIGH_MV : millivolts;
  }

  private void expire() {
    nextExpiry = Part.NEVER;
    long hold = holdCycles();
    for (int net = 0; net < circuit.netCount; net++) {
      if (kind[net] == FLOATS && mv[net] >= MID_FROM) {
        if (now >= releasedAt[net] + hold) {
          set(net, 0, FLOATS);
        } else {
          nextExpiry = Math.min(nextExpiry, releasedAt[net] + hold);
        }
      }
    }
  }

  /** Cycle at which, nothing being driven or let go until then, a level is next lost. */
  long nextExpiry() {
    long next = Part.NEVER;
    for (int net = 0; net < kind.length; net++) {
      next = Math.min(next, expiresAt(net));
    }
    return next;
  }

  /** Of these nets, those found floating from this cycle on were let go at an earlier one. */
  void released(boolean[] nets, long found, long at) {
    for (int net = 0; net < nets.length && at < found; net++) {
      if (nets[net] && kind[net] == FLOATS && releasedAt[net] == found) {
        held(net, mv[net], at);
      }
    }
  }

  /** Puts a floating net's level and age where they are known to be. */
  void held(int net, int millivolts, long since) {
    releasedAt[net] = since;
    set(net, millivolts >= MID_FROM && expired(since) ? 0 : millivolts, FLOATS);
    if (mv[net] >= MID_FROM) {
      nextExpiry = Math.min(nextExpiry, since + holdCycles());
    }
  }

  /** From this level on a held level is not low. */
  static int lowBelow() {
    return MID_FROM;
  }

  /** From this level up to its threshold a Schmitt input reads what it read before. */
  static int schmittFalling() {
    return SCHMITT_FALLING;
  }

  static boolean mid(int millivolts) {
    return millivolts >= MID_FROM && millivolts <= MID_TO;
  }

  static boolean high(int millivolts) {
    return millivolts > MID_TO;
  }

  long releasedAt(int net) {
    return releasedAt[net];
  }

  /** Millivolts of a clean level as a floating net keeps it. */
  static int clean(boolean high) {
    return high ? HELD_HIGH_MV : HELD_LOW_MV;
  }

  /** Cycle at which a net loses the level it holds, or never. */
  long expiresAt(int net) {
    return kind[net] == FLOATS && mv[net] >= MID_FROM ? releasedAt[net] + holdCycles() : Part.NEVER;
  }

  boolean expired(long since) {
    return now >= since + holdCycles();
  }

  private void set(int net, int millivolts, byte how) {
    tell(net, moved(net, millivolts, how));
  }

  /**
   * Puts a net at a level. Answers what all its readers read now, if they read alike and are yet to
   * be told; else they have been told each by itself, or need not be.
   */
  private int moved(int net, int millivolts, byte how) {
    int had = mv[net];
    byte was = kind[net];
    mv[net] = millivolts;
    kind[net] = how;
    if (had == millivolts && (was == how || followsVolts(was) && followsVolts(how))) {
      return Listeners.EACH;
    }
    int all = followsVolts(how) ? listeners.all(net, millivolts) : listeners.others(net, how);
    if (all == Listeners.EACH) {
      listeners.forget(net);
      for (int pin : circuit.receivers[net]) {
        receive(pin, reads(pin, millivolts, how));
        if (had != millivolts && circuit.level[pin]) {
          for (int node : circuit.followers[pin]) {
            mark(node);
          }
        }
      }
    }
    return all;
  }

  /** Whether pins read a net in this state by its millivolts and nothing else. */
  private static boolean followsVolts(byte how) {
    return how == DRIVEN || how == FLOATS;
  }

  private boolean reads(int pin, int millivolts, byte how) {
    byte technology = circuit.technology[pin];
    if (how == OSCILLATES) {
      return false;
    }
    if (how == FLOATS_ON_LS) {
      return technology != CMOS;
    }
    if (technology == SCHMITT
        && millivolts >= SCHMITT_FALLING
        && millivolts <= circuit.threshold[pin]) {
      return (pins[circuit.partOf[pin]].in >>> circuit.bitOf[pin] & 1) != 0;
    }
    return millivolts > circuit.threshold[pin];
  }

  private void receive(int pin, boolean high) {
    int p = circuit.partOf[pin];
    long bit = 1L << circuit.bitOf[pin];
    if ((circuit.readMask[p] & bit) != 0) {
      return;
    }
    PartPins view = pins[p];
    if (((view.in & bit) != 0) == high) {
      return;
    }
    view.in ^= bit;
    if (high) {
      view.rose |= bit;
      if (counted != null && (circuit.risePins[p] & bit) != 0) {
        counted[p]++;
      }
    } else {
      view.fell |= bit;
    }
    marks.follow(pin);
  }

  /** Everything that a later phase can depend on, besides the store; its arrays are used again. */
  static final class Copy {
    final int[] mv;
    final byte[] kind;
    private final long[] releasedAt;
    private final long[] driven;
    private final long[] bits;
    private final long[] in;
    private final long[] before;
    private final long[] rose;
    private final long[] fell;
    private final boolean[] oscillating;
    private final long[] keys;
    private final byte[] heard;
    private long now;
    private long nextExpiry;
    private Phase phase;

    Copy(Levels of) {
      int nets = of.mv.length;
      int parts = of.pins.length;
      mv = new int[nets];
      kind = new byte[nets];
      releasedAt = new long[nets];
      oscillating = new boolean[nets];
      keys = new long[nets];
      heard = new byte[nets];
      driven = new long[parts];
      bits = new long[parts];
      in = new long[parts];
      before = new long[parts];
      rose = new long[parts];
      fell = new long[parts];
    }
  }

  void save(Copy copy) {
    System.arraycopy(mv, 0, copy.mv, 0, mv.length);
    System.arraycopy(kind, 0, copy.kind, 0, kind.length);
    System.arraycopy(releasedAt, 0, copy.releasedAt, 0, releasedAt.length);
    System.arraycopy(driven, 0, copy.driven, 0, driven.length);
    System.arraycopy(bits, 0, copy.bits, 0, bits.length);
    System.arraycopy(oscillating, 0, copy.oscillating, 0, oscillating.length);
    volts.save(copy.keys);
    listeners.save(copy.heard);
    for (int p = 0; p < pins.length; p++) {
      copy.in[p] = pins[p].in;
      copy.before[p] = pins[p].before;
      copy.rose[p] = pins[p].rose;
      copy.fell[p] = pins[p].fell;
    }
    copy.now = now;
    copy.nextExpiry = nextExpiry;
    copy.phase = phase;
  }

  void load(Copy copy) {
    System.arraycopy(copy.mv, 0, mv, 0, mv.length);
    System.arraycopy(copy.kind, 0, kind, 0, kind.length);
    System.arraycopy(copy.releasedAt, 0, releasedAt, 0, releasedAt.length);
    System.arraycopy(copy.driven, 0, driven, 0, driven.length);
    System.arraycopy(copy.bits, 0, bits, 0, bits.length);
    System.arraycopy(copy.oscillating, 0, oscillating, 0, oscillating.length);
    anyOscillates = true;
    volts.load(copy.keys);
    listeners.load(copy.heard);
    for (int p = 0; p < pins.length; p++) {
      pins[p].stored = true;
      pins[p].in = copy.in[p];
      pins[p].before = copy.before[p];
      pins[p].rose = copy.rose[p];
      pins[p].fell = copy.fell[p];
    }
    now = copy.now;
    nextExpiry = copy.nextExpiry;
    phase = copy.phase;
    Arrays.fill(dirty, 0);
    rests++;
    Arrays.fill(asleep, 0);
    marks.anyEdge();
  }
}
