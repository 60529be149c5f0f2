package faultfinch.machine;

import faultfinch.part.BusDevice;
import faultfinch.part.M6502;
import faultfinch.part.Part;
import faultfinch.signal.Bus;
import faultfinch.signal.Pin;
import faultfinch.signal.Pinout;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * What the processor's cycle can move on a wired circuit, by structure alone. Nets it cannot move
 * are slow: they change only by a write or an event. Where structure shows that a remembered cycle
 * could be wrong, tables are refused and every cycle is played.
 */
final class Reach {
  private static final Pinout CPU = new M6502().pinout();
  private static final Bus DATA = CPU.bus("D");

  /** The other control pins rest high between remembered cycles. */
  private static final long NEVER_FAST = CPU.pin("RES/") | CPU.pin("RDY") | CPU.pin("PHI0");

  /** Nets that the processor's outputs or a part's data pins can move. */
  final boolean[] fast;

  /** Fast nets, data lines apart, that can be driven and so can hold what drove them last. */
  final boolean[] holds;

  /** Line of the data bus a net carries plus one, or 0. */
  final byte[] lineOf;

  /** Whether two data lines are one net: what it carries is told value by value. */
  boolean shared;

  /** Pins of each part that pass a data line on from one of its nets to another. */
  final long[] passing;

  /** Clock pins of each part on fast nets. */
  final long[] fastEdges;

  /** Control pins of the processor on fast nets. */
  final long fastControl;

  /** Pins of each part on slow nets. */
  final long[] slowPins;

  /** Pins of each part that read a net. */
  private final long[] receiving;

  /** Pins of each part whose edges may be waiting between two cycles: those on slow nets. */
  final long[] waiting;

  /** Slow nets that a table depends on. */
  final int[] keys;

  private final boolean[] live;

  final boolean refused;

  /** What steps by itself; its own nets are neither fast nor slow. */
  final Clockwork clockwork;

  /** Whether anybody reads the SYNC line. */
  final boolean syncRead;

  Reach(Circuit c) {
    fast = new boolean[c.netCount];
    lineOf = new byte[c.netCount];
    slowPins = new long[c.parts.length];
    boolean runs = c.cpu >= 0 && c.alive[c.cpu];
    boolean clash = !runs || lines(c);
    clockwork = new Clockwork(c);
    if (runs) {
      buffered(c);
      spread(c);
    }
    if (!clockwork.beside(fast) && runs) {
      spread(c);
    }
    receiving = receiving(c);
    waiting = new long[c.parts.length];
    for (int g = 0; g < c.partOf.length; g++) {
      if (!fast[c.netOf[g]]) {
        slowPins[c.partOf[g]] |= 1L << c.bitOf[g];
        waiting[c.partOf[g]] |= clockwork.nets[c.netOf[g]] ? 0 : 1L << c.bitOf[g];
      }
    }
    syncRead = runs && syncRead(c);
    holds = holds(c);
    live = new boolean[c.parts.length];
    for (int p = 0; p < live.length; p++) {
      live[p] = runs && live(c, p);
    }
    keys = keys(c);
    fastControl = runs ? ProcessorPins.CONTROL & ~slowPins[c.cpu] : 0;
    passing = passing(c);
    fastEdges = new long[c.parts.length];
    for (int p = 0; p < c.parts.length; p++) {
      boolean own = clockwork.parts[p];
      fastEdges[p] = c.alive[p] && !own ? c.edgePins(p) & ~slowPins[p] : 0;
    }
    refused = clash || coupled(c) || readyDriven(c);
  }

  /**
   * Names the nets of the data lines; one that stands at a supply carries none. True if lines are
   * coupled to other nets.
   */
  private boolean lines(Circuit c) {
    boolean clash = false;
    for (int i = 0; i < DATA.width(); i++) {
      int net = c.netOf[c.pinBase[c.cpu] + DATA.shift() + i];
      if (c.source[net] == Circuit.NO_SOURCE) {
        shared |= lineOf[net] != 0;
        clash |= c.groupOf[net] >= 0;
        lineOf[net] = (byte) (i + 1);
      }
    }
    return clash;
  }

