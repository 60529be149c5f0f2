package faultfinch.machine;

import faultfinch.part.M6502;
import faultfinch.part.Memory;
import faultfinch.part.RowMemory;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import faultfinch.signal.Pinout;
import java.util.Arrays;

/**
 * Who could sway each net of a settled phase: the picture half's counting parts, what it has taken
 * from memory, or anybody else (the processor, what refreshes the memory, any other part). What is
 * swayed by none of them stands so in every cycle in which the clock's parts stand as they do.
 *
 * <p>How: marks stand on nets. A part that stores nothing passes on the marks of those inputs that
 * change its output in some combination of all that are marked, the others as they are; one that
 * stores shows its own mark and passes on all, unless it is surely let go.
 */
final class Sway {
  /** The processor and all else that a picture must not depend on. */
  static final int FOREIGN = 1;

  /** Parts of the picture half that count. */
  static final int COUNTED = 2;

  /** What memory held, and what was taken from it. */
  static final int TAKEN = 4;

  private static final int MOST_TRIED = 8;
  private static final Pinout CPU = new M6502().pinout();
  private static final long PHASES = CPU.pin("PHI1") | CPU.pin("PHI2");

  private final Circuit c;
  private final Levels levels;
  private final Reach reach;

  /** What each part's stored state is to the picture. */
  private final int[] kinds;

  /** Marks of the row that a memory has strobed last. */
  private final int[] rows;

  private final int[] onNet;
  private final long[] swayed;
  private final long[] triedDriven = new long[1 << MOST_TRIED];
  private final long[] triedBits = new long[1 << MOST_TRIED];

  Sway(Levels levels, Reach reach, int[] kinds) {
    this.c = levels.circuit;
    this.levels = levels;
    this.reach = reach;
    this.kinds = kinds;
    rows = new int[c.parts.length];
    Arrays.fill(rows, FOREIGN);
    onNet = new int[c.netCount];
    swayed = new long[c.parts.length];
  }

  /** Looks at a phase that has settled and is not committed yet. */
  void look(Phase phase) {
    Recorder noted = levels.recorder;
    levels.recorder = Recorder.NONE;
    Arrays.fill(onNet, 0);
    Arrays.fill(swayed, 0);
    for (Pin pin : CPU.pins()) {
      if (pin.drives() && (PHASES & pin.mask()) == 0) {
        add(c.netOf[c.pinBase[c.cpu] + pin.bit()], FOREIGN);
      }
    }
    boolean more = true;
    while (more) {
      more = false;
      for (int node = 0; node < c.nodePart.length; node++) {
        more |= node(node);
      }
    }
    levels.recorder = noted;
    if (phase == Phase.V_ROW || phase == Phase.C_ROW) {
      strobed();
    }
  }

  private void strobed() {
    for (int p = 0; p < rows.length; p++) {
      if (c.parts[p] instanceof RowMemory memory) {
        int latch = marks(p, c.parts[p].pinout().role(Pin.Role.LATCH));
        rows[p] =
            latch | (memory.strobes(levels.pins[p].in) ? marks(p, memory.address().mask()) : 0);
      }
    }
  }

  /** The marks of all that these pins of a part read. */
  int marks(int p, long pins) {
    int all = 0;
    for (long left = pins & swayed[p]; left != 0; left &= left - 1) {
      all |= mark(p, Long.numberOfTrailingZeros(left));
    }
    return all;
  }

  private int mark(int p, int bit) {
    return (swayed[p] >>> bit & 1) == 0 ? 0 : onNet[c.netOf[c.pinBase[p] + bit]];
  }

  /** The marks of a net. */
  int of(int net) {
    return onNet[net];
  }

  /** Marks of the row that a memory has strobed last. */
  int row(int p) {
    return rows[p];
  }

  /** Whether an output is surely let go. */
  boolean silent(int node) {
    int p = c.nodePart[node];
    long enables = c.nodeEnables[node];
    long pins = c.nodePins[node] & ~c.forceMask[p];
    if (enables == 0 || (levels.driven[p] & pins) != 0) {
      return false;
    }
    long marked = enables & swayed[p];
    if (marks(p, enables) == 0) {
      return true;
    }
    return !Clockwork.stores(c, p) && Long.bitCount(marked) <= MOST_TRIED && neverDrives(node);
  }

  private boolean neverDrives(int node) {
    int p = c.nodePart[node];
    long marked = c.nodeEnables[node] & swayed[p];
    boolean never = true;
    tried(p, marked, c.nodePins[node]);
    for (int i = 0; i < 1 << Long.bitCount(marked); i++) {
      never &= triedDriven[i] == 0;
    }
    return never;
  }

  private boolean add(int net, int set) {
    int[] all = c.groupOf[net] < 0 ? new int[] {net} : c.groups[c.groupOf[net]].nets();
    boolean more = false;
    for (int n : all) {
      boolean moves = reach.fast[n] || reach.clockwork.nets[n];
      if (moves && c.source[n] == Circuit.NO_SOURCE && (onNet[n] | set) != onNet[n]) {
        onNet[n] |= set;
        more = true;
        for (int g : c.receivers[n]) {
          swayed[c.partOf[g]] |= 1L << c.bitOf[g] & ~c.readMask[c.partOf[g]];
        }
      }
    }
    return more;
  }

  private boolean node(int node) {
    int p = c.nodePart[node];
    if (!c.alive[p] || p == c.cpu) {
      return false;
    }
    long follows = c.nodeFollows[node] | c.nodeEnables[node];
    int all = marks(p, follows);
    if (c.nodeGroup[node] >= 0) {
      return all != 0 && add(c.groups[c.nodeGroup[node]].nets()[0], all);
    }
    int out = all;
    if (Clockwork.stores(c, p)) {
      boolean rom = c.parts[p] instanceof Memory && !c.parts[p].commitsEveryPhase();
      out = silent(node) ? 0 : all | rows(p) | (rom ? 0 : kinds[p]);
    } else if (all != 0 && Long.bitCount(follows & swayed[p]) <= MOST_TRIED) {
      out = tried(p, follows & swayed[p], c.nodePins[node]);
    }
    boolean more = false;
    for (long left = out == 0 ? 0 : c.nodePins[node] & ~c.forceMask[p]; left != 0; ) {
      more |= add(c.netOf[c.pinBase[p] + Long.numberOfTrailingZeros(left)], out);
      left &= left - 1;
    }
    return more;
  }

  private int rows(int p) {
    return c.parts[p] instanceof RowMemory ? rows[p] : 0;
  }

  /** Tries all combinations of the marked inputs; the marks of those that change something. */
  private int tried(int p, long marked, long pins) {
    PartPins view = levels.pins[p];
    long in = view.in;
    long driven = view.driven;
    long bits = view.bits;
    int combinations = 1 << Long.bitCount(marked);
    long now = 0;
    for (int i = 0; i < combinations; i++) {
      view.in = in & ~marked | now;
      view.driven = 0;
      view.bits = 0;
      c.parts[p].settle(view);
      triedDriven[i] = view.driven & pins;
      triedBits[i] = view.bits & view.driven & pins;
      now = now - marked & marked;
    }
    view.in = in;
    view.driven = driven;
    view.bits = bits;
    int changes = 0;
    int step = 1;
    for (long left = marked; left != 0; left &= left - 1, step <<= 1) {
      for (int i = 0; i < combinations; i++) {
        int other = i ^ step;
        if (triedDriven[i] != triedDriven[other] || triedBits[i] != triedBits[other]) {
          changes |= mark(p, Long.numberOfTrailingZeros(left));
        }
      }
    }
    return changes;
  }
}
