package faultfinch.machine;

import faultfinch.part.BusDevice;
import faultfinch.part.Counting;
import faultfinch.part.DualPortMemory;
import faultfinch.part.M6502;
import faultfinch.part.Memory;
import faultfinch.part.RowMemory;
import faultfinch.signal.Pin;
import faultfinch.signal.Pinout;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.stream.IntStream;

/**
 * The parts of a wired circuit that step with the clock whatever the processor does, such as the
 * picture half of a board, by structure alone.
 *
 * <p>A storing part belongs to it if what tells it to store (clock, latch, and every input of a
 * part that looks at all of them) is on no net that an access can move, and on some net that the
 * phases or the clockwork itself move; a part that shows the phase belongs to it though nothing
 * clocks it. Some of its parts merely take what memory held (a picture latch); the others (a
 * refresh counter, the counters of a picture) run on their own, and come round.
 */
final class Clockwork {
  private static final Pinout CPU = new M6502().pinout();
  private static final long PHASES = CPU.pin("PHI1") | CPU.pin("PHI2");

  /** Parts of the clockwork. */
  final boolean[] parts;

  /** Those of its parts that take data an access can move, or take from such. */
  final boolean[] takers;

  /** Those of its takers whose cells the processor can write as it can those of a memory. */
  final boolean[] dualPort;

  /** Those that run on their own and can take many steps at once. */
  final boolean[] counting;

  /** Nets that only the clockwork moves. */
  final boolean[] nets;

  /** Such nets that the processor reads, or a part outside that stores. */
  final boolean[] visible;

  /** Slow nets on which a step of the running parts can depend. */
  int[] keys = new int[0];

  private final Circuit c;
  private final boolean[] byAccess;
  private final boolean[] moved;
  private final boolean[] taken;

  Clockwork(Circuit c) {
    this.c = c;
    this.parts = new boolean[c.parts.length];
    this.takers = new boolean[c.parts.length];
    this.dualPort = new boolean[c.parts.length];
    this.counting = new boolean[c.parts.length];
    this.nets = new boolean[c.netCount];
    this.visible = new boolean[c.netCount];
    this.byAccess = byAccess();
    this.moved = find();
    this.taken = takers();
  }

  /**
   * Says which nets are the clockwork's own, beside those that an access or the phases move. If
   * takers show on one of these, or to the processor, then what they show depends on what memory
   * held, and nothing runs free.
   *
   * @return whether the clockwork may run free
   */
  boolean beside(boolean[] fast) {
    for (int net = 0; net < c.netCount; net++) {
      if (taken[net] && (fast[net] || readOutside(net))) {
        Arrays.fill(parts, false);
        Arrays.fill(takers, false);
        return false;
      }
    }
    for (int net = 0; net < c.netCount; net++) {
      nets[net] = moved[net] && !fast[net];
      visible[net] = nets[net] && readOutside(net);
    }
    for (int p = 0; p < parts.length; p++) {
      dualPort[p] = takers[p] && c.parts[p] instanceof DualPortMemory;
    }
    keys = keys(fast);
    counting(fast);
    return true;
  }

  private void counting(boolean[] fast) {
    for (int p = 0; p < parts.length; p++) {
      counting[p] = parts[p] && !takers[p] && c.parts[p] instanceof Counting && alone(p, fast);
    }
    boolean[] counted = movedBy(counting);
    for (int p = 0; p < parts.length; p++) {
      for (Pin pin : c.parts[p].pinout().pins()) {
        boolean runner = parts[p] && !takers[p];
        if (runner && reads(p, pin) && counted[c.netOf[c.pinBase[p] + pin.bit()]]) {
          Arrays.fill(counting, false);
          return;
        }
      }
    }
  }

