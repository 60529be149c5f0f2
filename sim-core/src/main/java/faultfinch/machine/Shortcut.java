package faultfinch.machine;

import faultfinch.part.Memory;
import faultfinch.part.RowMemory;
import faultfinch.signal.Phase;
import faultfinch.signal.State;

/**
 * What one access does, as the plain machine showed it.
 *
 * @param places memory cells read or written
 * @param and data bits that follow the source
 * @param or data bits that are high whatever the source says
 * @param maskClass number of the two masks for the tables, or -1
 * @param follows for each cell of {@link Kind#WIDE} the data line it is read to or written from, or
 *     {@link #LOW} or {@link #HIGH}; for {@link Kind#VALUED} what each byte becomes, as far as
 *     known
 * @param driver the part that drives the data lines, or null
 * @param steps what parts commit, in order
 * @param seen what every part's pins read at the end of the cycle
 * @param steady whether a read stays the same while no slow level moves
 * @param memo what such a read gave, behind the moment it was found
 * @param floats data lines that nobody drives
 * @param carried what the data lines carry at the end
 * @param rows the rows it strobes whose clocks are kept
 */
record Shortcut(
    Kind kind,
    Places places,
    int and,
    int or,
    int maskClass,
    int[] follows,
    Step driver,
    Step[] steps,
    Seen seen,
    boolean steady,
    long[] memo,
    int floats,
    Carried carried,
    Rows rows) {

  static final int LOW = 8;
  static final int HIGH = 9;

  /** Of {@link Kind#VALUED}: a byte that was never tried, and one that has to be played. */
  static final int UNTRIED = -1;

  static final int PLAYED = -2;

  enum Kind {
    /** One byte of one memory, or of eight side by side. */
    MEMORY,
    /** Cells of memories one bit wide, each at its own place. */
    WIDE,
    /** One byte of one memory, or of eight side by side; what becomes of it is known by value. */
    VALUED,
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

  /**
   * What the data lines carry at the end of the cycle.
   *
   * @param and lines that follow what is written, or read
   * @param or lines that are high whatever that is
   * @param clean whether every driven line is either high or low
   */
  record Carried(int and, int or, boolean clean) {}

  /**
   * What every part's pins read at the end of the cycle.
   *
   * @param low with all data low
   * @param high with all data high
   * @param base the address it was seen at
   * @param lines address lines that may differ
   * @param sways per part and pin the lines it follows, and the clockwork's mark
   */
  record Seen(long[] low, long[] high, int base, int lines, int[][] sways) {}

  private static final long[] NO_MEMO = {-1, 0};
  private static final Seen NOTHING = new Seen(new long[0], new long[0], 0, 0, new int[0][]);

  static Shortcut plain() {
    return new Shortcut(
        Kind.PLAIN,
        Places.NONE,
        0,
        0,
        -1,
        new int[0],
        null,
        new Step[0],
        NOTHING,
        false,
        NO_MEMO,
        0,
        new Carried(0, 0, true),
        Rows.NONE);
  }

  /** The same access, which strobes these rows. */
  Shortcut strobing(Rows strobed) {
    return new Shortcut(
        kind, places, and, or, maskClass, follows, driver, steps, seen, steady, memo, floats,
        carried, strobed);
  }

  /** Place among all cells of the one byte read or written, or -1 if there is none. */
  int cell(Circuit c, int address) {
    return places.parts().length == 0
        ? -1
        : c.cellBase[places.parts()[0]] + places.cell(0, address);
  }

  /** What the processor reads of memories one bit wide. */
  int readWide(PlainCycle plain, int address) {
    int lines = 0;
    for (int k = 0; k < follows.length; k++) {
      int p = places.parts()[k];
      int bit = plain.levels.pins[p].cell(bits(plain, p), places.cell(k, address)) & 1;
      lines |= bit << follows[k];
    }
    return (lines & and) | or;
  }

  void writeWide(PlainCycle plain, int address, int data) {
    for (int k = 0; k < follows.length; k++) {
      int p = places.parts()[k];
      int bit = follows[k] == LOW ? 0 : follows[k] == HIGH ? 1 : data >>> follows[k] & 1;
      plain.levels.pins[p].hold(bits(plain, p), places.cell(k, address), bit);
    }
  }

  private static State bits(PlainCycle plain, int part) {
    return plain.circuit.parts[part] instanceof RowMemory row
        ? row.bits()
        : ((Memory) plain.circuit.parts[part]).array();
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
