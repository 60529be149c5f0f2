package faultfinch.machine;

import faultfinch.signal.Phase;

/**
 * What one access does, as the plain machine showed it.
 *
 * @param cell for {@link Kind#MEMORY} the cell read or written
 * @param and data bits that follow the source
 * @param or data bits that are high whatever the source says
 * @param packed cell and mask class for the tables, or -1
 * @param driver the part that drives the data lines, or null
 * @param steps what parts commit, in order
 * @param readsA what every part's pins read at the end of the cycle with all data low
 * @param readsB the same with all data high
 * @param steady whether a read stays the same while no slow level moves
 * @param memo what such a read gave, behind the moment it was found
 * @param floats data lines that nobody drives
 * @param clean whether every driven data line is either high or low
 */
record Shortcut(
    Kind kind,
    int cell,
    int and,
    int or,
    int packed,
    Step driver,
    Step[] steps,
    long[] readsA,
    long[] readsB,
    boolean steady,
    long[] memo,
    int floats,
    boolean clean) {

  enum Kind {
    MEMORY,
    DEVICE,
    /** A read in which some data lines float; a memory or nobody drives the rest. */
    LOOSE,
    PLAIN
  }

  /**
   * One part as it stood in the cycle.
   *
   * @param in what its pins read, with the slow pins and those that carry data cleared
   * @param slow pins on nets that the processor's cycle does not move
   * @param line for each pin that carries a data line: the line's number plus one, else 0
   */
  record Step(int part, Phase phase, long in, long before, long slow, byte[] line) {}

  private static final long[] NO_MEMO = {-1, 0};

  static Shortcut plain() {
    return new Shortcut(
        Kind.PLAIN,
        0,
        0,
        0,
        -1,
        null,
        new Step[0],
        new long[0],
        new long[0],
        false,
        NO_MEMO,
        0,
        true);
  }

  /** Runs the parts that matter; returns what the processor reads, or the data it wrote. */
  int run(PlainCycle plain, int data) {
    int lines = data;
    int value = data;
    if (driver != null) {
      PartPins pins = plain.levels.pins[driver.part()];
      long in = pins.in;
      enter(plain, driver, pins, 0);
      pins.driven = 0;
      pins.bits = 0;
      plain.circuit.parts[driver.part()].settle(pins);
      long forced = plain.circuit.forceMask[driver.part()];
      long out = (pins.bits & ~forced) | (plain.circuit.forceBits[driver.part()] & forced);
      pins.in = in;
      lines = gather(out, driver.line());
      value = (lines & and) | or;
    } else if (and == 0) {
      value = or;
    }
    for (Step step : steps) {
      PartPins pins = plain.levels.pins[step.part()];
      long in = pins.in;
      enter(plain, step, pins, lines);
      plain.circuit.parts[step.part()].commit(pins, step.phase());
      pins.in = in;
    }
    return value;
  }

  private static void enter(PlainCycle plain, Step step, PartPins pins, int lines) {
    plain.levels.phase = step.phase();
    pins.in = (pins.in & step.slow()) | step.in() | spread(lines, step.line());
    pins.before = step.before();
    pins.rose = 0;
    pins.fell = 0;
  }

  private static long spread(int lines, byte[] line) {
    long in = 0;
    for (int bit = 0; bit < line.length; bit++) {
      if (line[bit] > 0 && (lines >>> line[bit] - 1 & 1) != 0) {
        in |= 1L << bit;
      }
    }
    return in;
  }

  private static int gather(long out, byte[] line) {
    int lines = 0;
    for (int bit = 0; bit < line.length; bit++) {
      if (line[bit] > 0 && (out >>> bit & 1) != 0) {
        lines |= 1 << line[bit] - 1;
      }
    }
    return lines;
  }
}
