package faultfinch.diagnosis;

import faultfinch.machine.CycleTap;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** Every bus cycle a processor has made, in one word each. */
final class Chronicle implements CycleTap {
  private static final int ASKS_BITS = 26;
  private static final long ASKS = (1L << ASKS_BITS) - 1;
  private static final int READS = 1 << 24;
  private static final int FETCHES = 1 << 25;

  private static final int RESET_VECTOR = 0xFFFC;

  /** From the fetch that a reset makes nothing of to the first byte of its vector. */
  private static final int RESET_CYCLES = 5;

  /** No instruction is longer; it is cheaper to look on for a while than to begin anew. */
  private static final int INSTRUCTION_CYCLES = 8;

  private static final int NEAR_CYCLES = 48;

  private static final int CALL = 0x20;

  /** Take back from the stack: flags, a, return, return from an interrupt. */
  private static final BitSet TAKES = new BitSet();

  static {
    TAKES.set(0x28);
    TAKES.set(0x68);
    TAKES.set(0x60);
    TAKES.set(0x40);
  }

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

  /**
   * Index of the first cycle that is not as another's, whenever it comes; the end of the shorter.
   * Bytes that neither processor makes anything of do not count.
   */
  int differs(Chronicle other) {
    int both = Math.min(size, other.size);
    for (int i = 0; i < both; i++) {
      boolean same =
          (words[i] & ASKS) == (other.words[i] & ASKS)
              || at(i).asksAs(other.at(i)) && unused(i) && other.unused(i);
      if (!same) {
        return i;
      }
    }
    return both;
  }

  /**
   * Whether a processor of this kind makes nothing of a byte it reads: while it comes out of reset;
   * on the stack as it calls or begins to take back; at the place where it is about to store, or
   * would have found what lies a page higher.
   */
  private boolean unused(int index) {
    BusCycle read = at(index);
    int from = index;
    while (from > 0 && (words[from] & FETCHES) == 0) {
      from--;
    }
    if (vector(from + RESET_CYCLES) && index < from + RESET_CYCLES) {
      return true;
    }
    if (!read.reads() || read.fetches()) {
      return false;
    }
    BusCycle opcode = at(from);
    boolean stack = read.address() >>> 8 == 1;
    if (stack && (opcode.value() == CALL || TAKES.get(opcode.value()))) {
      return index == from + 2;
    }
    if (index + 2 >= size || index - from < 2) {
      return false;
    }
    BusCycle next = at(index + 1);
    boolean beside = (next.address() & 0xFF) == (read.address() & 0xFF) && !next.fetches();
    boolean stores = !next.reads() && next.address() == read.address() && at(index + 2).fetches();
    boolean lower = next.reads() && next.address() == ((read.address() + 0x100) & 0xFFFF);
    return beside && (stores || lower);
  }

  /** Whether a cycle reads where a reset leads to. */
  private boolean vector(int index) {
    return index < size && at(index).address() == RESET_VECTOR && at(index).reads();
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

  /**
   * Spans of cycles in which instructions are run for the first time, each by its first cycle and
   * the one after its last, in order.
   */
  List<long[]> firsts() {
    List<long[]> spans = new ArrayList<>();
    BitSet run = new BitSet();
    for (int i = 0; i < size; i++) {
      int address = (int) words[i] & 0xFFFF;
      if ((words[i] & FETCHES) != 0 && !run.get(address)) {
        run.set(address);
        long cycle = words[i] >>> ASKS_BITS;
        long[] last = spans.isEmpty() ? new long[2] : spans.get(spans.size() - 1);
        if (!spans.isEmpty() && cycle <= last[1] + NEAR_CYCLES) {
          last[1] = cycle + INSTRUCTION_CYCLES;
        } else {
          spans.add(new long[] {cycle, cycle + INSTRUCTION_CYCLES});
        }
      }
    }
    return spans;
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
