package faultfinch.bench;

import faultfinch.board.Board;
import faultfinch.symptom.Watching;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * When instruments look at a running board: in windows around eight steps of the firmware, spread
 * over all that a healthy board reaches, and where it does what it seldom does. The same times hold
 * for every fault.
 *
 * @param windows what each is for, by its start in nanoseconds since power-on; one of them is the
 *     meter's, before any key
 */
record Schedule(SortedMap<Long, Window> windows) {
  private static final long MILLISECOND = 1_000_000;

  private static final int WINDOWS = 8;

  /** A step is in the middle of its window: what led to it counts as much as what follows. */
  private static final int BEFORE = Window.STEP.cycles() / 2;

  /** Of the healthy board that others are held against. */
  static final long SEED = 0;

  Schedule {
    windows = Collections.unmodifiableSortedMap(new TreeMap<>(windows));
  }

  /** When the window of the meter begins. */
  static long idle(Board board) {
    return Watching.readyMilliseconds(board) * MILLISECOND
        - Window.IDLE.cycles() * (long) board.cycleNanoseconds()
        - MILLISECOND;
  }

  /**
   * The times for a board.
   *
   * @param reached when a healthy one of {@link #SEED} reaches the steps of its firmware
   * @param seldom when it does what it seldom does
   */
  static Schedule of(Board board, Map<String, Long> reached, List<Long> seldom) {
    List<Long> steps = reached.values().stream().sorted().distinct().toList();
    SortedMap<Long, Window> windows = new TreeMap<>();
    seldom.forEach(at -> windows.put(at, Window.SELDOM));
    if (steps.isEmpty()) {
      long ready = Watching.readyMilliseconds(board) * MILLISECOND;
      for (int i = 1; i <= WINDOWS; i++) {
        windows.put(ready * i / WINDOWS, Window.STEP);
      }
    } else {
      long lead = (long) BEFORE * board.cycleNanoseconds();
      for (int i = 0; i < WINDOWS; i++) {
        long step = steps.get((i * (steps.size() - 1) + (WINDOWS - 1) / 2) / (WINDOWS - 1));
        windows.put(Math.max(1, step - lead), Window.STEP);
      }
    }
    windows.put(idle(board), Window.IDLE);
    return new Schedule(windows);
  }
}