  /**
   * Follows the data lines through buffers: what comes out beyond carries the same line. A net that
   * two lines come out on carries none.
   */
  private void buffered(Circuit c) {
    byte[] own = lineOf.clone();
    boolean[] mixed = new boolean[c.netCount];
    boolean more = true;
    while (more) {
      more = false;
      for (int node = 0; node < c.nodePart.length; node++) {
        int line = carried(c, node);
        if (line > 0) {
          int net = c.netOf[c.pinBase[c.nodePart[node]] + lowest(c.nodePins[node])];
          boolean signal = c.source[net] == Circuit.NO_SOURCE && c.groupOf[net] < 0;
          if (lineOf[net] == 0 && signal && !mixed[net]) {
            lineOf[net] = (byte) line;
            more = true;
          } else if (lineOf[net] != 0 && lineOf[net] != line && own[net] == 0) {
            mixed[net] = true;
            System.arraycopy(own, 0, lineOf, 0, own.length);
            more = true;
          }
        }
      }
    }
  }

  private static int lowest(long pins) {
    return Long.numberOfTrailingZeros(pins);
  }

  /** The line an output passes on: it lets go at times, stores nothing and follows one line. */
  private int carried(Circuit c, int node) {
    int p = c.nodePart[node];
    boolean buffer =
        Long.bitCount(c.nodePins[node]) == 1
            && c.nodeEnables[node] != 0
            && c.parts[p].pinout().words().isEmpty()
            && c.parts[p].pinout().cellCount() == 0;
    int line = 0;
    long left = buffer ? c.nodeFollows[node] & ~c.nodeEnables[node] : 0;
    while (left != 0) {
      int from = lineOf[c.netOf[c.pinBase[p] + Long.numberOfTrailingZeros(left)]];
      left &= left - 1;
      if (from != 0 && line != 0) {
        return 0;
      }
      line = Math.max(line, from);
    }
    return line;
  }

  private long[] passing(Circuit c) {
    long[] passing = new long[c.parts.length];
    for (int node = 0; node < c.nodePart.length; node++) {
      int p = c.nodePart[node];
      int line = carried(c, node);
      if (line > 0 && lineOf[c.netOf[c.pinBase[p] + lowest(c.nodePins[node])]] == line) {
        passing[p] |= c.nodePins[node];
      }
    }
    return passing;
  }

  private static long[] receiving(Circuit c) {
    long[] receiving = new long[c.parts.length];
    for (int p = 0; p < receiving.length; p++) {
      for (Pin pin : c.parts[p].pinout().pins()) {
        receiving[p] |= pin.receives() ? pin.mask() : 0;
      }
    }
    return receiving;
  }

  private static boolean syncRead(Circuit c) {
    int net = c.netOf[c.pinBase[c.cpu] + CPU.find("SYNC").orElseThrow().bit()];
    return c.receivers[net].length > 0 || c.groupOf[net] >= 0;
  }

  /** Whether any pin reads a net or one coupled to it. */
  static boolean isRead(Circuit c, int net) {
    int[] all = c.groupOf[net] < 0 ? new int[] {net} : c.groups[c.groupOf[net]].nets();
    for (int other : all) {
      if (c.receivers[other].length > 0) {
        return true;
      }
    }
    return false;
  }

  private boolean[] holds(Circuit c) {
    boolean[] holds = new boolean[c.netCount];
    for (int net = 0; net < c.netCount; net++) {
      int[] all = c.groupOf[net] < 0 ? new int[] {net} : c.groups[c.groupOf[net]].nets();
      for (int other : all) {
        holds[net] |= fast[net] && lineOf[net] == 0 && c.drivers[other].length > 0;
      }
    }
    return holds;
  }

