package faultfinch.symptom;

import static faultfinch.symptom.TamariskRun.NAME;
import static faultfinch.symptom.TamariskRun.memory;
import static faultfinch.symptom.TamariskRun.reached;
import static faultfinch.symptom.TamariskRun.toThePrompt;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.machine.Machine;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What faults in and around Tamarisk's memories look like, and why. */
class TamariskMemoryPhenomenaTest {
  private static final int AFTER_RESET = 57;

  /** Two turns of 256 x 256 turns of 5 cycles, and some: 657,400 cycles. */
  private static final int[] WAIT_478_MS = {
    0xA9, 2, 0xA2, 0, 0xA0, 0, 0xC8, 0xD0, 0xFD, 0xE8, 0xD0, 0xFA, 0x38, 0xE9, 1, 0xD0, 0xF5
  };

  /** Two pages are being tried byte by byte from 55 ms on; a bad bit is found within 12 ms. */
  private static Machine tried(Machine.Kind kind, String... faults) {
    return TamariskRun.to(110, 54, kind, TamariskRun.setup(faults));
  }

  /** The gaps in the ribbon under the plea, high bit first: lines that do not hold. */
  private static String gaps(Machine machine) {
    StringBuilder gaps = new StringBuilder();
    for (int i = 0; i < 8; i++) {
      int glyph = memory(machine, 0x7000 + 2 * 36 + 2 + i);
      gaps.append((glyph & 1) != 0 ? '-' : '.');
    }
    return gaps.toString();
  }

  /** No memory drives line 5 any more: TTL inputs read high, and page 1 will not hold a 0 there. */
  @EachMachine
  void memoryBitOpen_firmware_saysWhichLineAndGoesNoFurther(Machine.Kind kind) {
    Machine machine = tried(kind, "U9.Q: open pin");
    assertTrue(reached(machine, "M_NO_MEMORY"));
    assertFalse(reached(machine, "M_BANNER"));
    assertEquals("..-.....", gaps(machine));
    List<String> rows = Screen.look(machine).rows();
    assertTrue(rows.get(0).startsWith("memory does not hold"), rows + "");
  }

  /**
   * A memory takes its row as RAS/ falls and its column as CAS/ does: one whose pin floats, and so
   * lies low, or reads low inside, is asked for nothing, and TTL inputs read its line high.
   */
  @ParameterizedTest
  @CsvSource({"U9.RAS/: open pin, ..-.....", "U9.CAS/: reads low, ..-....."})
  void strobeThatNeverFalls_memory_isNotThere(String fault, String gaps) {
    Machine machine = tried(Machine.Kind.FAST, fault);
    assertTrue(reached(machine, "M_NO_MEMORY"));
    assertEquals(gaps, gaps(machine), fault);
  }

  /** The same of all eight: not even the plea can be written. */
  @ParameterizedTest
  @CsvSource({"U12.RAS/: drives low", "U42.2Y: drives low"})
  void strobesThatNeverFall_noMemory_isThere(String fault) {
    Machine machine = tried(Machine.Kind.FAST, fault);
    assertTrue(reached(machine, "M_NO_MEMORY"));
    assertFalse(reached(machine, "M_BANNER"));
  }

  /**
   * An owner sees which line it is by the gap in the ribbon, 7 on the left: glyphs 2 and 3, of
   * which a low in these bits makes no others.
   */
  @ParameterizedTest
  @CsvSource({
    "U6.Q: drives low, #####.##",
    "U7.Q: drives low, ####.###",
    "U10.Q: drives low, #.######"
  })
  void memoryBitBad_gapInTheRibbon_canBeRead(String fault, String ribbon) {
    List<String> rows = Screen.look(tried(Machine.Kind.FAST, fault)).rows();
    assertEquals(ribbon, rows.get(1));
  }

  /**
   * The address line stands still in one memory, so two places share a cell there: what differs on
   * the screen differs in bit 2 alone. 24h is a blank with that bit.
   */
  @EachMachine
  void addressPinOfOneMemoryOpen_text_isWrongByThatBitOnly(Machine.Kind kind) {
    List<String> rows = Screen.look(toThePrompt(kind, "U6.A3: open pin")).rows();
    String name = rows.stream().filter(r -> r.startsWith("Tamarisk")).findFirst().orElse("");
    assertNotEquals(NAME, name);
    assertEquals(NAME.length(), name.length());
    for (int i = 0; i < name.length(); i++) {
      int wrong = name.charAt(i) ^ NAME.charAt(i);
      assertTrue(wrong == 0 || wrong == 4, "column " + i + " of " + name);
    }
  }

  /**
   * Address line 1 of all eight memories is low with the row and with the column, whatever the
   * processor asks for: bytes 2 and 3 of a page are written over 0 and 1. Firmware finds memory
   * that does not hold, and of eight chips that share the blame none is bad.
   */
  @EachMachine
  void processorMultiplexerOutputStuck_firmware_blamesMemoryOfWhichNoneIsBad(Machine.Kind kind) {
    Machine machine = tried(kind, "U15.2Y: drives low");
    assertTrue(reached(machine, "M_NO_MEMORY"));
    assertFalse(reached(machine, "M_STACK_GOOD"));
  }

  /** The row is the column again: all pages with this low half of their address are one. */
  @EachMachine
  void processorMultiplexerSelectStuck_firmware_findsNoMemory(Machine.Kind kind) {
    assertTrue(reached(tried(kind, "U16.S: reads high"), "M_NO_MEMORY"));
  }

