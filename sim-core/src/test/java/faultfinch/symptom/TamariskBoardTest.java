package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.machine.Machine;
import faultfinch.part.Dram4164;
import faultfinch.part.Monitor;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What Tamarisk's wiring does, seen with programs of a few bytes. */
class TamariskBoardTest {

  /** Reset ends after 55 ms, the program after 2 more. */
  private static final int PROGRAMMED = 58;

  /** Slots from the fall of HS/ to the first column: 3 + 2, then one to fetch; four halves each. */
  private static final int FIRST_CELL = 4 * 6;

  private static final int FIRST_LINE = 44;
  private static final int CODES = 8;
  private static final int IN_RESET = 1;
  private static final int AFTER_RESET = 56;

  /** Columns 0 to 7 of row 0 get the codes C1 to C8, all in one ink. */
  private static TamariskProgram picture(int ink) {
    TamariskProgram program = new TamariskProgram();
    int[] standard = {36, 3, 3, 2, 20, 24, 4, 44, 12, 0, 0, 0, 0, 1};
    for (int i = 0; i < standard.length; i++) {
      program.store(0xA300 + i, standard[i]);
    }
    for (int i = 0; i < CODES; i++) {
      program.store(0x7000 + i, 0xC1 + i).store(0xA800 + i, ink);
    }
    return program.stop();
  }

  @ParameterizedTest
  @EnumSource
  void picture_healthy_showsEachCodeInItsColumn(Machine.Kind kind) {
    assertEquals("C1 C2 C3 C4 C5 C6 C7 C8", seen(picture(7).run(kind, PROGRAMMED)));
  }

  /**
   * The buffer that lets go leaves the lines to the character ROM, MOS inputs only, as the other
   * buffer drove them half a microsecond before: its columns show their left neighbours.
   */
  @ParameterizedTest
  @EnumSource
  void picture_oddBufferNeverDrives_repeatsTheEvenColumns(Machine.Kind kind) {
    Machine machine = picture(7).run(kind, PROGRAMMED, "U23.OE/: reads high");
    assertEquals("C1 C1 C3 C3 C5 C5 C7 C7", seen(machine));
  }

  /** With one output of it open, the line keeps the bit of the even column only. */
  @ParameterizedTest
  @EnumSource
  void picture_oneOutputOfTheOddBufferOpen_takesThatBitFromTheLeft(Machine.Kind kind) {
    Machine machine = picture(7).run(kind, PROGRAMMED, "U23.Q1: open pin");
    assertEquals("C1 C0 C3 C6 C5 C4 C7 CA", seen(machine));
  }

  /** Bit 0 of every code comes from one memory: 1 is lost wherever it was stored. */
  @ParameterizedTest
  @EnumSource
  void picture_oneMemoryDrivesLow_losesThatBitEverywhere(Machine.Kind kind) {
    Machine machine =
        picture(7).run(kind, PROGRAMMED, "U4.Q: open pin", "U4.D: clamps to ground through 1");
    assertEquals("C0 C2 C2 C4 C4 C6 C6 C8", seen(machine));
  }

  /** Attributes off is a level of the addressable latch; held high, ink does not matter. */
  @ParameterizedTest
  @EnumSource
  void picture_attributeLineStuck_isPlainThoughInkIsNone(Machine.Kind kind) {
    assertEquals("00 00 00 00 00 00 00 00", seen(picture(0).run(kind, PROGRAMMED)));
    assertEquals(
        "C1 C2 C3 C4 C5 C6 C7 C8", seen(picture(0).run(kind, PROGRAMMED, "U29.Q4: drives high")));
  }

  /**
   * The controller's pin that never lets go pulls down through 150 ohms. From a ROM a 1 comes
   * through 400 ohms: (0.1/150 + 3.8/400) / (1/150 + 1/400) = 1.1 V reads low. From memory it comes
   * through the 74LS245, 3.4 V behind 30 ohms: 2.85 V reads high.
   *
   * <p>The processor's own 1 comes through 1,200 ohms and loses too. No byte of the program has bit
   * 3 set, so all there is to lose is data: LSR 10 to LSR 17 move what memory woke up with one to
   * the right, so that its bit 3 arrives as bit 2, and bit 3 of the result is lost on the way back.
   */
  @ParameterizedTest
  @EnumSource
  void controllerDrivesTheBus_dataFromMemory_survivesAndWhatIsWrittenDoesNot(Machine.Kind kind) {
    TamariskProgram program = new TamariskProgram();
    for (int address = 0x10; address < 0x18; address++) {
      program.bytes(0x46, address);
    }
    waiting(program);
    Machine asleep = program.run(kind, IN_RESET, "U28.D3: drives low");
    Machine awake = program.run(kind, AFTER_RESET, "U28.D3: drives low");
    int withBit3 = 0;
    for (int address = 0x10; address < 0x18; address++) {
      int was = memory(asleep, address);
      withBit3 |= was & 8;
      assertEquals(was >>> 1 & ~8, memory(awake, address));
    }
    assertEquals(8, withBit3);
  }

  /**
   * The same controller, a byte that needs bit 3: the ROM's CPX #FF arrives as F7, which is equal.
   */
  @ParameterizedTest
  @EnumSource
  void controllerDrivesTheBus_dataFromRom_isSpoilt(Machine.Kind kind) {
    TamariskProgram program = new TamariskProgram().bytes(0xA2, 0xF7, 0x86, 0x10, 0xE0, 0xFF);
    program.bytes(0xD0, 0x02, 0xE6, 0x10);
    waiting(program);
    assertEquals(0xF7, memory(program.run(kind, AFTER_RESET), 0x10));
    assertEquals(0xF8 & ~8, memory(program.run(kind, AFTER_RESET, "U28.D3: drives low"), 0x10));
  }

  /** INC 20 four times and back while it is not 0; no byte has bit 3 set. */
  private static void waiting(TamariskProgram program) {
    for (int i = 0; i < 64; i++) {
      program.bytes(0xE6, 0x20, 0xE6, 0x20, 0xE6, 0x20, 0xE6, 0x20, 0xD0, 0xF6);
    }
  }

  /** The codes of the first columns, read off the glyph's first line on the screen. */
  private static String seen(Machine machine) {
    Screen.look(machine);
    StringBuilder codes = new StringBuilder();
    for (int column = 0; column < CODES; column++) {
      int code = lit(machine, column);
      codes.append(String.format("%s%02X", column == 0 ? "" : " ", code));
    }
    return codes.toString();
  }

  /** Which of a cell's eight dots are lit in the first line of row 0, left one in bit 7. */
  private static int lit(Machine machine, int column) {
    int dots = 0;
    for (int half = 0; half < 4; half++) {
      int at = FIRST_LINE * Monitor.WIDTH + FIRST_CELL + 4 * column + half;
      int two = machine.cell("MON1", Monitor.CELLS, at);
      dots = dots << 2 | ((two & 7) != 0 ? 2 : 0) | (two >>> 3 != 0 ? 1 : 0);
    }
    return dots;
  }

  /** A byte of memory, bit by bit from its chips; the row is the high half of the address. */
  private static int memory(Machine machine, int address) {
    int value = 0;
    for (int bit = 0; bit < 8; bit++) {
      value |= machine.cell("U" + (4 + bit), Dram4164.CELLS, address) << bit;
    }
    return value;
  }
}