  /** Whether nothing that moves by itself reaches a part but by its clock. */
  private boolean alone(int p, boolean[] fast) {
    for (Pin pin : c.parts[p].pinout().pins()) {
      int net = c.netOf[c.pinBase[p] + pin.bit()];
      boolean clock = pin.role() == Pin.Role.CLOCK_RISES || pin.role() == Pin.Role.CLOCK_FALLS;
      if (reads(p, pin) && !clock && (fast[net] || nets[net])) {
        return false;
      }
    }
    return true;
  }

  private boolean reads(int p, Pin pin) {
    return (receives(p) & ~bus(p) & ~c.readMask[p] & pin.mask()) != 0;
  }

  /** Of a part's outputs those that can move a net somebody outside reads. */
  long shown(int p) {
    long shown = 0;
    for (Pin pin : c.parts[p].pinout().pins()) {
      if (pin.drives() && (bus(p) & pin.mask()) == 0) {
        boolean[] from = new boolean[c.netCount];
        from[c.netOf[c.pinBase[p] + pin.bit()]] = true;
        boolean[] reached = spread(from);
        for (int net = 0; net < reached.length; net++) {
          shown |= reached[net] && visible[net] ? pin.mask() : 0;
        }
      }
    }
    return shown;
  }

  /**
   * For each taking part that waits for an edge, the outputs of a counting part that have a say in
   * its clock; each set once.
   */
  long[] gating(int counter) {
    long[] gating = new long[parts.length];
    for (Pin pin : c.parts[counter].pinout().pins()) {
      if (pin.drives() && (bus(counter) & pin.mask()) == 0) {
        boolean[] from = new boolean[c.netCount];
        from[c.netOf[c.pinBase[counter] + pin.bit()]] = true;
        boolean[] reached = spread(from);
        for (int p = 0; p < parts.length; p++) {
          gating[p] |= takers[p] && edges(p, reached) ? pin.mask() : 0;
        }
      }
    }
    return Arrays.stream(gating).filter(outputs -> outputs != 0).distinct().toArray();
  }

  /** Whether a part that waits for an edge has a clock on one of these nets. */
  private boolean edges(int p, boolean[] nets) {
    boolean edges = false;
    if (!c.parts[p].commitsEveryPhase()) {
      for (long left = c.edgePins(p) & ~c.readMask[p]; left != 0; left &= left - 1) {
        edges |= nets[c.netOf[c.pinBase[p] + Long.numberOfTrailingZeros(left)]];
      }
    }
    return edges;
  }

  /** Whether what counting parts show tells nobody more than that the processor is interrupted. */
  boolean interruptsOnly() {
    boolean[] reached = movedBy(counting);
    return IntStream.range(0, c.netCount)
        .allMatch(net -> !reached[net] || !visible[net] || SlowSide.interrupts(c, net));
  }

  /** Whether there is any. */
  boolean any() {
    return IntStream.range(0, parts.length).anyMatch(p -> parts[p]);
  }

  /** Parts that run on their own and come round. */
  int[] runners() {
    return IntStream.range(0, parts.length)
        .filter(p -> parts[p] && !takers[p] && !counting[p])
        .toArray();
  }

  /** Parts that run on their own and count. */
  int[] counters() {
    return IntStream.range(0, parts.length).filter(p -> counting[p]).toArray();
  }

  static boolean stores(Circuit c, int p) {
    Pinout pinout = c.parts[p].pinout();
    return !pinout.words().isEmpty() || pinout.cellCount() > 0;
  }

  private boolean candidate(int p) {
    boolean memory = c.parts[p] instanceof Memory || c.parts[p] instanceof RowMemory;
    boolean device = c.parts[p] instanceof BusDevice && !c.parts[p].stepsAlone();
    return c.alive[p] && p != c.cpu && stores(c, p) && !memory && !device;
  }

  private boolean[] byAccess() {
    boolean[] reached = new boolean[c.netCount];
    if (c.cpu >= 0) {
      for (Pin pin : CPU.pins()) {
        if (pin.drives() && (PHASES & pin.mask()) == 0) {
          reached[c.netOf[c.pinBase[c.cpu] + pin.bit()]] = true;
        }
      }
    }
    return spread(reached);
  }

