package faultfinch.machine;

import java.util.Arrays;

/** What is known of every address and kind of access while the slow levels stay as they are. */
final class Tables {
  private static final int ADDRESSES = 0x10000;
  private static final int PAGE = 0xFF;

  /** Answers good for one address only after which a page is not asked for more. */
  private static final int LONELY = 4;

  /** What every table is as long as it knows nothing. */
  private static final int[] UNKNOWN = unknown();

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
  int[] fetchAt;

  int[] readAt;
  int[] writeAt;
  private final boolean syncRead;
  private boolean clean = true;
  private final Shortcut[][] fetches;
  private final Shortcut[][] reads;
  private final Shortcut[][] writes;
  private final int[] alone = new int[ADDRESSES / (PAGE + 1)];

  /** With nobody on the SYNC line a fetch is a read, and the two share what is known. */
  Tables(boolean syncRead) {
    this.syncRead = syncRead;
    readAt = UNKNOWN;
    writeAt = UNKNOWN;
    fetchAt = UNKNOWN;
    reads = new Shortcut[ADDRESSES / (PAGE + 1)][];
    writes = new Shortcut[ADDRESSES / (PAGE + 1)][];
    fetches = syncRead ? new Shortcut[ADDRESSES / (PAGE + 1)][] : reads;
  }

  private static int[] unknown() {
    int[] table = new int[ADDRESSES];
    Arrays.fill(table, -1);
    return table;
  }

  /** The table of a kind of access, its own from now on. */
  private int[] table(Access access) {
    if (access == Access.WRITE) {
      writeAt = writeAt == UNKNOWN ? UNKNOWN.clone() : writeAt;
      return writeAt;
    }
    if (access == Access.FETCH && syncRead) {
      fetchAt = fetchAt == UNKNOWN ? UNKNOWN.clone() : fetchAt;
      return fetchAt;
    }
    readAt = readAt == UNKNOWN ? UNKNOWN.clone() : readAt;
    fetchAt = syncRead ? fetchAt : readAt;
    return readAt;
  }

  private Shortcut[][] known(Access access) {
    return switch (access) {
      case FETCH -> fetches;
      case READ -> reads;
      case WRITE -> writes;
    };
  }

  /** What is known, or null while nothing is. */
  Shortcut find(int address, Access access) {
    Shortcut[] page = known(access)[address >>> 8];
    return page == null ? null : page[address & PAGE];
  }

  /** Whether no answer in the page of an address so far was good for another address. */
  boolean alone(int address) {
    return alone[address >>> 8] >= LONELY;
  }

  /**
   * Keeps an answer for all addresses it covers and nothing is known of. Addresses of stuck cells
   * are left to be asked about; watched ones go on the slower way until they are fetched.
   */
  void keep(int address, Access access, Shortcut shortcut, Shortcuts shortcuts, int[] watched) {
    clean &= shortcut.carried().clean();
    put(address, access, shortcut, shortcuts, watched);
    int lines = shortcut.seen().lines();
    boolean stuck = stuck(shortcut, address, shortcuts);
    if (lines == 0 || stuck) {
      if (++alone[address >>> 8] >= LONELY && shortcut.kind() == Shortcut.Kind.PLAIN) {
        playPage(address, access, shortcut);
      }
      return;
    }
    for (int some = (0 - lines) & lines; some != 0; some = (some - lines) & lines) {
      int at = address ^ some;
      if (find(at, access) == null && !stuck(shortcut, at, shortcuts)) {
        put(at, access, shortcut, shortcuts, watched);
      }
    }
  }

  /** Asks no more in a page where one access after the other has to be played. */
  private void playPage(int address, Access access, Shortcut plain) {
    Shortcut[] page = known(access)[address >>> 8];
    for (int i = 0; i <= PAGE; i++) {
      page[i] = page[i] == null ? plain : page[i];
    }
  }

  private static boolean stuck(Shortcut s, int address, Shortcuts shortcuts) {
    int[] parts = s.places().parts();
    for (int k = 0; k < parts.length; k++) {
      if (shortcuts.stuck(parts[k], s.places().cell(k, address))) {
        return true;
      }
    }
    return false;
  }

  private void put(int at, Access access, Shortcut s, Shortcuts shortcuts, int[] watched) {
    Shortcut[][] known = known(access);
    if (known[at >>> 8] == null) {
      known[at >>> 8] = new Shortcut[PAGE + 1];
    }
    known[at >>> 8][at & PAGE] = s;
    boolean watch = access != Access.WRITE && Arrays.binarySearch(watched, at) >= 0;
    table(access)[at] = watch ? -1 : shortcuts.packed(s, at);
  }

  /** Whether in every access known so far each driven data line was high or low. */
  boolean clean() {
    return clean;
  }

  /** A watched address was fetched and needs watching no more. */
  void fetched(int address, Shortcuts shortcuts) {
    table(Access.FETCH)[address] = shortcuts.packed(find(address, Access.FETCH), address);
  }
}
