package faultfinch.machine;

import faultfinch.signal.Technology;
import java.util.Map;
import java.util.TreeMap;

/**
 * Inputs of outputs that feed themselves which have come to a level they cannot leave: whatever the
 * other inputs and the other outputs on the net do, the net reads the same there. Of such a loop
 * nothing has to be remembered.
 */
final class Latched {
  private static final int MOST_TRIED = 8;
  private static final int MOST_DRIVERS = 5;
  private static final int STATES = 3;

  private final Circuit c;
  private final Levels levels;

  /** What was found of each pin and level. */
  private final Map<Integer, Boolean> known = new TreeMap<>();

  /** The levels of pins that were told to be for ever. */
  private final Map<Integer, Boolean> told = new TreeMap<>();

  /** Levels that pins cannot leave once they have come to them, which they had not when asked. */
  private final Map<Integer, Boolean> awaited = new TreeMap<>();

  Latched(Levels levels) {
    this.levels = levels;
    this.c = levels.circuit;
  }

  /** Of the inputs that an output follows those on its own net that cannot move any more. */
  long of(int node) {
    int p = c.nodePart[node];
    long latched = 0;
    for (long left = c.nodeFollows[node] & ~c.readMask[p]; left != 0; left &= left - 1) {
      int bit = Long.numberOfTrailingZeros(left);
      int own = own(node, c.netOf[c.pinBase[p] + bit]);
      boolean high = reads(p, bit);
      if (own >= 0 && stands(node, bit, own, high)) {
        told.put(c.pinBase[p] + bit, high);
        latched |= 1L << bit;
      } else if (own >= 0 && stands(node, bit, own, !high)) {
        awaited.put(c.pinBase[p] + bit, !high);
      }
    }
    return latched;
  }

  /**
   * Whether what was told has to be asked anew: another wiring was in between, or a loop has come
   * to a level that it cannot leave.
   */
  boolean moved() {
    boolean moved = false;
    for (Map.Entry<Integer, Boolean> e : told.entrySet()) {
      moved |= reads(c.partOf[e.getKey()], c.bitOf[e.getKey()]) != e.getValue();
    }
    for (Map.Entry<Integer, Boolean> e : awaited.entrySet()) {
      moved |= reads(c.partOf[e.getKey()], c.bitOf[e.getKey()]) == e.getValue();
    }
    if (moved) {
      told.clear();
      awaited.clear();
    }
    return moved;
  }

  private boolean reads(int p, int bit) {
    return (levels.pins[p].in >>> bit & 1) != 0;
  }

  /** The one pin of an output on a net, or -1. */
  private int own(int node, int net) {
    int own = -1;
    for (int g : c.drivers[net]) {
      if (c.partOf[g] == c.nodePart[node] && (c.nodePins[node] >>> c.bitOf[g] & 1) != 0) {
        if (own >= 0) {
          return -1;
        }
        own = g;
      }
    }
    return own;
  }

  private boolean stands(int node, int bit, int own, boolean high) {
    int p = c.nodePart[node];
    int pin = c.pinBase[p] + bit;
    int net = c.netOf[pin];
    boolean plain =
        c.groupOf[net] < 0
            && c.nodeGroup[node] < 0
            && c.source[net] == Circuit.NO_SOURCE
            && c.drivers[net].length <= MOST_DRIVERS
            && c.technology[pin] != Technology.SCHMITT.ordinal()
            && Long.bitCount(c.nodeFollows[node]) <= MOST_TRIED
            && c.alive[p]
            && (c.forceMask[p] >>> c.bitOf[own] & 1) == 0
            && !c.level[pin]
            && !c.parts[p].followsPhase()
            && !Clockwork.stores(c, p);
    for (int gate : c.loadSwitch[net]) {
      plain &= gate < 0;
    }
    return plain
        && known.computeIfAbsent(2 * pin + (high ? 1 : 0), k -> keeps(node, bit, own, high));
  }

  /** Whether a pin that reads this reads it for ever. */
  private boolean keeps(int node, int bit, int own, boolean high) {
    boolean[] states = states(node, bit, own, high);
    for (int state = 0; state < STATES; state++) {
      if (states[state] && !reads(node, bit, own, state, high)) {
        return false;
      }
    }
    return true;
  }

  /** What an output can do (let go, low, high) while its own net reads so. */
  private boolean[] states(int node, int bit, int own, boolean high) {
    int p = c.nodePart[node];
    PartPins view = levels.pins[p];
    long in = view.in;
    long driven = view.driven;
    long bits = view.bits;
    long pin = 1L << c.bitOf[own];
    long others = c.nodeFollows[node] & ~c.readMask[p] & ~(1L << bit);
    boolean[] states = new boolean[STATES];
    long now = 0;
    do {
      view.in = in & ~others & ~(1L << bit) | now | (high ? 1L << bit : 0);
      view.driven = 0;
      view.bits = 0;
      c.parts[p].settle(view);
      boolean drives = (view.driven & pin) != 0;
      boolean ones = (view.bits & pin) != 0;
      states[!drives || ones && c.collector[own] ? 0 : ones ? 2 : 1] = true;
      now = now - others & others;
    } while (now != 0);
    view.in = in;
    view.driven = driven;
    view.bits = bits;
    return states;
  }

  /** Whether a pin reads so whatever the other outputs on its net do. */
  private boolean reads(int node, int bit, int own, int state, boolean high) {
    int pin = c.pinBase[c.nodePart[node]] + bit;
    int net = c.netOf[pin];
    int[] drivers = c.drivers[net];
    int all = 1;
    for (int i = 0; i < drivers.length; i++) {
      all *= STATES;
    }
    for (int combination = 0; combination < all; combination++) {
      double g = 0;
      double gv = 0;
      for (int i = 0; i < c.loadMv[net].length; i++) {
        g += 1.0 / c.loadOhm[net][i];
        gv += (double) c.loadMv[net][i] / c.loadOhm[net][i];
      }
      int left = combination;
      for (int driver : drivers) {
        int does = driver == own ? state : left % STATES;
        left /= STATES;
        if (does != 0) {
          double each = 1.0 / (does == 2 ? c.highOhm[driver] : c.lowOhm[driver]);
          g += each;
          gv += each * (does == 2 ? c.highMv[driver] : c.lowMv[driver]);
        }
      }
      int millivolts = levels.solver.single(net, g, gv);
      boolean known = millivolts != NetSolver.FLOATING;
      if (!known || millivolts > c.threshold[pin] != high) {
        return false;
      }
    }
    return true;
  }
}