  private boolean[] byPhase() {
    boolean[] reached = new boolean[c.netCount];
    for (int p = 0; p < c.parts.length; p++) {
      for (Pin pin : c.parts[p].pinout().pins()) {
        boolean phased = c.parts[p].followsPhase() || p == c.cpu && (PHASES & pin.mask()) != 0;
        if (c.alive[p] && pin.drives() && phased) {
          reached[c.netOf[c.pinBase[p] + pin.bit()]] = true;
        }
      }
    }
    return spread(reached);
  }

  /** Finds the parts; returns the nets they can move. */
  private boolean[] find() {
    boolean[] clocking = byPhase();
    boolean more = true;
    boolean[] moved = new boolean[c.netCount];
    while (more) {
      more = false;
      for (int p = 0; p < parts.length; p++) {
        if (!parts[p] && candidate(p) && runs(p, clocking, moved)) {
          parts[p] = true;
          more = true;
        }
      }
      moved = movedBy(parts);
    }
    return moved;
  }

  private boolean runs(int p, boolean[] clocking, boolean[] moved) {
    boolean clocked = false;
    for (Pin pin : c.parts[p].pinout().pins()) {
      if ((triggers(p) & pin.mask() & ~c.readMask[p]) != 0) {
        int net = c.netOf[c.pinBase[p] + pin.bit()];
        if (byAccess[net]) {
          return false;
        }
        clocked |= clocking[net] || moved[net];
      }
    }
    return clocked || c.parts[p].followsPhase();
  }

  /** The pins that can tell a part to store. */
  private long triggers(int p) {
    Pinout pinout = c.parts[p].pinout();
    if (!c.parts[p].commitsEveryPhase()) {
      return c.edgePins(p);
    }
    if (pinout.role(Pin.Role.LATCH) != 0) {
      return pinout.role(Pin.Role.LATCH);
    }
    return receives(p) & ~bus(p);
  }

  private long receives(int p) {
    return c.parts[p].pinout().pins().stream()
        .filter(Pin::receives)
        .mapToLong(Pin::mask)
        .reduce(0, (x, y) -> x | y);
  }

  /** Of a part with registers the pins by which the processor gets at them. */
  private long bus(int p) {
    Pinout pinout = c.parts[p].pinout();
    return !(c.parts[p] instanceof BusDevice)
        ? 0
        : pinout.role(Pin.Role.SELECT)
            | pinout.role(Pin.Role.REGISTER)
            | pinout.role(Pin.Role.DIRECTION)
            | pinout.role(Pin.Role.DATA);
  }

  /** Marks the takers; returns the nets they can move. */
  private boolean[] takers() {
    boolean[] moved = new boolean[c.netCount];
    boolean more = true;
    while (more) {
      more = false;
      for (int p = 0; p < parts.length; p++) {
        if (parts[p] && !takers[p] && takes(p, moved)) {
          takers[p] = true;
          more = true;
        }
      }
      moved = movedBy(takers);
    }
    return moved;
  }

  private boolean takes(int p, boolean[] taken) {
    if (c.parts[p].pinout().cellCount() > 0 && !(c.parts[p] instanceof Counting)) {
      return true;
    }
    for (Pin pin : c.parts[p].pinout().pins()) {
      int net = c.netOf[c.pinBase[p] + pin.bit()];
      if (reads(p, pin) && (byAccess[net] || taken[net])) {
        return true;
      }
    }
    return false;
  }

  private boolean[] movedBy(boolean[] some) {
    boolean[] reached = new boolean[c.netCount];
    for (int p = 0; p < some.length; p++) {
      for (Pin pin : c.parts[p].pinout().pins()) {
        if (some[p] && pin.drives() && (bus(p) & pin.mask()) == 0) {
          reached[c.netOf[c.pinBase[p] + pin.bit()]] = true;
        }
      }
    }
    return spread(reached);
  }

