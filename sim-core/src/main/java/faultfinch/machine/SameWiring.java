package faultfinch.machine;

import java.util.Arrays;

/** Two wirings of the same parts held against each other, whatever is done on them. */
final class SameWiring {
  private final Circuit was;
  private final Circuit is;

  /** By net of the other wiring the net that its pins were on, or -1 if on several. */
  private final int[] netWas;

  private final byte[] same;

  SameWiring(Circuit was, Circuit is) {
    this.was = was;
    this.is = is;
    netWas = new int[is.netCount];
    same = new byte[is.netCount];
    Arrays.fill(netWas, -2);
    for (int g = 0; g < is.netOf.length; g++) {
      int net = is.netOf[g];
      netWas[net] = netWas[net] == -2 || netWas[net] == was.netOf[g] ? was.netOf[g] : -1;
    }
  }

  /** The net that the pins of a net were on, or -1 if they were on several. */
  int netWas(int net) {
    return netWas[net];
  }

  /**
   * Whether they differ in nothing but what hangs on pins of parts that are out: then nothing that
   * is done on them can come out otherwise.
   */
  boolean wholly() {
    if (!partsAlike() || !orderAlike() || !toldAlike()) {
      return false;
    }
    boolean[] seen = new boolean[is.netCount];
    int[] netIs = new int[was.netCount];
    Arrays.fill(netIs, -1);
    for (int p = 0; p < is.parts.length; p++) {
      boolean out = is.harm.absent.contains(is.refs[p]);
      for (int g = is.pinBase[p]; !out && g < is.netOf.length && is.partOf[g] == p; g++) {
        int net = is.netOf[g];
        int before = was.netOf[g];
        if (netIs[before] != -1 && netIs[before] != net || !seen[net] && !same(net)) {
          return false;
        }
        netIs[before] = net;
        seen[net] = true;
      }
    }
    return true;
  }

  private boolean toldAlike() {
    return Arrays.equals(was.readMask, is.readMask)
        && Arrays.equals(was.readBits, is.readBits)
        && Arrays.equals(was.forceMask, is.forceMask)
        && Arrays.equals(was.forceBits, is.forceBits);
  }

  /** Whether the parts live alike, drive alike and have the same thresholds. */
  boolean partsAlike() {
    return Arrays.equals(was.alive, is.alive)
        && Arrays.equals(was.powered, is.powered)
        && Arrays.equals(was.groundOpen, is.groundOpen)
        && Arrays.equals(was.caseTenths, is.caseTenths)
        && Arrays.equals(was.lowMv, is.lowMv)
        && Arrays.equals(was.lowOhm, is.lowOhm)
        && Arrays.equals(was.highMv, is.highMv)
        && Arrays.equals(was.highOhm, is.highOhm)
        && Arrays.equals(was.collector, is.collector)
        && Arrays.equals(was.threshold, is.threshold)
        && Arrays.equals(was.railSwitches, is.railSwitches)
        && was.harm.absent.equals(is.harm.absent)
        && was.harm.dead.equals(is.harm.dead)
        && was.railUp == is.railUp;
  }

  /** Whether outputs follow each other as they did, and no switch joins nets. */
  boolean orderAlike() {
    return Arrays.equals(was.nodePart, is.nodePart)
        && Arrays.equals(was.nodePins, is.nodePins)
        && Arrays.equals(was.nodeFollows, is.nodeFollows)
        && Arrays.equals(was.nodeEnables, is.nodeEnables)
        && Arrays.equals(was.islandFrom, is.islandFrom)
        && Arrays.equals(was.islandTo, is.islandTo)
        && Arrays.equals(was.sweepTo, is.sweepTo)
        && Arrays.equals(was.looped, is.looped)
        && Arrays.deepEquals(was.followers, is.followers)
        && Arrays.stream(was.nodeGroup).allMatch(g -> g < 0)
        && Arrays.stream(is.nodeGroup).allMatch(g -> g < 0);
  }

  /** Whether all that makes the volts of a net is as it was. */
  boolean same(int net) {
    if (same[net] == 0) {
      same[net] = (byte) (compare(net) ? 1 : 2);
    }
    return same[net] == 1;
  }

  private boolean compare(int net) {
    int before = netWas[net];
    if (before < 0 || !alone(before, net)) {
      return false;
    }
    boolean coupled = is.groupOf[net] >= 0;
    if (coupled != was.groupOf[before] >= 0) {
      return false;
    }
    return !coupled || coupled(was.groups[was.groupOf[before]], is.groups[is.groupOf[net]]);
  }

  /** The same of a net by itself, whatever is coupled to it. */
  private boolean alone(int before, int net) {
    return was.source[before] == is.source[net]
        && was.sourceMv[before] == is.sourceMv[net]
        && Arrays.equals(was.drivers[before], is.drivers[net])
        && Arrays.equals(was.loadMv[before], is.loadMv[net])
        && Arrays.equals(was.loadOhm[before], is.loadOhm[net])
        && Arrays.equals(was.loadSwitch[before], is.loadSwitch[net])
        && was.lsInputs[before] == is.lsInputs[net]
        && was.deadLs[before] == is.deadLs[net]
        && (is.source[net] != Circuit.NO_SOURCE
            || Ramp.farads(was, before) == Ramp.farads(is, net));
  }

  private boolean coupled(Coupling before, Coupling now) {
    boolean alike =
        before.nets().length == now.nets().length
            && Arrays.equals(before.ohms(), now.ohms())
            && Arrays.equals(before.diode(), now.diode())
            && Arrays.equals(before.control(), now.control())
            && Arrays.stream(now.control()).allMatch(pin -> pin < 0);
    for (int i = 0; alike && i < now.nets().length; i++) {
      alike = netWas[now.nets()[i]] == before.nets()[i] && alone(before.nets()[i], now.nets()[i]);
    }
    return alike && endsAlike(before.from(), now.from()) && endsAlike(before.to(), now.to());
  }

  private boolean endsAlike(int[] before, int[] now) {
    boolean alike = before.length == now.length;
    for (int e = 0; alike && e < now.length; e++) {
      if (before[e] >= 0 || now[e] >= 0) {
        alike = before[e] == now[e];
      } else {
        int one = -1 - before[e];
        int other = -1 - now[e];
        alike = was.source[one] == is.source[other] && was.sourceMv[one] == is.sourceMv[other];
      }
    }
    return alike;
  }
}
