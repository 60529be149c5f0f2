package faultfinch.machine;

import java.util.ArrayList;
import java.util.List;

/**
 * When, before the end of a run, what takes data for a picture takes last. A latch whose clock the
 * counters of a picture hold off in its dark parts keeps what it took before; to stand right at the
 * end, it has to see those cycles played, and those alone.
 */
final class Takings {
  /** Cycles played before a clock is held off or let through: some slots of any picture of ours. */
  private static final int BEFORE = 24;

  /** A clock that was let through or held off so lately is so in what is played at the end. */
  private static final int NEAR = 16;

  private static final int WINDOW = 64;
  private static final int WIDER = 2;

  /** No dark part of a picture lasts so many cycles. */
  private static final int LONGEST = 65_536;

  /** Outputs of a counting part that together have a say in the clock of a taking part. */
  record Gate(int counter, long outputs) {}

  private final List<Gate> gates;
  private Orbit plannedFor;
  private long plannedAt;
  private long plannedEnd = -1;
  private long from;
  private long to;

  Takings(List<Gate> gates) {
    this.gates = gates;
  }

  /** What has a say in the clocks of taking parts. */
  static List<Gate> gates(Clockwork clockwork) {
    List<Gate> gates = new ArrayList<>();
    int[] counters = clockwork.counters();
    for (int k = 0; k < counters.length; k++) {
      for (long outputs : clockwork.gating(counters[k])) {
        gates.add(new Gate(k, outputs));
      }
    }
    return gates;
  }

  /**
   * The cycle from which on some have to be played, which may be past; the end of time if none has
   * to any more, or the end of the run is too far to tell.
   *
   * @param end of the run
   */
  long from(Orbit orbit, long cycle, long end) {
    if (gates.isEmpty() || cycle < end - LONGEST || cycle >= end) {
      return Long.MAX_VALUE;
    }
    if (orbit != plannedFor || orbit.turns() != plannedAt || end != plannedEnd) {
      plannedFor = orbit;
      plannedAt = orbit.turns();
      plannedEnd = end;
      plan(orbit, cycle, end);
    }
    return cycle < to ? from : Long.MAX_VALUE;
  }

  /** The cycle at which that has to be asked, if it is still too early. */
  long asksAt(long cycle, long end) {
    return gates.isEmpty() || cycle >= end - LONGEST ? Long.MAX_VALUE : end - LONGEST;
  }

  private void plan(Orbit orbit, long cycle, long end) {
    from = Long.MAX_VALUE;
    to = 0;
    for (Gate gate : gates) {
      long move = lastMove(orbit, gate, cycle, end);
      if (move >= 0 && move < end - NEAR) {
        from = Math.min(from, move - BEFORE);
        to = Math.max(to, move + 1);
      }
    }
  }

  private static long lastMove(Orbit orbit, Gate gate, long cycle, long end) {
    for (long window = WINDOW; ; window *= WIDER) {
      long start = Math.max(cycle, end - window);
      long move = orbit.lastMove(gate.counter, gate.outputs, start, end);
      if (move >= 0 || start == cycle || window > LONGEST) {
        return move;
      }
    }
  }
}
