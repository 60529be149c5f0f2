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
    Shortcut[][] known = known(access);
    int[] table = table(access);
    put(known, table, address, shortcut, packed(shortcut, address, shortcuts));
    watch(address, access, 0, watched);
    int lines = shortcut.seen().lines();
    boolean stuck = stuck(shortcut, address, shortcuts);
    if (lines == 0 || stuck) {
      if (++alone[address >>> 8] >= LONELY && shortcut.kind() == Shortcut.Kind.PLAIN) {
        playPage(address, access, shortcut);
      }
      return;
    }
    boolean anyStuck = shortcuts.anyStuck(shortcut);
    Places places = shortcut.places();
    boolean cells = places.parts().length > 0;
    int[] index = shortcuts.scratch();
    index[0] = cells ? places.cells()[0] : 0;
    for (int some = (0 - lines) & lines; some != 0; some = (some - lines) & lines) {
      // Each line moves the place by itself, so it is known from that for one line less.
      int less = some & some - 1;
      int flip = cells ? places.flips()[0][Integer.numberOfTrailingZeros(some)] : 0;
      index[some] = index[less] ^ flip;
      int at = address ^ some;
      Shortcut[] page = known[at >>> 8];
      boolean free = page == null || page[at & PAGE] == null;
      if (free && !(anyStuck && stuck(shortcut, at, shortcuts))) {
        put(known, table, at, shortcut, shortcuts.packed(shortcut, index[some]));
      }
    }
    watch(address, access, lines, watched);
  }

  /** Sends the watched ones among these addresses the slower way. */
  private void watch(int address, Access access, int lines, int[] watched) {
    for (int at : watched) {
      if (access != Access.WRITE && ((at ^ address) & ~lines) == 0) {
        table(access)[at] = -1;
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

  private static int packed(Shortcut s, int address, Shortcuts shortcuts) {
    boolean cells = s.places().parts().length > 0;
    return shortcuts.packed(s, cells ? s.places().cell(0, address) : 0);
  }

  private static void put(Shortcut[][] known, int[] table, int at, Shortcut s, int packed) {
    Shortcut[] page = known[at >>> 8];
    if (page == null) {
      page = new Shortcut[PAGE + 1];
      known[at >>> 8] = page;
    }
    page[at & PAGE] = s;
    table[at] = packed;
  }

  /** Whether in every access known so far each driven data line was high or low. */
  boolean clean() {
    return clean;
  }

  /** A watched address was fetched and needs watching no more. */
  void fetched(int address, Shortcuts shortcuts) {
    table(Access.FETCH)[address] = packed(find(address, Access.FETCH), address, shortcuts);
  }
}
