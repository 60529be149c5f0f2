package faultfinch.machine;

import faultfinch.part.BusDevice;
import faultfinch.part.Part;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The nets that no access moves, after a part has been told to show something else: most often a
 * port, and all who listen only pass it on.
 *
 * <p>Then it is enough to settle what follows the port. What fast nets carry at that moment is not
 * looked at: no slow net follows a fast one. If somebody who listens would store anything, or tell
 * it to a fast net or to what runs by itself, the next cycle is played instead.
 */
final class SlowSide {
  private static final Phase[] PHASES = Phase.values();

  private final PlainCycle plain;
  private final Circuit c;
  private final Levels levels;
  private final boolean[] carriesData;

  /** Nets of which somebody may be told who does more than pass it on. */
  private final boolean[] loud;

  /** Per net the parts that might store what they read there, and read slow nets alone. */
  private final int[][] storing;

  /** Nets that somebody's clock pin reads. */
  private final boolean[] clocks;

  /** Whether an edge of a slow net may make a part store what fast nets carry. */
  private final boolean edges;

  /** By part its select pins, and those of them that are high while it is not selected. */
  private final long[] selects;

  private final long[] released;

  private final int[] before;

  SlowSide(PlainCycle plain, Reach reach) {
    this.plain = plain;
    this.c = plain.circuit;
    this.levels = plain.levels;
    this.before = new int[c.netCount];
    this.loud = new boolean[c.netCount];
    this.carriesData = new boolean[c.netCount];
    this.storing = new int[c.netCount][];
    this.clocks = new boolean[c.netCount];
    for (int g = 0; g < c.partOf.length; g++) {
      clocks[c.netOf[g]] |= (c.edgePins(c.partOf[g]) >>> c.bitOf[g] & 1) != 0;
    }
    this.selects = new long[c.parts.length];
    this.released = new long[c.parts.length];
    for (int p = 0; p < c.parts.length; p++) {
      for (Pin pin : c.parts[p].pinout().pins()) {
        boolean selects = pin.role() == Pin.Role.SELECT;
        this.selects[p] |= selects ? pin.mask() : 0;
        released[p] |= selects && pin.activeLow() ? pin.mask() : 0;
      }
    }
    for (int net = 0; net < c.netCount; net++) {
      carriesData[net] = reach.lineOf[net] != 0;
      loud[net] = reach.fast[net] || reach.clockwork.nets[net] && !interrupts(c, net);
      storing[net] = storing(net, reach);
    }
    for (int key : reach.clockwork.keys) {
      loud[key] = true;
    }
    edges =
        IntStream.range(0, c.parts.length)
            .filter(p -> !reach.onlySlow(p) && !reach.clockwork.parts[p])
            .anyMatch(p -> (c.edgePins(p) & reach.waiting[p]) != 0);
  }

  /** Whether of all who read a net only the interrupt pin of the processor does anything then. */
  static boolean interrupts(Circuit c, int net) {
    boolean interrupts = c.groupOf[net] < 0;
    for (int g : c.receivers[net]) {
      int p = c.partOf[g];
      boolean pin = p == c.cpu && 1L << c.bitOf[g] == ProcessorPins.IRQ;
      boolean nobody = c.followers[g].length == 0 && p != c.cpu && !Clockwork.stores(c, p);
      interrupts &= pin || nobody;
    }
    return interrupts;
  }

  private int[] storing(int net, Reach reach) {
    List<Integer> storing = new ArrayList<>();
    for (int g : c.receivers[net]) {
      int p = c.partOf[g];
      boolean port = c.parts[p] instanceof BusDevice && direction(g) == Pin.Direction.BOTH;
      if (p == c.cpu) {
        loud[net] |= !interrupts(c, net);
      } else if (c.alive[p] && c.parts[p].commitsEveryPhase() && !port) {
        boolean cells = c.parts[p].pinout().cellCount() > 0;
        loud[net] |= cells || reach.clockwork.parts[p] || !reach.onlySlow(p);
        storing.add(p);
      }
    }
    return storing.stream().mapToInt(p -> p).distinct().toArray();
  }

