package faultfinch.machine;

import faultfinch.part.BusDevice;
import faultfinch.part.Counting;
import faultfinch.part.Memory;
import faultfinch.part.Monitor;
import faultfinch.part.RowMemory;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What of a board has a say in the dots at the end of its picture lead, and the proof that the
 * processor has none but by what memory holds.
 *
 * <p>How: the board is played on a copy until the parts that count its phases come round. In every
 * phase {@link Sway} marks what the processor, or anybody else outside, could move, whatever the
 * picture half shows and memory holds. The pins of the set must be free of such marks, and, where a
 * part of the picture half stores, so must be what it takes and when. From there the nets on which
 * that rests are followed back. A board on which those nets and their parts are the same draws the
 * same dots from the same stored state.
 */
final class PictureHalf {
  private static final int PHASES = Phase.values().length;

  /** Cycles in which the parts that count phases must come round. */
  private static final int ROUND = 16;

  private final Circuit c;
  private final Reach reach;
  private final int[] kinds;

  /** Of the running parts those that count the phases of a cycle and of a slot. */
  private final boolean[] clocks;

  /** Parts of the picture half that take or count. */
  private final boolean[] halves;

  /** Nets that have a say in each phase. */
  private final boolean[][] nets;

  /** Slow ones among them, whose levels are part of the state. */
  private final boolean[] slow;

  /** Parts that drive those nets or store by them. */
  private final boolean[] parts;

  final int monitor;
  private final long[] clockPins;
  private final int[] slowMv;
  private boolean sound = true;

  private PictureHalf(PlainCycle plain, Reach reach, int monitor) {
    c = plain.circuit;
    this.reach = reach;
    this.monitor = monitor;
    int n = c.parts.length;
    kinds = new int[n];
    clocks = new boolean[n];
    halves = new boolean[n];
    nets = new boolean[PHASES][c.netCount];
    slow = new boolean[c.netCount];
    parts = new boolean[n];
    clockPins = new long[n];
    slowMv = plain.levels.mv.clone();
  }

  /**
   * Looks at a board whose clockwork runs by itself.
   *
   * @param plain a copy of it that may be played
   * @return empty if it has no set, or the proof fails
   */
  static Optional<PictureHalf> of(PlainCycle plain, Reach reach) {
    Circuit c = plain.circuit;
    Clockwork clockwork = reach.clockwork;
    int[] sets =
        IntStream.range(0, c.parts.length)
            .filter(p -> c.parts[p] instanceof Monitor && clockwork.takers[p])
            .toArray();
    if (sets.length != 1) {
      return Optional.empty();
    }
    PictureHalf half = new PictureHalf(plain, reach, sets[0]);
    half.sort(plain);
    half.play(plain);
    return half.sound ? Optional.of(half) : Optional.empty();
  }

  private void sort(PlainCycle plain) {
    Clockwork clockwork = reach.clockwork;
    long[][] first = words(plain);
    for (int i = 0; i < ROUND; i++) {
      plain.turn();
    }
    long[][] last = words(plain);
    for (int p = 0; p < kinds.length; p++) {
      boolean runs = clockwork.parts[p] && !clockwork.takers[p] && !clockwork.counting[p];
      clocks[p] = runs && Arrays.equals(first[p], last[p]);
      halves[p] = clockwork.parts[p] && p != monitor && (clockwork.takers[p] || !runs);
      boolean holds = halves[p] && clockwork.takers[p] || c.parts[p] instanceof RowMemory;
      kinds[p] = clocks[p] ? 0 : holds ? Sway.TAKEN : halves[p] ? Sway.COUNTED : Sway.FOREIGN;
    }
  }

  private long[][] words(PlainCycle plain) {
    long[][] words = new long[c.parts.length][];
    for (int p = 0; p < words.length; p++) {
      int from = c.wordBase[p];
      int to = from + c.parts[p].pinout().words().size();
      words[p] = Arrays.copyOfRange(plain.store.words(), from, to);
    }
    return words;
  }

  private void play(PlainCycle plain) {
    Levels levels = plain.levels;
    Sway sway = new Sway(levels, reach, kinds);
    // The first round only says what memories have strobed and where clocks stand.
    for (int round = 0; round < 2; round++) {
      boolean looking = round > 0;
      plain.watchPhases(
          (phase, ns) -> {
            sway.look(phase);
            if (looking) {
              new Glance(levels, sway, phase).check();
            }
            for (int p = 0; p < clockPins.length; p++) {
              clockPins[p] = levels.pins[p].in & c.edgePins(p);
            }
          });
      for (int i = 0; i < ROUND; i++) {
        plain.turn();
      }
    }
    plain.watchPhases((phase, ns) -> {});
  }

