package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.signal.Phase;
import org.junit.jupiter.api.Test;

/** Strobes by hand, as the timing diagrams of the data sheet order them. */
class Dram4164Test {
  private static final int SECOND = 1_000_000;

  private final BenchPins bench = new BenchPins(new Dram4164());

  Dram4164Test() {
    bench.high("RAS/", "CAS/", "WE/");
  }

  private static void row(BenchPins bench, int row) {
    bench.high("CAS/", "WE/").low("RAS/").bus("A", row);
    bench.commit(Phase.C_ROW);
  }

  private static void write(BenchPins bench, int row, int column, boolean bit) {
    row(bench, row);
    bench.bus("A", column).set("D", bit).low("WE/", "CAS/");
    bench.commit(Phase.C_COL);
    bench.commit(Phase.C_END);
    bench.high("WE/", "CAS/");
  }

  private static char read(BenchPins bench, int row, int column) {
    row(bench, row);
    bench.bus("A", column).low("CAS/");
    char level = bench.out("Q");
    bench.commit(Phase.C_COL);
    bench.high("CAS/");
    return level;
  }

  /** Fills the chip with the level that lower or upper rows do not rest at. */
  private static void charge(BenchPins bench) {
    for (int cell = 0; cell < 65_536; cell++) {
      write(bench, cell >> 8, cell & 0xFF, cell < 32_768);
    }
  }

  private static int forgotten(BenchPins bench) {
    int lost = 0;
    for (int cell = 0; cell < 65_536; cell++) {
      lost += read(bench, cell >> 8, cell & 0xFF) == (cell < 32_768 ? 'L' : 'H') ? 1 : 0;
    }
    return lost;
  }

  private static BenchPins powered(long grain) {
    BenchPins bench = new BenchPins(new Dram4164());
    bench.powerOn(index -> grain);
    return bench;
  }

  @Test
  void cell_written_readsBackAtItsRowAndColumnOnly() {
    write(bench, 0x12, 0x34, true);
    assertEquals('H', read(bench, 0x12, 0x34));
    assertEquals('L', read(bench, 0x34, 0x12));
    assertEquals('L', read(bench, 0x12, 0x35));
    assertEquals('L', read(bench, 0x13, 0x34));
  }

  @Test
  void cell_writtenLow_readsLow() {
    write(bench, 0xFF, 0xFF, true);
    write(bench, 0xFF, 0xFF, false);
    assertEquals('L', read(bench, 0xFF, 0xFF));
  }

  @Test
  void row_strobed_staysWhileTheAddressPinsCarryTheColumn() {
    write(bench, 0x05, 0xA0, true);
    row(bench, 0x05);
    bench.bus("A", 0xA0).low("CAS/");
    bench.commit(Phase.C_COL);
    bench.commit(Phase.C_END);
    assertEquals('H', bench.out("Q"));
    assertEquals('L', bench.bus("A", 0xA1).out("Q"));
  }

  @Test
  void row_inTheVideoHalf_isTakenToo() {
    write(bench, 0x21, 0x43, true);
    bench.bus("A", 0x21).low("RAS/");
    bench.commit(Phase.V_ROW);
    bench.bus("A", 0x43).low("CAS/");
    bench.commit(Phase.V_COL);
    bench.commit(Phase.V_LATCH);
    assertEquals('H', bench.out("Q"));
  }

  @Test
  void output_columnStrobeHigh_letsGo() {
    row(bench, 0);
    assertEquals('Z', bench.out("Q"));
  }

  /** The column is taken as its strobe falls, which it does not if it lies low. */
  @Test
  void columnStrobe_lowBeforeTheRow_readsAndWritesNothing() {
    write(bench, 0x34, 0x34, true);
    bench.low("RAS/", "CAS/").bus("A", 0x34);
    bench.commit(Phase.C_ROW);
    assertEquals('Z', bench.out("Q"));
    bench.set("D", false).low("WE/");
    bench.commit(Phase.C_COL);
    bench.commit(Phase.C_END);
    bench.high("WE/", "CAS/");
    assertEquals('H', read(bench, 0x34, 0x34));
  }

  /** Twenty seconds, by which a row left alone has lost half; no cell is lost before 150 ms. */
  @Test
  void columnStrobe_lowBeforeTheRow_refreshesTheRow() {
    BenchPins chip = powered(14);
    charge(chip);
    for (int tenth = 0; tenth < 200; tenth++) {
      chip.passMicroseconds(SECOND / 10);
      for (int row = 0; row < 256; row++) {
        chip.high("WE/").low("RAS/", "CAS/").bus("A", row);
        chip.commit(Phase.C_ROW);
      }
    }
    assertEquals(0, forgotten(chip));
  }