  private Pin.Direction direction(int g) {
    return c.parts[c.partOf[g]].pinout().pins().get(c.bitOf[g]).direction();
  }

  /**
   * Parts have stored something at the end of the cycle at hand: brings the slow nets to rest.
   *
   * @param access that made them
   * @return false if that has to be done with all levels brought up, and a cycle be played after
   */
  boolean settled(Shortcut access) {
    if (edges) {
      return false;
    }
    System.arraycopy(levels.mv, 0, before, 0, before.length);
    levels.phase = Phase.C_END;
    levels.settle();
    plain.followEdges(Phase.C_END);
    levels.moved = false;
    boolean quiet = true;
    for (Shortcut.Step step : access.steps()) {
      quiet &= quiet && idles(step);
    }
    for (int net = 0; net < before.length && quiet; net++) {
      if (levels.mv[net] != before[net] && !carriesData[net]) {
        quiet = !loud[net] && nobodyStores(storing[net]);
      }
    }
    levels.moved = true;
    levels.phase = Phase.C_END;
    return quiet;
  }

  /**
   * Parts have changed by themselves and the levels have settled since: whether they and all who
   * read a net that moved go on as they are.
   *
   * @param due the parts that changed
   * @param were the levels before, in millivolts
   * @return false as well if that takes more to be told
   */
  boolean undisturbed(int[] due, int[] were) {
    boolean undisturbed = true;
    levels.moved = false;
    for (int net = 0; net < were.length && undisturbed; net++) {
      if (levels.mv[net] != were[net]) {
        undisturbed = !loud[net] && !clocks[net] && nobodyStores(storing[net]) && portsIdle(net);
      }
    }
    for (int i = 0; i < due.length && undisturbed; i++) {
      undisturbed = idles(due[i]);
    }
    return undisturbed;
  }

  private boolean portsIdle(int net) {
    boolean idle = true;
    for (int g : c.receivers[net]) {
      int p = c.partOf[g];
      idle &= !(c.alive[p] && c.parts[p] instanceof BusDevice) || idles(p);
    }
    return idle;
  }

  /** Whether a part that nobody selects goes on as it is. */
  private boolean idles(int p) {
    PartPins pins = levels.pins[p];
    boolean edges = (pins.rose | pins.fell) != 0;
    return c.parts[p].commitsEveryPhase()
        && !edges
        && !stores(p, unselected(p, pins.in), pins.before);
  }

  /** Whether these parts, asked in every phase, would go on as they are; they are left so. */
  private boolean nobodyStores(int[] some) {
    boolean stores = false;
    for (int p : some) {
      stores |= stores(p, levels.pins[p].in, levels.pins[p].before);
    }
    return !stores;
  }

  /** Whether a part with registers goes on as it is as long as nobody selects it. */
  private boolean idles(Shortcut.Step step) {
    int p = step.part();
    Part part = c.parts[p];
    long in = levels.pins[p].in & step.slow() | step.in();
    boolean device = selects[p] != 0 && part instanceof BusDevice && part.pinout().cellCount() == 0;
    return device && !stores(p, unselected(p, in), step.before());
  }

  /** What a part's pins read while nothing selects it. */
  private long unselected(int p, long in) {
    return in & ~selects[p] | released[p];
  }

  /** Whether a part whose pins read this would store anything; it is left as it is. */
  private boolean stores(int p, long in, long before) {
    PartPins pins = levels.pins[p];
    long[] words = plain.store.words();
    int from = c.wordBase[p];
    long[] kept = Arrays.copyOfRange(words, from, from + c.parts[p].pinout().words().size());
    final long[] were = {pins.in, pins.before, pins.rose, pins.fell};
    pins.in = in;
    pins.before = before;
    for (Phase phase : PHASES) {
      levels.phase = phase;
      c.parts[p].commit(pins, phase);
      pins.rose = 0;
      pins.fell = 0;
    }
    pins.in = were[0];
    pins.before = were[1];
    boolean stores = levels.moved;
    if (stores) {
      System.arraycopy(kept, 0, words, from, kept.length);
      levels.touch(p);
      pins.rose = were[2];
      pins.fell = were[3];
    }
    return stores;
  }
}