  private void must(boolean holds) {
    sound &= holds;
  }

  private long receives(int p) {
    return c.parts[p].pinout().pins().stream()
            .filter(Pin::receives)
            .mapToLong(Pin::mask)
            .reduce(0, (x, y) -> x | y)
        & ~c.readMask[p];
  }

  /** Pins that matter to the picture; the processor's registers are apart. */
  private long own(int p) {
    long bus = 0;
    if (c.parts[p] instanceof BusDevice) {
      for (Pin pin : c.parts[p].pinout().pins()) {
        boolean clock = (c.edgePins(p) & pin.mask()) != 0;
        bus |= pin.role() == Pin.Role.INPUT || clock ? 0 : pin.mask();
      }
    }
    return receives(p) & ~bus;
  }

  /** One settled phase of the round. */
  private final class Glance {
    private final Levels levels;
    private final Sway sway;
    private final Phase phase;
    private final boolean[] seen = new boolean[c.netCount];
    private final Deque<Integer> work = new ArrayDeque<>();

    Glance(Levels levels, Sway sway, Phase phase) {
      this.levels = levels;
      this.sway = sway;
      this.phase = phase;
    }

    void check() {
      parts[monitor] = true;
      needs(monitor, own(monitor));
      for (int p = 0; p < halves.length; p++) {
        if (halves[p] || clocks[p]) {
          parts[p] = true;
          stores(p);
        } else if (c.alive[p] && c.parts[p] instanceof RowMemory memory) {
          memory(p, memory);
        }
      }
      while (!work.isEmpty()) {
        follow(work.pop());
      }
    }

    /** What a part of the picture half stores, and when. */
    private void stores(int p) {
      boolean eager = c.parts[p].commitsEveryPhase() || c.parts[p] instanceof BusDevice;
      PartPins pins = levels.pins[p];
      long edges = c.edgePins(p) & ~c.readMask[p];
      long rest = own(p) & ~edges;
      boolean now = (pins.rose & c.risePins[p] | pins.fell & c.fallPins[p]) != 0;
      // An edge that no settled phase shows comes after its commit: what is taken must stand still.
      long rose = pins.in & ~clockPins[p] & c.risePins[p];
      long fell = ~pins.in & clockPins[p] & c.fallPins[p];
      boolean late = !now && ((rose | fell) & edges) != 0;
      needs(p, edges);
      if (now || eager || sway.marks(p, edges) != 0) {
        needs(p, rest);
      }
      if (late || clocks[p]) {
        must(sway.marks(p, rest) == 0);
        needs(p, rest);
      }
      boolean looksUp = c.parts[p].pinout().cellCount() > 0;
      must(!looksUp || (sway.marks(p, rest) & Sway.TAKEN) == 0);
    }

    /** A memory is strobed for the picture, and stores nothing, in the picture's phases. */
    private void memory(int p, RowMemory memory) {
      if (phase.processorHalf()) {
        return;
      }
      long write = c.parts[p].pinout().role(Pin.Role.WRITE);
      long latch = c.parts[p].pinout().role(Pin.Role.LATCH);
      must(Long.bitCount(write) == 1 && sway.marks(p, write | latch) == 0);
      must((levels.pins[p].in & write) != 0);
      needs(p, write | latch);
      long address = memory.address().mask();
      if (phase == Phase.V_ROW && (sway.marks(p, address) & Sway.FOREIGN) == 0) {
        needs(p, address);
      }
    }

    /** These pins must be free of strangers, and so what they rest on. */
    private void needs(int p, long pins) {
      must((sway.marks(p, pins) & Sway.FOREIGN) == 0);
      for (long left = pins & ~c.readMask[p]; left != 0; left &= left - 1) {
        need(c.netOf[c.pinBase[p] + Long.numberOfTrailingZeros(left)]);
      }
    }

    private void need(int net) {
      if (!seen[net]) {
        seen[net] = true;
        nets[phase.ordinal()][net] = true;
        work.push(net);
      }
    }