  /**
   * A leak of 150 ohms at a memory's data line. What is written comes through the 74LS245, 3.4 V
   * behind 30 ohms: 2.8 V, and is stored. What is read comes from the memory, 3.8 V behind 400: 1.0
   * V, and reads low. So only where the weak driver meets the leak there are errors; the memory
   * holds the right bit all the while, and is blamed for a leak at a picture buffer's leg.
   */
  @ParameterizedTest
  @CsvSource({
    "PLAIN, U4.D: leaks to ground through 150",
    "FAST, U4.D: leaks to ground through 150",
    "PLAIN, U23.D0: leaks to ground through 150",
    "FAST, U23.D0: leaks to ground through 150"
  })
  void leakAtAMemoryDataLine_bitIsStoredRightAndReadWrong(Machine.Kind kind, String leak) {
    int[] copy = {0xA9, 0xFF, 0x85, 0x20, 0xA5, 0x20, 0x85, 0x21};
    Machine machine = new TamariskProgram().bytes(copy).stop().run(kind, AFTER_RESET, leak);
    assertEquals(0xFF, memory(machine, 0x20));
    assertEquals(0xFE, memory(machine, 0x21));
    Machine boot = tried(kind, leak);
    assertTrue(reached(boot, "M_NO_MEMORY"));
  }

  /**
   * The same on the processor's side of the buffer: 470 ohms are nothing to a ROM (3.8 V behind 400
   * ohms: 2.05 V) but too much for the processor (behind 1,200: 1.07 V). Programs run, and every 1
   * it writes on this line is lost.
   */
  @EachMachine
  void leakAtAProcessorDataLine_onlyWhatTheProcessorWritesIsWrong(Machine.Kind kind) {
    int[] write = {0xA9, 0xFF, 0x85, 0x20, 0xA9, 0x01, 0x85, 0x21};
    String leak = "U31.1Y1: leaks to ground through 470";
    Machine machine = new TamariskProgram().bytes(write).stop().run(kind, AFTER_RESET, leak);
    assertEquals(0xFE, memory(machine, 0x20));
    assertEquals(0x00, memory(machine, 0x21));
    assertTrue(reached(tried(kind, leak), "M_NO_MEMORY"));
  }

  /**
   * With bit 4 of the refresh counter stuck low nobody strobes row 12h but the processor, and row
   * 02h is strobed twice as often. Both hold FF; after 0.48 s cells that keep 0.15 to 0.48 s have
   * fallen to rest: 0.6 in a hundred, some 12 of the 2,048 bits of row 12h, none of row 02h. A boot
   * is over long before: its short test passes.
   */
  @EachMachine
  void refreshCounterOutputStuck_rowsNobodyStrobes_decay(Machine.Kind kind) {
    Machine machine =
        new TamariskProgram()
            .bytes(0xA2, 0, 0xA9, 0xFF, 0x9D, 0, 2, 0x9D, 0, 0x12, 0xE8, 0xD0, 0xF7)
            .bytes(WAIT_478_MS)
            .bytes(0xAD, 0, 2, 0xAD, 0, 0x12)
            .stop()
            .run(kind, 530, 540, "U14.2Q0: drives low");
    assertEquals(0, lost(machine, 0x0200));
    int lost = lost(machine, 0x1200);
    assertTrue(lost >= 3 && lost <= 30, lost + " bits");
    assertTrue(reached(toThePrompt(kind, "U14.2Q0: drives low"), "M_PROMPT"));
  }

  /**
   * One cell of U9 keeps its charge for 0.44 ms when it is cold, and rows are strobed each 0.37 ms:
   * all pages from 02 to 7F hold FF, and the boot finds nothing. Ten minutes later the memory is
   * ten kelvin warmer and the cell keeps it for half as long: it is lost between two strobes,
   * alone.
   */
  @EachMachine
  void weakCell_passesWhenSwitchedOn_andFailsAfterMinutes(Machine.Kind kind) {
    assertEquals(List.of(), lostAfter(kind, 0));
    assertEquals(List.of(0x79C3), lostAfter(kind, 10));
    assertTrue(reached(toThePrompt(kind, "U9: cell 79C3 short-lived"), "M_PROMPT"));
  }

  /** Addresses of pages 02 to 7F that no longer hold FF after so many minutes. */
  private static List<Integer> lostAfter(Machine.Kind kind, int minutes) {
    Machine machine =
        new TamariskProgram()
            .bytes(0xA9, 0, 0x85, 0x10, 0xA9, 2, 0x85, 0x11, 0xA0, 0, 0xA9, 0xFF)
            .bytes(0x91, 0x10, 0xC8, 0xD0, 0xFB, 0xE6, 0x11, 0xA6, 0x11, 0xE0, 0x80, 0xD0, 0xF3)
            .stop()
            .after(minutes)
            .run(kind, 310, 320, "U9: cell 79C3 short-lived");
    return IntStream.range(0x200, 0x8000)
        .filter(address -> memory(machine, address) != 0xFF)
        .boxed()
        .toList();
  }

  private static int lost(Machine machine, int page) {
    int lost = 0;
    for (int i = 0; i < 256; i++) {
      lost += 8 - Integer.bitCount(memory(machine, page + i));
    }
    return lost;
  }
}
