package faultfinch.machine;

/**
 * When it is worth looking for the way of what runs by itself: not for some time after it was
 * looked for in vain, and not while looking has cost more cycles than the ways found have spared.
 */
final class Searches {
  /** Cycles until a way is looked for again; doubled each time none is found, so far at most. */
  private static final int AGAIN = 20_000;

  private static final int MOST_PATIENCE = 16 * AGAIN;

  /** A way that ends sooner than this ends in a flurry of writes to registers, which goes on. */
  private static final int FLURRY = 500;

  private int patience = AGAIN;

  /** Before this cycle no way is looked for again. */
  private long againAt;

  /** Cycles played to find ways less those that were then not played, 0 or more. */
  private long owed;

  private long foundAt;

  /** Whether a way may be looked for at a cycle. */
  boolean due(long cycle) {
    return cycle >= againAt;
  }

  /** The wiring is another: what was found in none just now is not found for a key. */
  void rewired() {
    againAt = patience == AGAIN ? 0 : againAt;
  }

  /** A way is taken up at a cycle that took so many cycles to find. */
  void found(long cycle, long played) {
    patience = AGAIN;
    owed += played;
    foundAt = cycle;
  }

  void inVain(long cycle) {
    againAt = cycle + patience;
    patience = Math.min(2 * patience, MOST_PATIENCE);
  }

  /** The way last found ends at a cycle. What was not worth it is put off for as long. */
  void lost(long cycle) {
    long lasted = cycle - foundAt;
    owed = Math.max(0, owed - lasted);
    long pause = owed > AGAIN ? owed : lasted < FLURRY ? FLURRY : 0;
    againAt = Math.max(againAt, cycle + pause);
  }
}
