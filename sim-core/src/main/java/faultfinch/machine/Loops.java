package faultfinch.machine;

/**
 * Whether outputs that actually drive feed themselves: then the levels depend on the phase before.
 * An output that lets go follows only what enables it. Over a slow net none feeds itself: an access
 * that moves one is played. Nor does one whose own net cannot move any more.
 */
final class Loops {
  private final Circuit c;
  private final Reach reach;
  private final Latched latched;

  Loops(Levels levels, Reach reach) {
    this.c = levels.circuit;
    this.reach = reach;
    this.latched = new Latched(levels);
  }

  /** Whether a loop stands otherwise than when it was last told what it is. */
  boolean moved() {
    return latched.moved();
  }

  boolean closed(long[] driven) {
    int n = c.nodePart.length;
    byte[] seen = new byte[n];
    for (int node = 0; node < n; node++) {
      if (c.looped[node] && closed(node, driven, seen)) {
        return true;
      }
    }
    return false;
  }

  private boolean closed(int node, long[] driven, byte[] seen) {
    if (seen[node] != 0) {
      return seen[node] == 1;
    }
    seen[node] = 1;
    if (c.nodeGroup[node] >= 0) {
      return true;
    }
    int p = c.nodePart[node];
    boolean drives = (driven[p] & c.nodePins[node]) != 0;
    for (int other = c.islandFrom[node]; other < c.islandTo[node]; other++) {
      long on = drives || c.nodeEnables[node] == 0 ? c.nodeFollows[node] : c.nodeEnables[node];
      if (feeds(other, p, on & ~latched.of(node)) && closed(other, driven, seen)) {
        return true;
      }
    }
    seen[node] = 2;
    return false;
  }

  private boolean feeds(int node, int part, long pins) {
    for (long left = pins; left != 0; left &= left - 1) {
      int net = c.netOf[c.pinBase[part] + Long.numberOfTrailingZeros(left)];
      int[] all = c.groupOf[net] < 0 ? new int[] {net} : c.groups[c.groupOf[net]].nets();
      for (int reached : all) {
        if (!reach.fast[reached] && !reach.clockwork.nets[reached]) {
          continue;
        }
        for (int g : c.drivers[reached]) {
          if (c.partOf[g] == c.nodePart[node] && (c.nodePins[node] >>> c.bitOf[g] & 1) != 0) {
            return true;
          }
        }
      }
    }
    return false;
  }
}
