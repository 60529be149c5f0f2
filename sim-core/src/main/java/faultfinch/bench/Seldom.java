package faultfinch.bench;

import faultfinch.board.Board;
import faultfinch.machine.Machine;
import java.util.ArrayList;
import java.util.List;

/**
 * When a healthy board that waits at its prompt does what it does but once a picture, such as
 * looking for keys: a probe holds on to a pulse however seldom it comes, and nobody who is at a
 * bench takes it off before a fiftieth of a second is over.
 *
 * <p>Not modelled: what a board does less often than that by itself, and what a faulty one does at
 * other times.
 */
final class Seldom {
  private static final long MILLISECOND = 1_000_000;

  /** As long as a picture, and as a turn of the mains. */
  private static final long ROUND_NS = 20 * MILLISECOND;

  /** The set is looked at just before the meter; this is over by then. */
  private static final long BEFORE_THE_METER_NS = 70 * MILLISECOND;

  /** By window what each net was seen to do, in the bits of {@link Levels}. */
  private final List<int[]> seen = new ArrayList<>();

  private final List<Long> starts = new ArrayList<>();

  /** When to call {@link #round}, in nanoseconds since power-on. */
  static long from(Board board) {
    return Math.max(1, Schedule.idle(board) - BEFORE_THE_METER_NS);
  }

  /** Plays a round of windows. */
  void round(Machine healthy) {
    long end = healthy.nanoseconds() + ROUND_NS;
    while (healthy.nanoseconds() < end) {
      starts.add(healthy.nanoseconds());
      seen.add(window(healthy, Window.SELDOM.cycles()));
    }
  }

  /**
   * The fewest windows of that round, as they are found one by one, that show whatever was seen in
   * it and is not seen while the meter comes to rest.
   *
   * @param healthy the same board at the meter's window, which is played
   */
  List<Long> starts(Machine healthy) {
    int[] known = window(healthy, Window.IDLE.cycles());
    List<Long> chosen = new ArrayList<>();
    for (int best = best(known); gain(best, known) > 0; best = best(known)) {
      chosen.add(starts.get(best));
      int[] more = seen.get(best);
      for (int net = 0; net < known.length; net++) {
        known[net] |= more[net];
      }
    }
    return chosen;
  }

  private int best(int[] known) {
    int best = 0;
    for (int at = 1; at < seen.size(); at++) {
      best = gain(at, known) > gain(best, known) ? at : best;
    }
    return best;
  }

  private int gain(int at, int[] known) {
    int gain = 0;
    for (int net = 0; net < known.length; net++) {
      gain += Integer.bitCount(seen.get(at)[net] & ~known[net]);
    }
    return gain;
  }

  private static int[] window(Machine machine, int cycles) {
    int[] seen = new int[machine.points()];
    machine.play(
        cycles,
        (phase, nanoseconds) -> {
          for (int net = 0; net < seen.length; net++) {
            seen[net] |= Levels.flag(machine.carries(net));
          }
        });
    return seen;
  }
}
