package faultfinch.machine;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What is known of every address and direction while the slow levels stay as they are. */
final class Tables {
  private static final int ADDRESSES = 0x10000;
  private static final int PAGE = 0xFF;

  /** For each address the packed cell and mask class of a read, or -1 for the slower way. */
  final int[] readAt = new int[ADDRESSES];

  final int[] writeAt = new int[ADDRESSES];
  private final Map<Integer, Shortcut> reads = new HashMap<>();
  private final Map<Integer, Shortcut> writes = new HashMap<>();

  Tables() {
    Arrays.fill(readAt, -1);
    Arrays.fill(writeAt, -1);
  }

  /** What is known, or null while nothing is. */
  Shortcut find(int address, boolean read) {
    return (read ? reads : writes).get(address);
  }

  /**
   * What was found for this address, or for another of its page and kept for the whole page; empty
   * while nothing is known.
   */
  Optional<Shortcut> covering(int address, boolean read) {
    Map<Integer, Shortcut> known = read ? reads : writes;
    int packed = (read ? readAt : writeAt)[address];
    if (known.containsKey(address) || packed < 0) {
      return Optional.ofNullable(known.get(address));
    }
    for (int at = address & ~PAGE; at <= (address | PAGE); at++) {
      Shortcut s = known.get(at);
      if (s != null && s.packed() >= 0 && s.packed() - at == packed - address) {
        return Optional.of(s);
      }
    }
    return Optional.empty();
  }

  /** Keeps what holds for one address; a watched one goes on the slower way until it is fetched. */
  void keep(int address, boolean read, Shortcut shortcut, boolean watched) {
    if (read) {
      reads.put(address, shortcut);
      readAt[address] = watched ? -1 : shortcut.packed();
    } else {
      writes.put(address, shortcut);
      writeAt[address] = shortcut.packed();
    }
  }

  /** A watched address was fetched and needs watching no more. */
  void fetched(int address) {
    readAt[address] = reads.get(address).packed();
  }

  /** Keeps what holds for a whole page; cells follow the address, but for those that are stuck. */
  void keepPage(int address, boolean read, Shortcut shortcut, Shortcuts shortcuts, int[] watched) {
    int page = address & ~PAGE;
    int first = shortcut.packed() - (address & PAGE);
    int[] table = read ? readAt : writeAt;
    for (int low = 0; low <= PAGE; low++) {
      int at = page | low;
      int packed = first + low;
      boolean kept =
          table[at] >= 0
              || shortcuts.stuck(packed & FastBus.CELL_MASK)
              || read && Arrays.binarySearch(watched, at) >= 0;
      if (!kept) {
        table[at] = packed;
      }
    }
  }
}