    private void follow(int net) {
      must(c.groupOf[net] < 0);
      for (int gate : c.loadSwitch[net]) {
        must(gate < 0);
      }
      if (c.source[net] != Circuit.NO_SOURCE) {
        return;
      }
      if (!reach.fast[net] && !reach.clockwork.nets[net]) {
        slow[net] = true;
        return;
      }
      for (int g : c.drivers[net]) {
        int p = c.partOf[g];
        parts[p] = true;
        if (c.alive[p] && p != c.cpu && (c.forceMask[p] >>> c.bitOf[g] & 1) == 0) {
          driver(p, node(g));
        }
      }
    }

    private int node(int g) {
      for (int node : c.nodesOf[c.partOf[g]]) {
        if ((c.nodePins[node] >>> c.bitOf[g] & 1) != 0) {
          return node;
        }
      }
      throw new IllegalStateException("no output " + g);
    }

    private void driver(int p, int node) {
      boolean silent = sway.silent(node);
      must(silent || !c.looped[node] && c.nodeGroup[node] < 0);
      long follows = silent ? c.nodeEnables[node] : c.nodeFollows[node] | c.nodeEnables[node];
      if (c.parts[p] instanceof RowMemory && !silent) {
        int looked = sway.row(p) | sway.marks(p, follows);
        must((looked & (Sway.FOREIGN | Sway.TAKEN)) == 0);
      }
      for (long left = follows & ~c.readMask[p]; left != 0; left &= left - 1) {
        int bit = Long.numberOfTrailingZeros(left);
        if ((sway.marks(p, 1L << bit) & Sway.FOREIGN) == 0) {
          need(c.netOf[c.pinBase[p] + bit]);
        }
      }
    }
  }

  /** Per phase the nets that have a say, by their numbers on a board that is the same in that. */
  int[][] nets(Circuit other) {
    int[][] there = new int[PHASES][];
    for (int i = 0; i < PHASES; i++) {
      boolean[] has = nets[i];
      there[i] =
          IntStream.range(0, has.length)
              .filter(net -> has[net] && c.source[net] == Circuit.NO_SOURCE)
              .map(net -> other.netOf[pinOn(net)])
              .toArray();
    }
    return there;
  }

  /** The slow nets that have a say, by their numbers on a board that is the same in that. */
  int[] slowNets(Circuit other) {
    return IntStream.range(0, slow.length)
        .filter(net -> slow[net])
        .map(net -> other.netOf[pinOn(net)])
        .toArray();
  }

  /** A pin on a net that has a say, of a part that has. */
  private int pinOn(int net) {
    for (int pin : c.drivers[net]) {
      if (parts[c.partOf[pin]]) {
        return pin;
      }
    }
    for (int pin : c.receivers[net]) {
      if (parts[c.partOf[pin]]) {
        return pin;
      }
    }
    throw new IllegalStateException("no pin on " + c.netNames[net]);
  }

  /** Whether slow levels stand on a board as where this was found out. */
  boolean standsIn(Levels levels) {
    int[] there = slowNets(levels.circuit);
    int[] here = slowNets(c);
    for (int i = 0; i < here.length; i++) {
      if (levels.mv[there[i]] != slowMv[here[i]]) {
        return false;
      }
    }
    return true;
  }

  /** Memories that the picture is fetched from. */
  int[] memories() {
    return IntStream.range(0, parts.length)
        .filter(p -> parts[p] && c.parts[p] instanceof RowMemory)
        .toArray();
  }

  /** Parts that store at edges what they take from such a memory. */
  int[] buffers() {
    return IntStream.range(0, parts.length)
        .filter(p -> halves[p] && !(c.parts[p] instanceof BusDevice))
        .filter(p -> IntStream.of(memories()).anyMatch(m -> meet(m, p)))
        .toArray();
  }

