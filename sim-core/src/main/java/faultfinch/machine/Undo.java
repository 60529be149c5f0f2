package faultfinch.machine;

import java.util.Arrays;

/**
 * What a trial changes of a store, to be put back. Words are few and kept whole; cells are a
 * hundred thousand, of which a cycle writes some: of these is noted what they held.
 */
final class Undo {
  private static final int FIRST_ROOM = 64;

  private final long[] words;
  private final byte[] cells;
  private final long[] keptWords;
  private int[] written = new int[FIRST_ROOM];
  private byte[] held = new byte[FIRST_ROOM];
  private int count;
  private boolean noting;

  Undo(long[] words, byte[] cells) {
    this.words = words;
    this.cells = cells;
    this.keptWords = new long[words.length];
  }

  void begin() {
    System.arraycopy(words, 0, keptWords, 0, words.length);
    count = 0;
    noting = true;
  }

  /** This cell is about to be written. */
  void note(int cell) {
    if (!noting) {
      return;
    }
    if (count == written.length) {
      written = Arrays.copyOf(written, 2 * count);
      held = Arrays.copyOf(held, 2 * count);
    }
    written[count] = cell;
    held[count++] = cells[cell];
  }

  void back() {
    System.arraycopy(keptWords, 0, words, 0, words.length);
    // The last first: a cell written twice ends as it was at the beginning.
    while (count > 0) {
      count--;
      cells[written[count]] = held[count];
    }
    noting = false;
  }
}
