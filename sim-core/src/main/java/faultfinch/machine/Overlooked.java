package faultfinch.machine;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Sees whether the processor does anything that a picture depends on while nobody looks at the
 * picture: stores another byte where one will be fetched, or moves a slow level or a register of
 * the picture half.
 */
final class Overlooked {
  private record Fetches(long until, int[] cells, byte[] found) {}

  private final Levels levels;
  private final int[] slow;
  private final int[] slowMv;
  private final Deque<Fetches> due = new ArrayDeque<>();
  private boolean spoilt;

  Overlooked(Levels levels, int[] slow) {
    this.levels = levels;
    this.slow = slow;
    slowMv = new int[slow.length];
    for (int i = 0; i < slow.length; i++) {
      slowMv[i] = levels.mv[slow[i]];
    }
  }

  /** These cells are fetched before a cycle, and are believed to hold this. */
  void expect(long until, int[] cells, byte[] found) {
    due.add(new Fetches(until, cells, found));
  }

  /** What is fetched before this cycle has been. */
  void passed(long cycle) {
    while (!due.isEmpty() && due.peek().until() <= cycle) {
      due.remove();
    }
  }

  /** The processor has stored something, or a slow level may have moved. */
  void look() {
    for (int i = 0; i < slow.length; i++) {
      spoilt |= levels.mv[slow[i]] != slowMv[i];
    }
    for (Fetches fetches : due) {
      for (int i = 0; i < fetches.found.length && !spoilt; i++) {
        int p = fetches.cells[2 * i];
        spoilt = (byte) levels.pins[p].found(fetches.cells[2 * i + 1]) != fetches.found[i];
      }
    }
  }

  /** The picture half does not go its known way. */
  void spoil() {
    spoilt = true;
  }

  boolean spoilt() {
    return spoilt;
  }
}
