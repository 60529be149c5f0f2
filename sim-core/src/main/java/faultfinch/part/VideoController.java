package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;
import java.util.List;

/**
 * Walks over the cells of the picture: cell address, line of the glyph, syncs and cursor. Every
 * rise of CCLK is one slot, the time of one column.
 *
 * <p>A line is made of four spans of slots (shown, gap, sync, lead), a frame of four spans of lines
 * (rows shown, gap, sync, lead); a span of length 0 is skipped, and with none there is no picture.
 *
 * <p>Registers: 0-3 spans of a line in slots, 4 rows shown, 5-7 the other spans of a frame in
 * lines, 8 lines of a row (0 is 16), 9 and 10 first cell (from the next frame on), 11 and 12 cursor
 * cell, 12 bits 7-4 its first glyph line, 13 bit 0 display, 1 cursor, 2 blink, 3 interrupt after
 * the last row, 14 status (bit 7 that interrupt waits, a read clears it; bit 0 rows are shown), 15
 * reads 0.
 */
public final class VideoController extends BusDevice implements Counting {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
          +----v----+
  D0    <>|1      40|--  VCC
  D1    <>|2      39|->  VA0
  D2    <>|3      38|->  VA1
  D3    <>|4      37|->  VA2
  D4    <>|5      36|->  VA3
  D5    <>|6      35|->  VA4
  D6    <>|7      34|->  VA5
  D7    <>|8      33|->  VA6
  A0    ->|9      32|->  VA7
  A1    ->|10     31|->  VA8
  A2    ->|11     30|->  VA9
  A3    ->|12     29|->  OD/
  CS/   ->|13     28|->  RA3
  RW    ->|14     27|->  RA2
  PHI2  ->|15     26|->  RA1
  RES/  ->|16     25|->  RA0
  IRQ/  <-|17     24|->  DE
  CCLK  ->|18     23|->  CUR
  NC    --|19     22|->  HS/
  GND   --|20     21|->  VS/
          +---------+
  NMOS; register A; data D; select CS/; direction RW; clock PHI2 falls; clock CCLK rises;
  input RES/; unconnected NC; supply VCC; ground GND; D drives NMOS LSI; VA drives NMOS LSI;
  RA drives NMOS LSI; OD/ drives NMOS LSI; DE drives NMOS LSI; CUR drives NMOS LSI;
  HS/ drives NMOS LSI; VS/ drives NMOS LSI; IRQ/ drives NMOS LSI open collector;
  enable CS/ RW PHI2 of D; D follows A
  Not modelled: interlace, a light pen.""");

  /** The registers as they were written. */
  public static final State REGISTERS = PINOUT.cells("registers", 8, 14);

  private static final BusAdapter ADAPTER = new BusAdapter(PINOUT, "A", "D");
  private static final State LINE_SPAN = PINOUT.state("line-span", 2);
  private static final State SLOTS_LEFT = PINOUT.state("slots-left", 6);
  private static final State FRAME_SPAN = PINOUT.state("frame-span", 2);
  private static final State LINES_LEFT = PINOUT.state("lines-left", 6);
  private static final State GLYPH_LINE = PINOUT.state("glyph-line", 4);
  private static final State ROW_CELL = PINOUT.state("row-cell", 10);
  private static final State CELL = PINOUT.state("cell", 10);
  private static final State FRAMES = PINOUT.state("frames", 5);
  private static final State WAITING = PINOUT.state("waiting", 1);
  private static final List<State> COUNTERS =
      List.of(
          LINE_SPAN,
          SLOTS_LEFT,
          FRAME_SPAN,
          LINES_LEFT,
          GLYPH_LINE,
          ROW_CELL,
          CELL,
          FRAMES,
          WAITING);

  /** Those that decide which cell is shown when; the others blink and interrupt. */
  private static final List<State> ADDRESSING =
      COUNTERS.stream().filter(s -> s != FRAMES && s != WAITING).toList();

  private static final int[] WIDTHS = {
    0x3F, 0x3F, 0x3F, 0x3F, 0x1F, 0x3F, 0x3F, 0x3F, 0x0F, 0xFF, 0x03, 0xFF, 0xF3, 0x0F
  };
  private static final int SPANS = 4;
  private static final int SHOWN = 0;
  private static final int SYNC = 2;
  private static final int FRAME = 4;
  private static final int ROW_LINES = 8;
  private static final int HOME = 9;
  private static final int CURSOR = 11;
  private static final int LOOK = 13;
  private static final int STATUS = 14;
  private static final int ADDRESSES = 0x3FF;

  private static final Bus VA = PINOUT.bus("VA");
  private static final Bus RA = PINOUT.bus("RA");
  private static final long OD = PINOUT.pin("OD/");
  private static final long DE = PINOUT.pin("DE");
  private static final long CUR = PINOUT.pin("CUR");
  private static final long HS = PINOUT.pin("HS/");
  private static final long VS = PINOUT.pin("VS/");
  private static final long IRQ = PINOUT.pin("IRQ/");
  private static final long RES = PINOUT.pin("RES/");
  private static final long CCLK = PINOUT.pin("CCLK");

  private static final long ALWAYS = VA.mask() | RA.mask() | OD | DE | CUR | HS | VS;

  /** Outputs that can move from one slot of a span of cells to the next. */
  private static final long WITHIN_A_SPAN = VA.mask() | OD | CUR;

  private static final Defect LINE_SYNC_DEAD = new Defect("line-sync-dead", "HS/ never falls");
  private static final Defect ADDRESS_DEAD =
      new Defect("address-dead", "the cell address stands at 0");

  @Override
  public BusAdapter adapter() {
    return ADAPTER;
  }

  @Override
  public List<Defect> defects() {
    return List.of(LINE_SYNC_DEAD, ADDRESS_DEAD);
  }

  @Override
  public long[] addressing(Pins pins) {
    long[] addressing = new long[ADDRESSING.size()];
    for (int i = 0; i < addressing.length; i++) {
      addressing[i] = pins.state(ADDRESSING.get(i));
    }
    return addressing;
  }

  /** All but those of the cursor, and of those that show and interrupt what shows cells. */
  @Override
  public long[] steering(Pins pins) {
    long[] steering = new long[REGISTERS.count()];
    for (int at = 0; at < steering.length; at++) {
      boolean cursor = at == CURSOR || at == CURSOR + 1;
      steering[at] = cursor ? 0 : register(pins, at) & (at == LOOK ? 1 : -1);
    }
    return steering;
  }

  @Override
  public long[] picturing(Pins pins) {
    int look = register(pins, LOOK);
    boolean cursor = (look & 2) != 0;
    boolean blinks = cursor && (look & 4) != 0;
    long[] picturing = new long[COUNTERS.size() + REGISTERS.count()];
    int n = 0;
    for (State counter : COUNTERS) {
      boolean counts = counter != WAITING && (counter != FRAMES || blinks);
      picturing[n++] = counts ? pins.state(counter) : 0;
    }
    for (int at = 0; at < REGISTERS.count(); at++) {
      boolean counts = cursor || at != CURSOR && at != CURSOR + 1;
      picturing[n++] = counts ? register(pins, at) : 0;
    }
    return picturing;
  }

  @Override
  public int look(Pins pins, int register) {
    if (register < STATUS) {
      return register(pins, register);
    }
    boolean rows = pins.state(FRAME_SPAN) == SHOWN && pins.state(LINES_LEFT) > 0;
    return register > STATUS ? 0 : (int) pins.state(WAITING) << 7 | (rows ? 1 : 0);
  }

  @Override
  public void afterRead(Pins pins, int register) {
    if (register == STATUS) {
      pins.hold(WAITING, 0);
    }
  }

  @Override
  public void write(Pins pins, int register, int value) {
    if (register < STATUS) {
      pins.hold(REGISTERS, register, value & WIDTHS[register]);
    }
  }

  @Override
  public void outputs(Pins pins) {
    long shown = shown(pins);
    pins.drive(ALWAYS, shown);
    if ((shown & IRQ) == 0) {
      pins.drive(IRQ, 0);
    }
  }

  /** Levels of all outputs but the data pins; IRQ/ is high where it lets go. */
  private static long shown(Pins pins) {
    int cell = pins.defect(ADDRESS_DEAD.name()) ? 0 : (int) pins.state(CELL);
    int glyphLine = (int) pins.state(GLYPH_LINE);
    int look = register(pins, LOOK);
    boolean slots = pins.state(SLOTS_LEFT) > 0;
    boolean lines = pins.state(LINES_LEFT) > 0;
    boolean cells =
        slots
            && lines
            && pins.state(LINE_SPAN) == SHOWN
            && pins.state(FRAME_SPAN) == SHOWN
            && (look & 1) != 0;
    boolean lineSync = slots && pins.state(LINE_SPAN) == SYNC;
    boolean frameSync = lines && pins.state(FRAME_SPAN) == SYNC;
    boolean interrupts = pins.state(WAITING) != 0 && (look & 8) != 0;
    return VA.at(cell)
        | RA.at(glyphLine)
        | ((cell & 1) == 0 ? OD : 0)
        | (cells ? DE : 0)
        | (cells && cursor(pins, cell, glyphLine, look) ? CUR : 0)
        | (!lineSync || pins.defect(LINE_SYNC_DEAD.name()) ? HS : 0)
        | (frameSync ? 0 : VS)
        | (interrupts ? 0 : IRQ);
  }

  private static int register(Pins pins, int at) {
    return pins.cell(REGISTERS, at) & WIDTHS[at];
  }

  private static boolean cursor(Pins pins, int cell, int glyphLine, int look) {
    int high = register(pins, CURSOR + 1);
    int at = register(pins, CURSOR) | (high & 3) << 8;
    boolean dark = (look & 4) != 0 && pins.state(FRAMES) >= 16;
    return (look & 2) != 0 && !dark && cell == at && glyphLine >= high >>> 4;
  }

  @Override
  public long restsWhileHigh(Phase phase) {
    return phase == Phase.C_END ? 0 : RES;
  }

  @Override
  public void levels(Pins pins) {
    if (pins.low(RES)) {
      reset(pins);
    } else if ((pins.rose() & CCLK) != 0) {
      slot(pins);
    }
  }

  @Override
  public boolean stepsAlone() {
    return true;
  }

  @Override
  public long advance(Pins pins, long steps, long watched) {
    long before = watched(pins, watched);
    long taken = 0;
    while (taken < steps && watched(pins, watched) == before) {
      if (pins.low(RES)) {
        taken += stand(pins, steps - taken);
      } else {
        long lines = lines(pins, steps - taken, watched);
        taken += lines > 0 ? lines : slots(pins, steps - taken, watched);
      }
    }
    return taken;
  }

  /** What the watched outputs show; the interrupt alone is quick to tell. */
  private static long watched(Pins pins, long watched) {
    if (watched == 0) {
      return 0;
    }
    return watched == IRQ ? pins.state(WAITING) : shown(pins) & watched;
  }

  private static long stand(Pins pins, long steps) {
    boolean stood = COUNTERS.stream().allMatch(c -> pins.state(c) == 0);
    reset(pins);
    return stood ? steps : 1;
  }

  /**
   * Where a line has just begun, whole lines, until one moves the interrupt, if that is watched.
   */
  private static long lines(Pins pins, long most, long watched) {
    int length = 0;
    for (int span = 0; span < SPANS; span++) {
      length += register(pins, span);
    }
    int cells = register(pins, 0);
    boolean begins = pins.state(LINE_SPAN) == 0 && pins.state(SLOTS_LEFT) == cells;
    if (cells == 0 || !begins || length > most || (watched & ~IRQ) != 0) {
      return 0;
    }
    long waiting = pins.state(WAITING);
    long taken = 0;
    while (taken + length <= most && (watched == 0 || pins.state(WAITING) == waiting)) {
      long rows = Math.min(wholeRows(pins), (most - taken) / (length * rowLines(pins)));
      if (rows > 0) {
        wholeRows(pins, rows, cells);
        taken += rows * rowLines(pins) * length;
        continue;
      }
      long some = Math.min(plainLines(pins), (most - taken) / length);
      if (some > 0) {
        plainLines(pins, some);
        taken += some * length;
        continue;
      }
      if (pins.state(FRAME_SPAN) == SHOWN) {
        pins.hold(CELL, pins.state(CELL) + cells - 1 & ADDRESSES);
      }
      line(pins);
      taken += length;
    }
    return taken;
  }

  private static boolean showsRows(Pins pins) {
    return pins.state(FRAME_SPAN) == SHOWN && pins.state(LINES_LEFT) > 0;
  }

  /** Lines of a row of cells; of a register of four bits 0 is sixteen. */
  private static long rowLines(Pins pins) {
    return (register(pins, ROW_LINES) - 1 & 0xF) + 1;
  }

  /** How many rows of cells, from the one that begins, are followed by another. */
  private static long wholeRows(Pins pins) {
    boolean begins = showsRows(pins) && pins.state(GLYPH_LINE) == 0;
    return begins ? pins.state(LINES_LEFT) - 1 : 0;
  }

  /** Takes so many of those. */
  private static void wholeRows(Pins pins, long some, int cells) {
    pins.hold(LINES_LEFT, pins.state(LINES_LEFT) - some);
    pins.hold(ROW_CELL, pins.state(ROW_CELL) + some * cells & ADDRESSES);
    pins.hold(CELL, pins.state(ROW_CELL));
  }

  /** How many of the next lines begin no row of cells and no span of the frame. */
  private static long plainLines(Pins pins) {
    if (showsRows(pins)) {
      return register(pins, ROW_LINES) - 1 - pins.state(GLYPH_LINE) & 0xF;
    }
    return Math.max(0, pins.state(LINES_LEFT) - 1);
  }

  /** Takes so many of those. */
  private static void plainLines(Pins pins, long some) {
    if (showsRows(pins)) {
      pins.hold(GLYPH_LINE, pins.state(GLYPH_LINE) + some & 0xF);
      pins.hold(CELL, pins.state(ROW_CELL));
    } else {
      pins.hold(LINES_LEFT, pins.state(LINES_LEFT) - some);
    }
  }

  /** One slot, or as many of those left as move nothing that is watched. */
  private static long slots(Pins pins, long most, long watched) {
    long left = pins.state(SLOTS_LEFT);
    boolean cells = pins.state(LINE_SPAN) == SHOWN && pins.state(FRAME_SPAN) == SHOWN;
    if (left > 1 && (!cells || (watched & WITHIN_A_SPAN) == 0)) {
      long taken = Math.min(most, left - 1);
      pins.hold(SLOTS_LEFT, left - taken);
      if (cells) {
        pins.hold(CELL, pins.state(CELL) + taken & ADDRESSES);
      }
      return taken;
    }
    slot(pins);
    return left == 0 && pins.state(SLOTS_LEFT) == 0 ? most : 1;
  }

  private static void reset(Pins pins) {
    for (State counter : COUNTERS) {
      pins.hold(counter, 0);
    }
    for (int i = 0; i < REGISTERS.count(); i++) {
      pins.hold(REGISTERS, i, 0);
    }
  }

  private static void slot(Pins pins) {
    long left = pins.state(SLOTS_LEFT);
    if (left > 1) {
      pins.hold(SLOTS_LEFT, left - 1);
      if (pins.state(LINE_SPAN) == SHOWN && pins.state(FRAME_SPAN) == SHOWN) {
        pins.hold(CELL, pins.state(CELL) + 1 & ADDRESSES);
      }
      return;
    }
    int span = left == 0 ? SPANS - 1 : (int) pins.state(LINE_SPAN);
    int length = 0;
    for (int i = 0; i < SPANS && length == 0; i++) {
      span = (span + 1) % SPANS;
      if (span == 0 && anySpan(pins, 0)) {
        line(pins);
      }
      length = register(pins, span);
    }
    pins.hold(LINE_SPAN, span);
    pins.hold(SLOTS_LEFT, length);
  }

  private static boolean anySpan(Pins pins, int from) {
    for (int i = from; i < from + SPANS; i++) {
      if (register(pins, i) != 0) {
        return true;
      }
    }
    return false;
  }

  /** A line begins. */
  private static void line(Pins pins) {
    long left = pins.state(LINES_LEFT);
    boolean shown = showsRows(pins);
    if (shown) {
      long next = pins.state(GLYPH_LINE) + 1 & 0xF;
      if (next != register(pins, ROW_LINES)) {
        pins.hold(GLYPH_LINE, next);
        pins.hold(CELL, pins.state(ROW_CELL));
        return;
      }
      pins.hold(GLYPH_LINE, 0);
      pins.hold(ROW_CELL, pins.state(ROW_CELL) + register(pins, 0) & ADDRESSES);
    }
    if (left > 1) {
      pins.hold(LINES_LEFT, left - 1);
    } else {
      if (shown) {
        pins.hold(WAITING, 1);
      }
      nextFrameSpan(pins, left == 0 ? SPANS - 1 : (int) pins.state(FRAME_SPAN));
    }
    if (pins.state(FRAME_SPAN) == SHOWN) {
      pins.hold(CELL, pins.state(ROW_CELL));
    }
  }

  private static void nextFrameSpan(Pins pins, int from) {
    int span = from;
    int length = 0;
    for (int i = 0; i < SPANS && length == 0; i++) {
      span = (span + 1) % SPANS;
      length = register(pins, FRAME + span);
      if (span == 0) {
        frame(pins);
      }
    }
    pins.hold(FRAME_SPAN, span);
    pins.hold(LINES_LEFT, length);
  }

  private static void frame(Pins pins) {
    pins.hold(FRAMES, pins.state(FRAMES) + 1 & 0x1F);
    pins.hold(GLYPH_LINE, 0);
    pins.hold(ROW_CELL, register(pins, HOME) | register(pins, HOME + 1) << 8);
  }

  @Override
  public void powerOn(Pins pins, PowerOn chance) {
    for (State counter : COUNTERS) {
      pins.hold(counter, chance.draw(counter.offset()) & (1L << counter.width()) - 1);
    }
    for (int i = 0; i < REGISTERS.count(); i++) {
      pins.hold(REGISTERS, i, (int) chance.draw(COUNTERS.size() + i) & WIDTHS[i]);
    }
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