  private boolean meet(int memory, int buffer) {
    for (int g = 0; g < c.netOf.length; g++) {
      if (c.partOf[g] == buffer) {
        for (int d : c.drivers[c.netOf[g]]) {
          if (c.partOf[d] == memory) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** Whether a part looks up cells of its own for the picture. */
  boolean looksUp(int p) {
    return halves[p] && !(c.parts[p] instanceof Counting) && c.parts[p].pinout().cellCount() > 0;
  }

  /** All that the next dots depend on, memory apart: stored words of the picture half. */
  long[] state(PlainCycle plain) {
    long[] state = new long[0];
    for (int p = 0; p < parts.length; p++) {
      if (clocks[p] || halves[p]) {
        long[] words;
        if (c.parts[p] instanceof Counting part) {
          words = part.picturing(plain.levels.pins[p]);
        } else {
          int from = c.wordBase[p];
          int to = from + c.parts[p].pinout().words().size();
          words = Arrays.copyOfRange(plain.store.words(), from, to);
        }
        state = joined(state, words);
      }
    }
    return state;
  }

  private static long[] joined(long[] one, long[] other) {
    long[] both = Arrays.copyOf(one, one.length + other.length);
    System.arraycopy(other, 0, both, one.length, other.length);
    return both;
  }

  /** Whether a board wired otherwise is the same in all that has a say. */
  boolean same(Circuit other) {
    boolean[] any = new boolean[c.netCount];
    for (int net = 0; net < c.netCount; net++) {
      for (boolean[] phase : nets) {
        any[net] |= phase[net];
      }
    }
    for (int p = 0; p < parts.length; p++) {
      if (parts[p] && !samePart(p, other, any)) {
        return false;
      }
    }
    int[] there = new int[c.netCount];
    Arrays.fill(there, -1);
    for (int g = 0; g < c.netOf.length; g++) {
      int net = c.netOf[g];
      if (any[net] && parts[c.partOf[g]]) {
        if (there[net] >= 0 && there[net] != other.netOf[g]) {
          return false;
        }
        there[net] = other.netOf[g];
      }
    }
    for (int net = 0; net < c.netCount; net++) {
      if (any[net] && !sameNet(net, other, there[net])) {
        return false;
      }
    }
    return true;
  }

  /** Whether a net carries the same there; who only listens, and is no part of it, may be gone. */
  private boolean sameNet(int net, Circuit other, int there) {
    return there >= 0
        && c.source[net] == other.source[there]
        && c.sourceMv[net] == other.sourceMv[there]
        && Arrays.equals(c.drivers[net], other.drivers[there])
        && Arrays.equals(listeners(c, net), listeners(other, there))
        && Arrays.equals(c.loadMv[net], other.loadMv[there])
        && Arrays.equals(c.loadOhm[net], other.loadOhm[there])
        && Arrays.equals(c.loadSwitch[net], other.loadSwitch[there])
        && c.lsInputs[net] == other.lsInputs[there]
        && c.deadLs[net] == other.deadLs[there]
        && other.groupOf[there] < 0;
  }

  private int[] listeners(Circuit of, int net) {
    return IntStream.of(of.receivers[net]).filter(g -> parts[of.partOf[g]]).toArray();
  }

  private boolean samePart(int p, Circuit other, boolean[] any) {
    long pins = 0;
    for (Pin pin : c.parts[p].pinout().pins()) {
      int g = c.pinBase[p] + pin.bit();
      if (any[c.netOf[g]]) {
        pins |= pin.mask();
        boolean same =
            c.lowMv[g] == other.lowMv[g]
                && c.lowOhm[g] == other.lowOhm[g]
                && c.highMv[g] == other.highMv[g]
                && c.highOhm[g] == other.highOhm[g]
                && c.collector[g] == other.collector[g]
                && c.threshold[g] == other.threshold[g]
                && c.technology[g] == other.technology[g];
        if (!same) {
          return false;
        }
      }
    }
    boolean rom = c.parts[p] instanceof Memory || !(c.parts[p] instanceof RowMemory);
    String ref = c.refs[p];
    HarmNotes harm = other.harm;
    return c.alive[p] == other.alive[p]
        && c.powered[p] == other.powered[p]
        && c.groundOpen[p] == other.groundOpen[p]
        && ((c.forceMask[p] ^ other.forceMask[p]) & pins) == 0
        && ((c.forceBits[p] ^ other.forceBits[p]) & c.forceMask[p] & pins) == 0
        && ((c.readMask[p] ^ other.readMask[p]) & pins) == 0
        && ((c.readBits[p] ^ other.readBits[p]) & c.readMask[p] & pins) == 0
        && harm.defects.getOrDefault(ref, Set.of()).isEmpty()
        && harm.programmed.stream().noneMatch(x -> x.ref().equals(ref))
        && harm.cellDefects.stream().noneMatch(x -> x.ref().equals(ref))
        && (!rom || harm.cells.stream().noneMatch(x -> x.ref().equals(ref)));
  }
}