  /** Whether the processor or a storing part outside the clockwork reads a net. */
  private boolean readOutside(int net) {
    for (int g : c.receivers[net]) {
      int p = c.partOf[g];
      boolean rom = c.parts[p] instanceof Memory && !c.parts[p].commitsEveryPhase();
      if ((c.readMask[p] >>> c.bitOf[g] & 1) != 0 || still(p)) {
        continue;
      }
      if (p == c.cpu || c.alive[p] && stores(c, p) && !parts[p] && !rom) {
        return true;
      }
    }
    return false;
  }

  /** Whether a part stores at clock edges only, and nothing is left that could make one. */
  private boolean still(int p) {
    boolean still = !c.parts[p].commitsEveryPhase() && c.edgePins(p) != 0;
    for (long left = c.edgePins(p) & ~c.readMask[p]; left != 0; left &= left - 1) {
      int net = c.netOf[c.pinBase[p] + Long.numberOfTrailingZeros(left)];
      still &= c.drivers[net].length == 0 && c.groupOf[net] < 0;
    }
    return still;
  }

  /** Nets that can move where these do, by outputs that follow inputs and memories looked up. */
  private boolean[] spread(boolean[] from) {
    boolean[] reached = new boolean[c.netCount];
    Deque<Integer> work = new ArrayDeque<>();
    for (int net = 0; net < from.length; net++) {
      if (from[net]) {
        reach(net, reached, work);
      }
    }
    while (!work.isEmpty()) {
      for (int g : c.receivers[work.pop()]) {
        int p = c.partOf[g];
        if (c.alive[p]) {
          long data = c.parts[p].pinout().role(Pin.Role.DATA);
          boolean own = p == c.cpu || c.parts[p].stepsAlone();
          reachPins(p, own ? 0 : data, reached, work);
          for (int node : c.followers[g]) {
            if (c.nodeGroup[node] >= 0) {
              reach(c.groups[c.nodeGroup[node]].nets()[0], reached, work);
            } else if (!Reach.keepsOut(c, node, g)) {
              reachPins(p, c.nodePins[node], reached, work);
            }
          }
        }
      }
    }
    return reached;
  }

  private void reachPins(int p, long pins, boolean[] reached, Deque<Integer> work) {
    for (Pin pin : c.parts[p].pinout().pins()) {
      if ((pins & pin.mask()) != 0 && pin.drives()) {
        reach(c.netOf[c.pinBase[p] + pin.bit()], reached, work);
      }
    }
  }

  private void reach(int net, boolean[] reached, Deque<Integer> work) {
    int[] all = c.groupOf[net] < 0 ? new int[] {net} : c.groups[c.groupOf[net]].nets();
    for (int n : all) {
      if (!reached[n] && c.source[n] == Circuit.NO_SOURCE) {
        reached[n] = true;
        work.push(n);
      }
    }
  }

  private int[] keys(boolean[] fast) {
    return IntStream.range(0, c.netCount)
        .filter(net -> !fast[net] && !nets[net] && c.source[net] == Circuit.NO_SOURCE)
        .filter(this::steers)
        .toArray();
  }

  private boolean steers(int net) {
    for (int g : c.receivers[net]) {
      int p = c.partOf[g];
      if (parts[p]) {
        return true;
      }
      for (int node : c.followers[g]) {
        boolean group = c.nodeGroup[node] >= 0;
        long left = group ? 0 : c.nodePins[node];
        while (left != 0) {
          int out = c.netOf[c.pinBase[p] + Long.numberOfTrailingZeros(left)];
          left &= left - 1;
          if (nets[out]) {
            return true;
          }
        }
        if (group && nets[c.groups[c.nodeGroup[node]].nets()[0]]) {
          return true;
        }
      }
    }
    return false;
  }
}
