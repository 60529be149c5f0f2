package faultfinch.machine;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** What is known of every address and kind of access while the slow levels stay as they are. */
final class Tables {
  private static final int ADDRESSES = 0x10000;
  private static final int PAGE = 0xFF;

  /** The three kinds of access; a fetch is a read with SYNC high. */
  enum Access {
    FETCH,
    READ,
    WRITE;

    static Access of(boolean reads, boolean sync) {
      return !reads ? WRITE : sync ? FETCH : READ;
    }
  }

  /** For each address the packed cell and mask class, or -1 for the slower way. */
  final int[] fetchAt;

  final int[] readAt;
  final int[] writeAt;
  private final Map<Integer, Shortcut> fetches;
  private final Map<Integer, Shortcut> reads;
  private final Map<Integer, Shortcut> writes;

  /** With nobody on the SYNC line a fetch is a read, and the two share what is known. */
  Tables(boolean syncRead) {
    readAt = unknown();
    writeAt = unknown();
    fetchAt = syncRead ? unknown() : readAt;
    reads = new HashMap<>();
    writes = new HashMap<>();
    fetches = syncRead ? new HashMap<>() : reads;
  }

  private static int[] unknown() {
    int[] table = new int[ADDRESSES];
    Arrays.fill(table, -1);
    return table;
  }

  private int[] table(Access access) {
    return switch (access) {
      case FETCH -> fetchAt;
      case READ -> readAt;
      case WRITE -> writeAt;
    };
  }

  private Map<Integer, Shortcut> known(Access access) {
    return switch (access) {
      case FETCH -> fetches;
      case READ -> reads;
      case WRITE -> writes;
    };
  }

  /** What is known, or null while nothing is. */
  Shortcut find(int address, Access access) {
    return known(access).get(address);
  }

  /**
   * What was found for this address, or for another of its page and kept for the whole page; empty
   * while nothing is known.
   */
  Optional<Shortcut> covering(int address, Access access) {
    Map<Integer, Shortcut> known = known(access);
    int packed = table(access)[address];
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
  void keep(int address, Access access, Shortcut shortcut, boolean watched) {
    known(access).put(address, shortcut);
    table(access)[address] = watched ? -1 : shortcut.packed();
  }

  /** A watched address was fetched and needs watching no more. */
  void fetched(int address) {
    fetchAt[address] = fetches.get(address).packed();
  }

  /** Keeps what holds for a whole page; cells follow the address, but for those that are stuck. */
  void keepPage(int address, Access access, Shortcut shortcut, Shortcuts shortcuts, int[] watched) {
    int page = address & ~PAGE;
    int first = shortcut.packed() - (address & PAGE);
    int[] table = table(access);
    for (int low = 0; low <= PAGE; low++) {
      int at = page | low;
      int packed = first + low;
      boolean kept =
          table[at] >= 0
              || shortcuts.stuck(packed & FastBus.CELL_MASK)
              || access != Access.WRITE && Arrays.binarySearch(watched, at) >= 0;
      if (!kept) {
        table[at] = packed;
      }
    }
  }
}
