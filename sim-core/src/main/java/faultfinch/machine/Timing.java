package faultfinch.machine;

import faultfinch.part.RowMemory;
import faultfinch.signal.Phase;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Keeps what slow parts would have driven in the phases before, and gives the sampler of a phase
 * what has arrived by its end; a memory that races keeps the address of its row as its column.
 *
 * <p>An output that takes longer than the phase shows what its inputs were worth a phase earlier,
 * or as many as its delay spans. Counted are the phases of the board, longer and shorter with its
 * clock.
 */
final class Timing {
  private static final int KEPT = 16;
  private static final Phase[] PHASES = Phase.values();

  private final Levels levels;
  private final Delays delays;
  private final boolean[] plays;

  /** The slow parts, and those that race. */
  private final int[] slow;

  private final int[] racing;

  /** Per slow part and phase, latest first: the pins it drove, and how. */
  private final long[][] driven;

  private final long[][] bits;

  /** Phases by which each slow part is behind now. */
  private final int[] behind;

  /** Per racing memory: its pins in the last row phase, and whether it takes them now. */
  private final long[] row;

  private final boolean[] early;

  Timing(Levels levels, Delays delays) {
    int n = levels.circuit.parts.length;
    this.levels = levels;
    this.delays = delays;
    plays = new boolean[n];
    driven = new long[n][];
    bits = new long[n][];
    behind = new int[n];
    row = new long[n];
    early = new boolean[n];
    for (int p = 0; p < n; p++) {
      plays[p] = levels.circuit.alive[p] && (delays.slow(p) || delays.races.containsKey(p));
      driven[p] = new long[KEPT];
      bits[p] = new long[KEPT];
    }
    slow = IntStream.range(0, n).filter(p -> plays[p] && delays.slow(p)).toArray();
    racing = IntStream.range(0, n).filter(p -> plays[p] && delays.races.containsKey(p)).toArray();
  }

  /** Whether settle and commit of a part go through here. */
  boolean plays(int part) {
    return plays[part];
  }

  /** A phase begins: what was driven is now a phase older. */
  void begin(Phase phase) {
    for (int p : slow) {
      System.arraycopy(driven[p], 0, driven[p], 1, KEPT - 1);
      System.arraycopy(bits[p], 0, bits[p], 1, KEPT - 1);
      behind[p] = behind(p, phase);
      levels.touch(p);
    }
    for (int p : racing) {
      boolean rows = phase == Phase.V_ROW || phase == Phase.C_ROW;
      if (phase == Phase.V_COL || phase == Phase.C_COL) {
        row[p] = levels.pins[p].in;
        early[p] = tooSoon(delays.races.get(p), p, phase);
      }
      early[p] &= !rows;
      levels.touch(p);
    }
  }

  private int behind(int p, Phase phase) {
    double stretch = levels.cycleNanoseconds() / delays.cycleNanoseconds;
    int left = 0;
    for (int back = 0; back < KEPT - 1; back++) {
      int at = Math.floorMod(phase.ordinal() - back, PHASES.length);
      left += (int) (delays.phaseTenths[at] * stretch);
      if (!tooSoon(left - delays.late[p], p, phase)) {
        return back;
      }
    }
    return KEPT - 1;
  }

  /** Whether a slack is no slack; near nothing chance says. */
  private boolean tooSoon(int slack, int p, Phase phase) {
    if (Math.abs(slack) > Delays.UNSURE) {
      return slack < 0;
    }
    long part = Chance.of(levels.circuit.refs[p]);
    return Chance.below(2, delays.seed, part, delays.powerOn, levels.now, phase.ordinal()) == 0;
  }

  /** Settles a part and lets it drive what has arrived. */
  void settle(int p, PartPins view) {
    long in = view.in;
    taken(p, view);
    levels.circuit.parts[p].settle(view);
    view.in = in;
    if (delays.slow(p)) {
      driven[p][0] = view.driven;
      bits[p][0] = view.bits;
      view.driven = driven[p][behind[p]];
      view.bits = bits[p][behind[p]];
    }
  }

  /** Commits a part on what it took. */
  void commit(int p, PartPins view, Phase phase) {
    long in = view.in;
    taken(p, view);
    levels.circuit.parts[p].commit(view, phase);
    view.in = in;
  }

  private void taken(int p, PartPins view) {
    if (early[p] && levels.circuit.parts[p] instanceof RowMemory memory) {
      long address = memory.address().mask();
      view.in = view.in & ~address | row[p] & address;
    }
  }

  /** Stands where the timing of the same parts stands. */
  void continueFrom(Timing other) {
    for (int p = 0; p < plays.length; p++) {
      driven[p] = Arrays.copyOf(other.driven[p], KEPT);
      bits[p] = Arrays.copyOf(other.bits[p], KEPT);
      behind[p] = other.behind[p];
      row[p] = other.row[p];
      early[p] = other.early[p];
    }
  }
}
