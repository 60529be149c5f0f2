package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import faultfinch.signal.Phase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A picture of 36 columns and 20 rows of 12 lines. Line: 36 + 3 + 3 + 2 = 44 slots; frame: 240 + 24
 * + 4 + 44 = 312 lines.
 */
class VideoControllerTest {
  private static final int[] STANDARD = {36, 3, 3, 2, 20, 24, 4, 44, 12, 0, 0, 0, 0, 1};
  private static final int LINE = 44;
  private static final int FRAME = 312 * LINE;
  private final BenchPins bench = new BenchPins(new VideoController());

  private void standard() {
    bench.low("RES/");
    bench.commit(Phase.C_ROW);
    bench.high("RES/", "CS/");
    for (int i = 0; i < STANDARD.length; i++) {
      write(i, STANDARD[i]);
    }
    slot();
  }

  @Test
  void cells_ofARow_areShownInEveryOfItsTwelveLines() {
    standard();
    for (int line = 0; line < 240; line++) {
      for (int column = 0; column < LINE; column++) {
        String at = "line " + line + " column " + column;
        assertEquals(column < 36 ? 'H' : 'L', bench.out("DE"), at);
        if (column < 36) {
          assertEquals(36 * (line / 12) + column, bench.outBus("VA"), at);
          assertEquals(line % 12, bench.outBus("RA"), at);
          assertEquals(column % 2 == 0 ? 'H' : 'L', bench.out("OD/"), at);
        }
        slot();
      }
    }
    assertEquals('L', bench.out("DE"));
  }

  @Test
  void lineSync_standardSpans_isThreeSlotsFromSlot39OfEveryLine() {
    standard();
    for (int i = 0; i < FRAME; i++) {
      int column = i % LINE;
      assertEquals(column >= 39 && column < 42 ? 'L' : 'H', bench.out("HS/"), "slot " + i);
      slot();
    }
  }

  /** Cursor on, elsewhere, of other lines, blinking; interrupts asked for. */
  @Test
  void registersOfTheCursor_steerNoAddress() {
    standard();
    long[] steering = bench.steering();
    List<String> shown = new ArrayList<>();
    for (int i = 0; i < FRAME; i++) {
      shown.add(addresses());
      slot();
    }
    write(11, 0x96);
    write(12, 0xA0);
    write(13, 0x0F);
    assertArrayEquals(steering, bench.steering());
    for (int i = 0; i < FRAME; i++) {
      assertEquals(shown.get(i), addresses(), "slot " + i);
      slot();
    }
  }

  /** Spans, lines of a row, where the picture begins, and whether it shows. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 13})
  void everyOtherRegister_steers(int register) {
    standard();
    long[] steering = bench.steering();
    write(register, STANDARD[register] ^ 1);
    assertFalse(Arrays.equals(steering, bench.steering()));
  }

  private String addresses() {
    return bench.outBus("VA") + " " + bench.outBus("RA") + bench.out("OD/") + bench.out("DE");
  }

  @Test
  void frameSync_standardSpans_isFourLinesFromLine264OfEveryFrame() {
    standard();
    for (int i = 0; i < 2 * FRAME; i++) {
      int line = i % FRAME / LINE;
      assertEquals(line >= 264 && line < 268 ? 'L' : 'H', bench.out("VS/"), "slot " + i);
      slot();
    }
  }

  @Test
  void interrupt_afterTheLastRow_pullsUntilStatusIsRead() {
    standard();
    write(13, 9);
    slots(240 * LINE - 1);
    assertEquals('Z', bench.out("IRQ/"));
    slot();
    assertEquals('L', bench.out("IRQ/"));
    assertEquals(0x80, read(14));
    assertEquals('Z', bench.out("IRQ/"));
    assertEquals(0x00, read(14));
    slots(72 * LINE);
    assertEquals(0x01, read(14));
  }

  @Test
  void interrupt_notAskedFor_onlyShowsInStatus() {
    standard();
    slots(240 * LINE);
    assertEquals('Z', bench.out("IRQ/"));
    assertEquals(0x80, read(14));
  }

  @Test
  void cursor_onItsCell_showsFromItsFirstLineOn() {
    standard();
    write(11, 38); // row 1, column 2
    write(12, 0xA0);
    write(13, 3);
    for (int line = 0; line < 36; line++) {
      for (int column = 0; column < LINE; column++) {
        boolean right = column == 2 && (line == 22 || line == 23);
        assertEquals(right ? 'H' : 'L', bench.out("CUR"), "line " + line + " column " + column);
        slot();
      }
    }
  }

  @Test
  void cursor_blinking_isDarkInEverySecondSixteenFrames() {
    standard();
    write(12, 0);
    write(13, 7);
    int turns = 0;
    char last = bench.out("CUR");
    for (int frame = 0; frame < 64; frame++) {
      slots(FRAME);
      turns += bench.out("CUR") == last ? 0 : 1;
      last = bench.out("CUR");
    }
    assertEquals(4, turns);
  }

  @Test
  void firstCell_written_countsFromTheNextFrame() {
    standard();
    write(9, 0x48);
    write(10, 1);
    assertEquals(0, bench.outBus("VA"));
    slots(FRAME);
    assertEquals(0x148, bench.outBus("VA"));
  }

  @Test
  void reset_everything_stopsSyncsAndDarkens() {
    standard();
    bench.low("RES/");
    bench.commit(Phase.C_ROW);
    bench.high("RES/");
    for (int i = 0; i < 2 * FRAME; i++) {
      slot();
      assertEquals('H', bench.out("HS/"));
      assertEquals('H', bench.out("VS/"));
      assertEquals('L', bench.out("DE"));
    }
  }

  @Test
  void registers_writtenOnes_keepTheirBits() {
    standard();
    int[] kept = {
      0x3F, 0x3F, 0x3F, 0x3F, 0x1F, 0x3F, 0x3F, 0x3F, 0x0F, 0xFF, 0x03, 0xFF, 0xF3, 0x0F
    };
    for (int i = 0; i < kept.length; i++) {
      write(i, 0xFF);
      assertEquals(kept[i], read(i), "register " + i);
    }
    assertEquals(0, read(15));
  }

  @Test
  void spans_unequalToTheStandard_giveAnotherLineLength() {
    standard();
    write(3, 12);
    int falls = 0;
    char last = 'H';
    for (int i = 0; i < 10 * 54; i++) {
      char now = bench.out("HS/");
      falls += last == 'H' && now == 'L' ? 1 : 0;
      last = now;
      slot();
    }
    assertEquals(10, falls);
  }

  private void slots(int n) {
    for (int i = 0; i < n; i++) {
      slot();
    }
  }

  private void slot() {
    bench.low("CCLK");
    bench.commit(Phase.V_ROW);
    bench.high("CCLK");
    bench.commit(Phase.C_ROW);
  }

  private void write(int register, int value) {
    access(register, false);
    bench.bus("D", value);
    bench.commit(Phase.C_END);
    bench.high("CS/");
  }

  private int read(int register) {
    access(register, true);
    int seen = bench.outBus("D");
    bench.commit(Phase.C_END);
    bench.high("CS/");
    return seen;
  }

  private void access(int register, boolean reads) {
    bench.bus("A", register).low("CS/", "PHI2").set("RW", reads);
    bench.before(bench.in());
    bench.high("PHI2");
  }
}