  private void spread(Circuit c) {
    Deque<Integer> work = new ArrayDeque<>();
    for (Pin pin : CPU.pins()) {
      if (pin.drives()) {
        move(c, c.netOf[c.pinBase[c.cpu] + pin.bit()], work);
      }
    }
    for (int p = 0; p < c.parts.length; p++) {
      if (c.alive[p] && c.parts[p].followsPhase() && !clockwork.parts[p]) {
        drive(c, p, ~0L, work);
      }
    }
    while (!work.isEmpty()) {
      for (int g : c.receivers[work.pop()]) {
        if (c.alive[c.partOf[g]]) {
          drive(c, c.partOf[g], c.parts[c.partOf[g]].pinout().role(Pin.Role.DATA), work);
        }
        for (int node : c.followers[g]) {
          if (c.nodeGroup[node] >= 0) {
            move(c, c.groups[c.nodeGroup[node]].nets()[0], work);
          }
          long left = keepsOut(c, node, g) ? 0 : c.nodePins[node];
          while (left != 0) {
            int bit = Long.numberOfTrailingZeros(left);
            left &= left - 1;
            move(c, c.netOf[c.pinBase[c.nodePart[node]] + bit], work);
          }
        }
      }
    }
  }

  private void drive(Circuit c, int p, long pins, Deque<Integer> work) {
    for (Pin pin : c.parts[p].pinout().pins()) {
      if (pin.drives() && (pins & pin.mask()) != 0) {
        move(c, c.netOf[c.pinBase[p] + pin.bit()], work);
      }
    }
  }

  /**
   * Whether a latch stands between this pin and the outputs of a node. What comes out of a latch is
   * slow: an access that finds it open moves a slow net, and is played.
   */
  static boolean keepsOut(Circuit c, int node, int g) {
    int p = c.nodePart[node];
    long latch = c.parts[p].pinout().role(Pin.Role.LATCH);
    return (c.nodeFollows[node] & latch) != 0 && (c.nodeEnables[node] >>> c.bitOf[g] & 1) == 0;
  }

  private void move(Circuit c, int net, Deque<Integer> work) {
    int[] all = c.groupOf[net] < 0 ? new int[] {net} : c.groups[c.groupOf[net]].nets();
    for (int n : all) {
      if (!fast[n] && c.source[n] == Circuit.NO_SOURCE) {
        fast[n] = true;
        work.push(n);
      }
    }
  }

  /**
   * Slow nets read where a fast net is read or driven too, or by a part that commits and reads fast
   * nets as well: a table holds only while they stay. What only passes through a part that drives
   * the data lines is read live instead.
   */
  private int[] keys(Circuit c) {
    boolean[] key = new boolean[c.netCount];
    for (int net = 0; net < c.netCount; net++) {
      if (!fast[net] && !clockwork.nets[net] && c.source[net] == Circuit.NO_SOURCE) {
        for (int g : c.receivers[net]) {
          key[net] |= matters(c, g);
        }
      }
    }
    return java.util.stream.IntStream.range(0, c.netCount).filter(n -> key[n]).toArray();
  }

  private boolean matters(Circuit c, int g) {
    int p = c.partOf[g];
    if (!c.alive[p] || p == c.cpu || clockwork.parts[p]) {
      return false;
    }
    Pin pin = c.parts[p].pinout().pins().get(c.bitOf[g]);
    boolean commits = c.parts[p].commitsEveryPhase() || c.edgePins(p) != 0;
    boolean livePort = c.parts[p] instanceof BusDevice && pin.direction() == Pin.Direction.BOTH;
    if (commits && !livePort && !onlySlow(p) && !live(p)) {
      return true;
    }
    for (int node : c.followers[g]) {
      if (c.nodeGroup[node] >= 0 && fast[c.groups[c.nodeGroup[node]].nets()[0]]) {
        return true;
      }
      long beside = c.nodeFollows[node] | c.nodePins[node];
      if (!onlyData(c, node) && anyFast(c, p, beside)) {
        return true;
      }
    }
    return false;
  }

