package faultfinch.part.mpu6502;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The cycles a technician would not expect: dummy reads, double writes, wrong pages, wraps. */
class BusCyclesTest {

  private static List<String> cycles(String bytes, String setUp) {
    return Breadboard.running(0x0400, bytes).set(setUp).steps(1).log.texts();
  }

  @Test
  void load_indexedWithinThePage_readsOnce() {
    assertEquals(
        List.of("0400 BD f", "0401 10 r", "0402 30 r", "3030 EA r"), cycles("BD 10 30", "x=20"));
  }

  @Test
  void load_indexedIntoTheNextPage_readsInTheWrongPageFirst() {
    assertEquals(
        List.of("0400 BD f", "0401 F0 r", "0402 30 r", "3010 EA r", "3110 EA r"),
        cycles("BD F0 30", "x=20"));
  }

  @Test
  void load_indexedPastTheEndOfMemory_comesRoundToPageZero() {
    assertEquals(
        List.of("0400 B9 f", "0401 F0 r", "0402 FF r", "FF10 EA r", "0010 EA r"),
        cycles("B9 F0 FF", "y=20"));
  }

  @Test
  void store_indexedWithinThePage_stillSpendsTheDummyRead() {
    assertEquals(
        List.of("0400 9D f", "0401 10 r", "0402 30 r", "3030 EA r", "3030 5A w"),
        cycles("9D 10 30", "x=20 a=5A"));
  }

  @Test
  void increment_absolute_writesTheOldValueBeforeTheNew() {
    assertEquals(
        List.of("0400 EE f", "0401 00 r", "0402 30 r", "3000 EA r", "3000 EA w", "3000 EB w"),
        cycles("EE 00 30", ""));
  }

  @Test
  void zeroPageX_indexed_readsTheBaseAndStaysInPageZero() {
    assertEquals(
        List.of("0400 B5 f", "0401 F0 r", "00F0 EA r", "0010 EA r"), cycles("B5 F0", "x=20"));
  }

  @Test
  void indexedIndirect_pointerAtTheEndOfPageZero_takesItsHighByteFromTheStart() {
    assertEquals(
        List.of("0400 A1 f", "0401 F0 r", "00F0 EA r", "00FF 34 r", "0000 12 r", "1234 EA r"),
        cycles("A1 F0", "x=0F 00FF=34 0000=12"));
  }

  @Test
  void indirectIndexed_pointerAtTheEndOfPageZero_takesItsHighByteFromTheStart() {
    assertEquals(
        List.of("0400 B1 f", "0401 FF r", "00FF 34 r", "0000 12 r", "1235 EA r"),
        cycles("B1 FF", "y=01 00FF=34 0000=12"));
  }

  @Test
  void jumpIndirect_pointerAtTheEndOfAPage_takesItsHighByteFromThatPagesStart() {
    Breadboard board = Breadboard.running(0x0400, "6C FF 30").set("30FF=34 3000=12 3100=56");
    board.steps(1);
    assertEquals(
        List.of("0400 6C f", "0401 FF r", "0402 30 r", "30FF 34 r", "3000 12 r"),
        board.log.texts());
    assertEquals(0x1234, board.mpu.pc);
  }

  @Test
  void branch_taken_readsOnAndThenInTheWrongPage() {
    assertEquals(List.of("0400 D0 f", "0401 10 r", "0402 EA r"), cycles("D0 10", ""));
    // 0402 - 128 = 0382; without the borrow 0482.
    assertEquals(List.of("0400 D0 f", "0401 80 r", "0402 EA r", "0482 EA r"), cycles("D0 80", ""));
  }

  @Test
  void subroutine_calledAndLeft_readsTheStackBeforeItPushesOrPulls() {
    Breadboard board = Breadboard.running(0x0400, "20 00 30").set("3000=60");
    board.steps(2);
    assertEquals(
        List.of(
            "0400 20 f",
            "0401 00 r",
            "01FF EA r",
            "01FF 04 w",
            "01FE 02 w",
            "0402 30 r", //
            "3000 60 f",
            "3001 EA r",
            "01FD EA r",
            "01FE 02 r",
            "01FF 04 r",
            "0402 30 r"),
        board.log.texts());
    assertEquals(0x0403, board.mpu.pc);
  }

  @Test
  void code_atTheEndOfMemory_runsOnAtTheStart() {
    Breadboard board = Breadboard.running(0xFFFF, "").set("FFFF=AD 0000=34 0001=12").steps(1);
    assertEquals(List.of("FFFF AD f", "0000 34 r", "0001 12 r", "1234 EA r"), board.log.texts());
    assertEquals(0x0002, board.mpu.pc);
  }

  @Test
  void storeUnderHighByte_acrossThePage_takesTheHighByteAfterTheCarry() {
    // SHX 30F0,Y: 3110; 31 + 1 = 32, and FF = 32.
    assertEquals(
        List.of("0400 9E f", "0401 F0 r", "0402 30 r", "3010 EA r", "3110 32 w"),
        cycles("9E F0 30", "y=20 x=FF"));
  }

  @Test
  void cycle_duringACall_isTheNumberOfTheCycleUnderWay() {
    long[] seen = new long[6];
    Mpu6502[] mpu = new Mpu6502[1];
    mpu[0] =
        new Mpu6502(
            new Bus() {
              private int calls;

              private int see(int value) {
                seen[calls++] = mpu[0].cycle;
                return value;
              }

              @Override
              public int fetch(int address) {
                return see(0xE6); // INC 00
              }

              @Override
              public int read(int address) {
                return see(0);
              }

              @Override
              public void write(int address, int value) {
                see(value);
                mpu[0].cycle += calls == 5 ? 10 : 0; // ready held low for ten cycles
              }
            });
    mpu[0].step();
    assertEquals(List.of(0L, 1L, 2L, 3L, 4L), Arrays.stream(seen).limit(5).boxed().toList());
    assertEquals(15, mpu[0].cycle);
  }

  @Test
  void run_untilACycle_endsWithTheInstructionThatReachesIt() {
    Breadboard board = Breadboard.running(0x0400, "EE 00 30"); // 6 cycles, then 2 each
    board.mpu.run(1);
    assertEquals(6, board.mpu.cycle);
    board.mpu.run(6);
    assertEquals(6, board.mpu.cycle);
    board.mpu.run(9);
    assertEquals(10, board.mpu.cycle);
  }
}