  @Test
  void output_earlyWrite_letsGo() {
    row(bench, 0);
    bench.low("WE/", "CAS/");
    assertEquals('Z', bench.out("Q"));
  }

  @Test
  void columnStrobe_withoutRowStrobe_neitherReadsNorWrites() {
    write(bench, 7, 9, true);
    bench.high("RAS/", "CAS/", "WE/").bus("A", 7);
    bench.commit(Phase.C_ROW);
    bench.bus("A", 9).set("D", false).low("CAS/");
    assertEquals('Z', bench.out("Q"));
    bench.low("WE/");
    bench.commit(Phase.C_COL);
    assertEquals('H', read(bench, 7, 9));
  }

  @Test
  void write_inARowPhase_storesNothing() {
    write(bench, 0, 0, true);
    bench.set("D", false).low("RAS/", "CAS/", "WE/").bus("A", 0);
    bench.commit(Phase.C_ROW);
    assertEquals('H', read(bench, 0, 0));
  }

  /** A row every 15 us, 256 rows in 3.84 ms: within the 4 ms of the data sheet, for two seconds. */
  @Test
  void rows_refreshedInTime_keepWhatTheyHold() {
    BenchPins chip = powered(11);
    charge(chip);
    for (int round = 0; round < 520; round++) {
      for (int row = 0; row < 256; row++) {
        chip.passMicroseconds(15);
        row(chip, row);
      }
    }
    assertEquals(0, forgotten(chip));
  }

  @Test
  void rows_leftFor149Milliseconds_keepWhatTheyHold() {
    BenchPins chip = powered(12);
    charge(chip);
    chip.passMicroseconds(149_000);
    assertEquals(0, forgotten(chip));
  }

  /** One in a hundred of 65,536 is 655; the spread of such a count is 25, so five of it is 127. */
  @Test
  void rows_leftForASecond_loseOneCellInAHundred() {
    BenchPins chip = powered(13);
    charge(chip);
    chip.passMicroseconds(SECOND);
    int lost = forgotten(chip);
    assertTrue(lost > 655 - 127 && lost < 655 + 127, "lost " + lost);
  }

  /** Half of 65,536 is 32,768; the spread of such a count is 128, so five of it is 640. */
  @Test
  void rows_leftFor20Seconds_loseHalf() {
    BenchPins chip = powered(14);
    charge(chip);
    chip.passMicroseconds(20L * SECOND);
    int lost = forgotten(chip);
    assertTrue(lost > 32_768 - 640 && lost < 32_768 + 640, "lost " + lost);
  }

  @Test
  void rows_leftForTenMinutes_loseAll() {
    BenchPins chip = powered(15);
    charge(chip);
    chip.passMicroseconds(600L * SECOND);
    assertEquals(65_536, forgotten(chip));
  }

  @Test
  void strobe_tooLate_doesNotBringBackWhatIsLost() {
    BenchPins chip = powered(16);
    charge(chip);
    chip.passMicroseconds(600L * SECOND);
    row(chip, 3);
    row(chip, 3);
    assertEquals('L', read(chip, 3, 200));
  }

  /**
   * Its 1 ms is over at 4, and no sound cell forgets before 150; rows of the lower half rest low.
   */
  @Test
  void shortLivedCell_leftFor4Milliseconds_isLostAndNoOther() {
    BenchPins chip = powered(17).with(Dram4164.SHORT_LIVED, 3 * 256 + 77);
    charge(chip);
    chip.passMicroseconds(4_000);
    assertEquals(1, forgotten(chip));
    assertEquals('L', read(chip, 3, 77));
  }

  @Test
  void disturbedCell_writtenItself_keepsUntilTheCellBesideItIsWritten() {
    BenchPins chip = powered(17).with(Dram4164.DISTURBED, 3 * 256 + 77);
    write(chip, 3, 76, true);
    write(chip, 3, 77, false);
    assertEquals('H', read(chip, 3, 76));
    assertEquals('L', read(chip, 3, 77));
    write(chip, 3, 78, true);
    assertEquals('L', read(chip, 3, 77));
    write(chip, 3, 76, true);
    assertEquals('H', read(chip, 3, 77));
  }

  @Test
  void shortLivedCell_refreshedInTime_isKept() {
    BenchPins chip = powered(18).with(Dram4164.SHORT_LIVED, 3 * 256 + 77);
    charge(chip);
    for (int round = 0; round < 20; round++) {
      chip.passMicroseconds(372);
      for (int row = 0; row < 256; row++) {
        row(chip, row);
      }
    }
    assertEquals(0, forgotten(chip));
  }
}