  /**
   * Whether a part is a device of the bus, and all else that it reads is slow. What it stores while
   * nobody selects it then follows slow nets alone; while somebody does, it is run as these stand.
   */
  boolean live(int p) {
    return live[p];
  }

  private boolean live(Circuit c, int p) {
    Pinout pinout = c.parts[p].pinout();
    boolean live =
        c.parts[p] instanceof BusDevice
            && pinout.role(Pin.Role.SELECT) != 0
            && c.edgePins(p) == 0
            && !clockwork.parts[p];
    for (Pin pin : pinout.pins()) {
      boolean reads = pin.receives() && (c.readMask[p] & pin.mask()) == 0;
      int net = c.netOf[c.pinBase[p] + pin.bit()];
      boolean slow = !fast[net] && !clockwork.nets[net];
      live &= !reads || slow || ofTheBus(pin) || halves(c, pin, net);
    }
    return live;
  }

  private static boolean ofTheBus(Pin pin) {
    return switch (pin.role()) {
      case SELECT, REGISTER, DIRECTION, DATA -> true;
      default -> false;
    };
  }

  /** Whether a pin reads the clock of the processor as it comes. */
  private static boolean halves(Circuit c, Pin pin, int net) {
    long phi2 = CPU.pin("PHI2");
    return pin.role() == Pin.Role.CLOCK_FALLS
        && net == c.netOf[c.pinBase[c.cpu] + Long.numberOfTrailingZeros(phi2)]
        && c.drivers[net].length == 1
        && c.groupOf[net] < 0
        && (c.forceMask[c.cpu] & phi2) == 0;
  }

  /** Whether all that a part reads is slow. */
  boolean onlySlow(int p) {
    return (receiving[p] & ~slowPins[p]) == 0;
  }

  private boolean onlyData(Circuit c, int node) {
    long left = c.nodePins[node];
    while (left != 0) {
      int bit = Long.numberOfTrailingZeros(left);
      left &= left - 1;
      int net = c.netOf[c.pinBase[c.nodePart[node]] + bit];
      if (lineOf[net] == 0 && isRead(c, net)) {
        return false;
      }
    }
    return true;
  }

  private boolean anyFast(Circuit c, int p, long pins) {
    long left = pins;
    while (left != 0) {
      int bit = Long.numberOfTrailingZeros(left);
      left &= left - 1;
      if (fast[c.netOf[c.pinBase[p] + bit]]) {
        return true;
      }
    }
    return false;
  }

  /** Data lines that select or enable something; processor control on fast nets. */
  private boolean coupled(Circuit c) {
    for (int g = 0; g < c.partOf.length; g++) {
      int p = c.partOf[g];
      int net = c.netOf[g];
      boolean looks = (c.readMask[p] >>> c.bitOf[g] & 1) == 0;
      if (c.alive[p] && looks && fast[net] && !clockwork.parts[p]) {
        Pin pin = c.parts[p].pinout().pins().get(c.bitOf[g]);
        boolean control = p == c.cpu && (NEVER_FAST & pin.mask()) != 0;
        boolean misread =
            lineOf[net] != 0
                && pin.receives()
                && pin.role() != Pin.Role.DATA
                && pin.role() != Pin.Role.INPUT;
        if (control || misread || moody(c.parts[p], pin)) {
          return true;
        }
      }
    }
    return false;
  }

  /** An input by which a part stores or not as its state is; a latch stores in any state. */
  private static boolean moody(Part part, Pin pin) {
    return part.commitsEveryPhase()
        && pin.role() == Pin.Role.INPUT
        && pin.direction() == Pin.Direction.IN
        && part.pinout().role(Pin.Role.LATCH) == 0;
  }

  // A processor that waits inside an instruction must be able to stop there.
  private static boolean readyDriven(Circuit c) {
    int net = c.netOf[c.pinBase[c.cpu] + CPU.find("RDY").orElseThrow().bit()];
    return c.drivers[net].length > 0;
  }
}
