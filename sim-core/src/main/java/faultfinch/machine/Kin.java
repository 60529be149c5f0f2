package faultfinch.machine;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Whether two wirings of the same parts are one and the same in all that an access or the clockwork
 * can move or depends on, so that what was found out about the one holds for the other: a pressed
 * key, most often, joins nets on which nothing but a port looks.
 */
final class Kin {
  private final Circuit one;
  private final Reach oneReach;
  private final Circuit other;
  private final Reach otherReach;

  /** Per net its lowest pin, by which nets of the two are told to be the same. */
  private final int[] first;

  private final int[] otherFirst;

  private Kin(Circuit one, Reach oneReach, Circuit other, Reach otherReach) {
    this.one = one;
    this.oneReach = oneReach;
    this.other = other;
    this.otherReach = otherReach;
    this.first = first(one);
    this.otherFirst = first(other);
  }

  /** Whether they are. */
  static boolean are(Circuit one, Reach oneReach, Circuit other, Reach otherReach) {
    return Arrays.equals(one.refs, other.refs)
        && Arrays.equals(one.pinBase, other.pinBase)
        && new Kin(one, oneReach, other, otherReach).alike();
  }

  private static int[] first(Circuit c) {
    int[] first = new int[c.netCount];
    for (int g = c.netOf.length - 1; g >= 0; g--) {
      first[c.netOf[g]] = g;
    }
    return first;
  }

  private boolean alike() {
    return partsAlike() && nodesAlike() && reachesAlike() && harmAlike() && netsAlike();
  }

  private boolean partsAlike() {
    return one.board == other.board
        && one.delays.isEmpty()
        && other.delays.isEmpty()
        && one.railUp == other.railUp
        && Arrays.equals(one.alive, other.alive)
        && Arrays.equals(one.powered, other.powered)
        && Arrays.equals(one.readMask, other.readMask)
        && Arrays.equals(one.readBits, other.readBits)
        && Arrays.equals(one.forceMask, other.forceMask)
        && Arrays.equals(one.forceBits, other.forceBits)
        && Arrays.equals(one.risePins, other.risePins)
        && Arrays.equals(one.fallPins, other.fallPins)
        && Arrays.equals(one.caseTenths, other.caseTenths)
        && Arrays.equals(one.lowMv, other.lowMv)
        && Arrays.equals(one.lowOhm, other.lowOhm)
        && Arrays.equals(one.highMv, other.highMv)
        && Arrays.equals(one.highOhm, other.highOhm)
        && Arrays.equals(one.collector, other.collector)
        && Arrays.equals(one.threshold, other.threshold)
        && Arrays.equals(one.technology, other.technology)
        && Arrays.equals(one.level, other.level);
  }

  /** Their outputs are the same and none feeds itself. */
  private boolean nodesAlike() {
    return !feedsItself(one)
        && !feedsItself(other)
        && Arrays.equals(one.looped, other.looped)
        && Arrays.equals(one.islandFrom, other.islandFrom)
        && Arrays.equals(one.islandTo, other.islandTo)
        && Arrays.equals(one.nodePart, other.nodePart)
        && Arrays.equals(one.nodePins, other.nodePins)
        && Arrays.equals(one.nodeFollows, other.nodeFollows)
        && Arrays.equals(one.nodeEnables, other.nodeEnables)
        && IntStream.range(0, one.nodePart.length)
            .allMatch(n -> one.nodeGroup[n] < 0 && other.nodeGroup[n] < 0);
  }

  private static boolean feedsItself(Circuit c) {
    boolean feeds = false;
    for (int node = 0; node < c.nodePart.length; node++) {
      int base = c.pinBase[c.nodePart[node]];
      for (long out = c.nodePins[node]; out != 0; out &= out - 1) {
        for (long in = c.nodeFollows[node]; in != 0; in &= in - 1) {
          int from = c.netOf[base + Long.numberOfTrailingZeros(in)];
          feeds |= c.looped[node] && from == c.netOf[base + Long.numberOfTrailingZeros(out)];
        }
      }
    }
    return feeds;
  }

  private boolean harmAlike() {
    return one.harm.defects.equals(other.harm.defects)
        && one.harm.cells.equals(other.harm.cells)
        && one.harm.cellDefects.equals(other.harm.cellDefects)
        && one.harm.programmed.equals(other.harm.programmed);
  }

