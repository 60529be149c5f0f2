package faultfinch.diagnosis;

import faultfinch.machine.CycleTap;
import java.util.Arrays;
import java.util.Optional;

/** Every bus cycle a processor has made, in one word each. */
final class Chronicle implements CycleTap {
  private static final int ASKS_BITS = 26;
  private static final long ASKS = (1L << ASKS_BITS) - 1;
  private static final int READS = 1 << 24;
  private static final int FETCHES = 1 << 25;

  private long[] words = new long[1 << 16];
  private int size;

  @Override
  public void cycle(long cycle, int address, int value, boolean reads, boolean sync, long control) {
    if (size == words.length) {
      words = Arrays.copyOf(words, 2 * size);
    }
    int asks = address | value << 16 | (reads ? READS : 0) | (sync ? FETCHES : 0);
    words[size++] = cycle << ASKS_BITS | asks;
  }

  int size() {
    return size;
  }

  BusCycle at(int index) {
    long word = words[index];
    return new BusCycle(
        word >>> ASKS_BITS,
        (int) word & 0xFFFF,
        (int) word >>> 16 & 0xFF,
        (word & READS) != 0,
        (word & FETCHES) != 0);
  }

  /** Index of the first cycle from here on that is not as another's; the end of the shorter. */
  int differs(Chronicle other, int from) {
    int both = Math.min(size, other.size);
    int i = from;
    while (i < both && (words[i] & ASKS) == (other.words[i] & ASKS)) {
      i++;
    }
    return i;
  }

  /** Index of the first cycle from here on that is not as another's and at the same time. */
  int alike(Chronicle other, int from) {
    int both = Math.min(size, other.size);
    int i = from;
    while (i < both && words[i] == other.words[i]) {
      i++;
    }
    return i;
  }

  /** Index of the first fetch from here on; -1 if there is none. */
  int fetchFrom(int from) {
    for (int i = Math.max(0, from); i < size; i++) {
      if ((words[i] & FETCHES) != 0) {
        return i;
      }
    }
    return -1;
  }

  /** The fetch of the instruction that a cycle belongs to. */
  Optional<BusCycle> instruction(int index) {
    for (int i = Math.min(index, size - 1); i >= 0; i--) {
      if ((words[i] & FETCHES) != 0) {
        return Optional.of(at(i));
      }
    }
    return Optional.empty();
  }

  /** Index of the last cycle not later than this one; -1 if there is none. */
  int lastBy(long cycle) {
    int low = 0;
    int high = size;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (words[middle] >>> ASKS_BITS <= cycle) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low - 1;
  }
}
