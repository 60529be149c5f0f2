package faultfinch.part;

import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/**
 * The set at the end of the picture lead. It keeps the last frame as its beam drew it: two dots a
 * half cycle, three bits a dot, from the fall of HS/ to the right, lines counted from the end of
 * VS/. The sampled moments are those in which a new dot stands at the socket.
 */
public final class Monitor extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  R    ->|1       8|--  NC
  G    ->|2       7|--  GND
  B    ->|3       6|--  PON
  HS/  ->|4       5|<-  VS/
         +---------+
  NMOS; input R G B HS/ VS/; unconnected NC; supply PON; ground GND
  Not modelled: a set that runs free without line sync (it mutes: nothing is drawn), its own
  controls, what stands in two sweeps of a line at once.""");

  /** Cells of a line: half cycles from the fall of HS/ on. */
  public static final int WIDTH = 176;

  /** Lines kept. */
  public static final int HEIGHT = 320;

  /** Two dots each, the first in bits 0-2, red green blue. */
  public static final State CELLS = PINOUT.cells("cells", 6, WIDTH * HEIGHT);

  /** Half cycle since power-on at which the current line began. */
  public static final State LINE_FROM = PINOUT.state("line-from", 63);

  /** Half cycles from the last fall of HS/ but one to the last. */
  public static final State LINE_LENGTH = PINOUT.state("line-length", 63);

  /** Lines from one end of VS/ to the next. */
  public static final State FRAME_LINES = PINOUT.state("frame-lines", 16);

  /** Half cycle since power-on at which VS/ last ended. */
  public static final State FRAME_FROM = PINOUT.state("frame-from", 63);

  /** Lines since VS/ ended. */
  private static final State LINE = PINOUT.state("line", 16);

  /** The first dot of the cell under way. */
  private static final State DOT = PINOUT.state("dot", 3);

  private static final int MOST_LINES = 0xFFFF;
  private static final long R = PINOUT.pin("R");
  private static final long G = PINOUT.pin("G");
  private static final long B = PINOUT.pin("B");
  private static final long HS = PINOUT.pin("HS/");
  private static final long VS = PINOUT.pin("VS/");

  @Override
  public void commit(Pins pins, Phase phase) {
    long half = 2 * pins.now() + (phase.processorHalf() ? 1 : 0);
    boolean frame = (pins.rose() & VS) != 0;
    boolean line = (pins.fell() & HS) != 0;
    if (frame || line) {
      dark(pins, pins.state(LINE), half - pins.state(LINE_FROM), WIDTH);
    }
    if (frame) {
      dark(pins, 0, 0, half - pins.state(LINE_FROM));
      // What lies below the frame before has been dark since that ended.
      long last = Math.min(pins.state(FRAME_LINES), HEIGHT - 1);
      for (long below = pins.state(LINE) + 1; below <= last; below++) {
        dark(pins, below, 0, WIDTH);
      }
      pins.hold(FRAME_LINES, pins.state(LINE));
      pins.hold(FRAME_FROM, half);
      pins.hold(LINE, 0);
    }
    if (line) {
      pins.hold(LINE_LENGTH, Math.max(0, half - pins.state(LINE_FROM)));
      pins.hold(LINE_FROM, half);
      pins.hold(LINE, Math.min(MOST_LINES, pins.state(LINE) + 1));
    }
    switch (phase) {
      case C_ROW, V_ROW -> pins.hold(DOT, dot(pins));
      case C_COL, V_COL -> draw(pins, half - pins.state(LINE_FROM));
      case C_END, V_LATCH -> {
        // The dot that began in the phase before still stands.
      }
    }
  }

  /**
   * The beam begins a frame by itself, as that of a set does that gets no frame sync. When it does
   * depends on the set alone, so whoever looks says so.
   */
  public static void flyBack(Pins pins) {
    pins.hold(LINE, 0);
  }

  /** Where the beam did not come by in this frame, what it drew in one before has faded. */
  private static void dark(Pins pins, long line, long from, long to) {
    if (line < HEIGHT) {
      for (long x = Math.max(0, from); x < Math.min(to, WIDTH); x++) {
        keep(pins, (int) (line * WIDTH + x), 0);
      }
    }
  }

  private static void draw(Pins pins, long x) {
    long y = pins.state(LINE);
    if (x >= 0 && x < WIDTH && y < HEIGHT) {
      keep(pins, (int) (y * WIDTH + x), (int) pins.state(DOT) | dot(pins) << 3);
    }
  }

  private static void keep(Pins pins, int at, int two) {
    if (pins.cell(CELLS, at) != two) {
      pins.hold(CELLS, at, two);
    }
  }

  private static int dot(Pins pins) {
    return (pins.high(R) ? 1 : 0) | (pins.high(G) ? 2 : 0) | (pins.high(B) ? 4 : 0);
  }

  @Override
  public boolean commitsEveryPhase() {
    return true;
  }

  @Override
  public boolean asksForEdges() {
    return true;
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