  private boolean reachesAlike() {
    Clockwork steps = oneReach.clockwork;
    Clockwork otherSteps = otherReach.clockwork;
    return oneReach.refused == otherReach.refused
        && oneReach.shared == otherReach.shared
        && oneReach.syncRead == otherReach.syncRead
        && oneReach.fastControl == otherReach.fastControl
        && Arrays.equals(oneReach.passing, otherReach.passing)
        && Arrays.equals(oneReach.fastEdges, otherReach.fastEdges)
        && Arrays.equals(oneReach.slowPins, otherReach.slowPins)
        && Arrays.equals(oneReach.waiting, otherReach.waiting)
        && Arrays.equals(steps.parts, otherSteps.parts)
        && Arrays.equals(steps.takers, otherSteps.takers)
        && Arrays.equals(steps.counting, otherSteps.counting)
        && sameNets(oneReach.keys, otherReach.keys)
        && sameNets(steps.keys, otherSteps.keys);
  }

  private boolean sameNets(int[] nets, int[] others) {
    return Arrays.equals(
        Arrays.stream(nets).map(net -> first[net]).toArray(),
        Arrays.stream(others).map(net -> otherFirst[net]).toArray());
  }

  private boolean netsAlike() {
    boolean[] matters = matters(one, oneReach);
    boolean[] otherMatters = matters(other, otherReach);
    for (int g = 0; g < one.netOf.length; g++) {
      int net = one.netOf[g];
      int otherNet = other.netOf[g];
      if (matters[net] != otherMatters[otherNet]) {
        return false;
      }
      if (matters[net] && (first[net] != otherFirst[otherNet] || first[net] == g && !alike(net))) {
        return false;
      }
    }
    return true;
  }

  /** Nets that an access or the clockwork moves, or that what these do depends on. */
  private static boolean[] matters(Circuit c, Reach reach) {
    boolean[] matters = new boolean[c.netCount];
    for (int net = 0; net < matters.length; net++) {
      matters[net] = reach.fast[net] || reach.lineOf[net] != 0 || reach.clockwork.nets[net];
    }
    Arrays.stream(reach.keys).forEach(net -> matters[net] = true);
    Arrays.stream(reach.clockwork.keys).forEach(net -> matters[net] = true);
    return matters;
  }

  /** Whether a net is the same in all that makes its volts and in what may move it. */
  private boolean alike(int net) {
    int otherNet = other.netOf[first[net]];
    int group = one.groupOf[net];
    int otherGroup = other.groupOf[otherNet];
    return (group < 0) == (otherGroup < 0)
        && (group < 0 || alike(one.groups[group], other.groups[otherGroup]))
        && alone(net, otherNet)
        && oneReach.fast[net] == otherReach.fast[otherNet]
        && oneReach.lineOf[net] == otherReach.lineOf[otherNet]
        && oneReach.holds[net] == otherReach.holds[otherNet]
        && oneReach.clockwork.nets[net] == otherReach.clockwork.nets[otherNet]
        && oneReach.clockwork.visible[net] == otherReach.clockwork.visible[otherNet];
  }

  /** The same of nets that elements couple. */
  private boolean alike(Coupling group, Coupling otherGroup) {
    boolean alike =
        sameNets(group.nets(), otherGroup.nets())
            && Arrays.equals(group.ohms(), otherGroup.ohms())
            && Arrays.equals(group.diode(), otherGroup.diode())
            && Arrays.equals(group.control(), otherGroup.control());
    for (int i = 0; alike && i < group.nets().length; i++) {
      alike = alone(group.nets()[i], otherGroup.nets()[i]);
    }
    return alike
        && endsAlike(group.from(), otherGroup.from())
        && endsAlike(group.to(), otherGroup.to());
  }

  private boolean endsAlike(int[] ends, int[] others) {
    boolean alike = ends.length == others.length;
    for (int e = 0; alike && e < ends.length; e++) {
      alike = (ends[e] < 0) == (others[e] < 0);
      // An end at a fixed voltage is written as -1 less its net.
      alike &=
          ends[e] >= 0
              ? ends[e] == others[e]
              : alike && one.sourceMv[-1 - ends[e]] == other.sourceMv[-1 - others[e]];
    }
    return alike;
  }

  /** The same of a net by itself, whatever is coupled to it. */
  private boolean alone(int net, int otherNet) {
    return one.source[net] == other.source[otherNet]
        && one.sourceMv[net] == other.sourceMv[otherNet]
        && Arrays.equals(one.drivers[net], other.drivers[otherNet])
        && Arrays.equals(one.receivers[net], other.receivers[otherNet])
        && Arrays.equals(one.loadMv[net], other.loadMv[otherNet])
        && Arrays.equals(one.loadOhm[net], other.loadOhm[otherNet])
        && Arrays.equals(one.loadSwitch[net], other.loadSwitch[otherNet])
        && Arrays.stream(one.loadSwitch[net]).allMatch(gate -> gate < 0)
        && one.lsInputs[net] == other.lsInputs[otherNet]
        && one.deadLs[net] == other.deadLs[otherNet];
  }
}
