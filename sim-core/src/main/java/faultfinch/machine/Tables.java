package faultfinch.machine;

import java.util.Arrays;

/** What is known of every address and direction while the slow levels stay as they are. */
final class Tables {
  private static final int PAGE = 0xFF;
  private static final int ADDRESSES = 0x10000;

  final int[] readAt = new int[ADDRESSES];
  final int[] fetchAt = new int[ADDRESSES];
  final int[] writeAt = new int[ADDRESSES];
  private final Shortcut[] reads = new Shortcut[ADDRESSES];
  private final Shortcut[] writes = new Shortcut[ADDRESSES];
  private final boolean[] fetched = new boolean[ADDRESSES];

  Tables() {
    Arrays.fill(readAt, -1);
    Arrays.fill(fetchAt, -1);
    Arrays.fill(writeAt, -1);
  }

  /** What is known, or null while nothing is. */
  Shortcut find(int address, boolean read, boolean sync) {
    if (sync && !fetched[address]) {
      return null;
    }
    return read ? reads[address] : writes[address];
  }

  /** Keeps what holds for a whole page; cells follow the address, but for those that are stuck. */
  void keepPage(int address, boolean read, Shortcut shortcut, Shortcuts shortcuts, int[] marked) {
    int page = address & ~PAGE;
    int first = shortcut.packed() - (address & PAGE);
    for (int low = 0; low <= PAGE; low++) {
      int at = page | low;
      int packed = first + low;
      boolean known = (read ? readAt : writeAt)[at] >= 0;
      if (!known && !shortcuts.stuck(packed & FastBus.CELL_MASK)) {
        if (read) {
          readAt[at] = packed;
          fetchAt[at] = Arrays.binarySearch(marked, at) >= 0 ? -1 : packed;
        } else {
          writeAt[at] = packed;
        }
      }
    }
  }

  void keep(int address, boolean read, boolean sync, Shortcut shortcut) {
    if (!read) {
      writes[address] = shortcut;
      writeAt[address] = shortcut.packed();
    } else {
      reads[address] = shortcut;
      readAt[address] = shortcut.packed();
    }
    if (sync) {
      fetched[address] = true;
      fetchAt[address] = shortcut.packed();
    }
  }
}
