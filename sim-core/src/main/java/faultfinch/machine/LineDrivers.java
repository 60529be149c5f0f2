package faultfinch.machine;

import java.util.stream.IntStream;

/**
 * Who drives the data lines in an access, and is heard: beyond a buffer that is shut, a memory may
 * drive lines on which nobody but the clockwork reads.
 */
final class LineDrivers {
  private static final int MANY = -2;

  private final Circuit c;
  private final Actors actors;
  private final Clockwork clockwork;
  private final long[] lineDrivers;

  LineDrivers(Levels levels, Reach reach, long[] lineDrivers) {
    this.c = levels.circuit;
    this.actors = new Actors(levels);
    this.clockwork = reach.clockwork;
    this.lineDrivers = lineDrivers;
  }

  /** The parts that are heard on data lines; {MANY, ...} if two of them drive one. */
  int[] of(Trial t) {
    int[] drivers = IntStream.range(0, t.driven.length).filter(p -> heard(t, p)).toArray();
    int[] onLine = new int[c.netCount];
    for (int p : drivers) {
      for (long left = driving(t, p); left != 0; left &= left - 1) {
        int net = net(p, left);
        if (onLine[net]++ > 0) {
          return new int[] {MANY, MANY};
        }
      }
    }
    return drivers;
  }

  /** Nets of data lines on which somebody drives and is not heard. */
  boolean[] unheard(Trial t) {
    boolean[] unheard = new boolean[c.netCount];
    for (int p = 0; p < t.driven.length; p++) {
      for (long left = heard(t, p) ? 0 : driving(t, p); left != 0; left &= left - 1) {
        unheard[net(p, left)] = true;
      }
    }
    return unheard;
  }

  private boolean heard(Trial t, int p) {
    for (long left = driving(t, p); left != 0; left &= left - 1) {
      if (actors.outside(clockwork, net(p, left), t)) {
        return true;
      }
    }
    return false;
  }

  private int net(int p, long pins) {
    return c.netOf[c.pinBase[p] + Long.numberOfTrailingZeros(pins)];
  }

  // A pin that drives whatever the part wants says nothing of its own.
  long driving(Trial t, int p) {
    return t.driven[p] & lineDrivers[p] & ~c.forceMask[p];
  }
}
