package faultfinch.bench;

import faultfinch.board.Board;
import faultfinch.symptom.Watching;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * When instruments look at a running board: in windows of 128 cycles around eight steps of the
 * firmware, spread over all that a healthy board reaches. The same times hold for every fault.
 *
 * @param starts of the windows, nanoseconds since power-on
 * @param idle start of the longer window in which the meter comes to rest, before any key
 */
record Schedule(List<Long> starts, long idle) {
  /** Cycles of one window. */
  static final int CYCLES = 128;

  /** Cycles of the window of the meter. */
  static final int IDLE_CYCLES = 512;

  private static final long MILLISECOND = 1_000_000;

  private static final int WINDOWS = 8;

  /** A step is in the middle of its window: what led to it counts as much as what follows. */
  private static final int BEFORE = CYCLES / 2;

  /** Of the healthy board that others are held against. */
  static final long SEED = 0;

  Schedule {
    starts = List.copyOf(starts);
  }

  /** When the window of the meter begins. */
  static long idle(Board board) {
    return Watching.readyMilliseconds(board) * MILLISECOND
        - IDLE_CYCLES * (long) board.cycleNanoseconds()
        - MILLISECOND;
  }

  /**
   * The times for a board.
   *
   * @param reached when a healthy one of {@link #SEED} reaches the steps of its firmware
   */
  static Schedule of(Board board, Map<String, Long> reached) {
    List<Long> steps = reached.values().stream().sorted().distinct().toList();
    List<Long> starts = new ArrayList<>();
    if (steps.isEmpty()) {
      long ready = Watching.readyMilliseconds(board) * MILLISECOND;
      for (int i = 1; i <= WINDOWS; i++) {
        starts.add(ready * i / WINDOWS);
      }
    } else {
      long lead = (long) BEFORE * board.cycleNanoseconds();
      for (int i = 0; i < WINDOWS; i++) {
        long step = steps.get((i * (steps.size() - 1) + (WINDOWS - 1) / 2) / (WINDOWS - 1));
        starts.add(Math.max(1, step - lead));
      }
    }
    return new Schedule(starts.stream().distinct().toList(), idle(board));
  }
}
