package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.signal.Phase;
import org.junit.jupiter.api.Test;

/** The beam by hand: a cell is half a cycle, dots are sampled where they begin. */
class MonitorTest {
  private final BenchPins bench = new BenchPins(new Monitor()).high("HS/", "VS/");

  /** Two cycles after the fall of HS/ in the processor half of cycle 0, dot by dot. */
  @Test
  void cells_afterASync_areTheDotsInTheirOrder() {
    bench.low("HS/");
    half(0, true, "", "");
    bench.high("HS/");
    half(1, false, "R", "");
    half(1, true, "RG", "B");
    half(2, false, "", "RGB");
    assertEquals(0, cell(1, 0));
    assertEquals(1, cell(1, 1));
    assertEquals(3 | 4 << 3, cell(1, 2));
    assertEquals(7 << 3, cell(1, 3));
  }

  @Test
  void lines_betweenFrameSyncs_areCountedFromItsEnd() {
    bench.low("VS/");
    half(0, true, "", "");
    bench.high("VS/");
    half(1, true, "", "");
    for (int line = 1; line <= 5; line++) {
      bench.low("HS/");
      half(10 * line, true, "G", "");
      bench.high("HS/");
      half(10 * line + 1, false, "", "");
    }
    assertEquals(0, cell(6, 0));
    assertEquals(2, cell(5, 0));
    assertEquals(20, bench.state(Monitor.LINE_LENGTH)); // ten cycles
    bench.low("VS/");
    half(60, true, "", "");
    bench.high("VS/");
    half(61, true, "", "");
    assertEquals(5, bench.state(Monitor.FRAME_LINES));
  }

  @Test
  void beam_pastTheEndOfALine_drawsNothing() {
    bench.low("HS/");
    half(0, true, "", "");
    bench.high("HS/");
    half(88, true, "R", "R"); // 176 halves later
    half(87, true, "G", "G");
    assertEquals(2 | 2 << 3, cell(1, 174));
    assertEquals(0, cell(1, 175));
    assertEquals(0, cell(2, 0));
  }

  /** White frames: one of three lines of ten cycles, then one of two lines of five. */
  @Test
  void beam_thatTurnsBackEarlier_leavesNothingOfFramesBefore() {
    long at = frame(0, 3, 10);
    assertEquals(7 | 7 << 3, cell(3, 19)); // the last of ten cycles' halves
    frame(at, 2, 5);
    assertEquals(7 | 7 << 3, cell(1, 9));
    assertEquals(0, cell(1, 10));
    assertEquals(7 | 7 << 3, cell(2, 9));
    assertEquals(0, cell(2, 12)); // VS/ ended two halves after the line
    assertEquals(0, cell(3, 0));
  }

  /** White lines, the sync of each in the processor half of its first cycle; then VS/, dark. */
  private long frame(long at, int lines, int cycles) {
    for (int line = 0; line < lines; line++) {
      for (int i = 0; i < cycles; i++) {
        bench.set("HS/", i > 0);
        half(at, true, "RGB", "RGB");
        half(++at, false, "RGB", "RGB");
      }
    }
    bench.low("VS/");
    half(at, true, "", "");
    bench.high("VS/");
    half(++at, false, "", "");
    return at;
  }

  private int cell(int line, int x) {
    return bench.cell(Monitor.CELLS, line * Monitor.WIDTH + x);
  }

  private long now;

  private void half(long cycle, boolean processor, String first, String second) {
    bench.passMicroseconds(cycle - now);
    now = cycle;
    dot(processor ? Phase.C_ROW : Phase.V_ROW, first);
    dot(processor ? Phase.C_COL : Phase.V_COL, second);
    bench.commit(processor ? Phase.C_END : Phase.V_LATCH);
  }

  private void dot(Phase phase, String colours) {
    for (String c : new String[] {"R", "G", "B"}) {
      bench.set(c, colours.contains(c));
    }
    bench.commit(phase);
  }
}
