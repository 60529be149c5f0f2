package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Tamarisk's firmware on a plain map with the registers of its chips: what it does, and in time.
 */
class TamariskFirmwareTest {
  private static final byte[] ROM0 = TamariskImages.bytes("rom0.bin");
  private static final byte[] ROM1 = TamariskImages.bytes("rom1.bin");
  private static final Map<String, Integer> LABELS = TamariskImages.labels("rom0.lbl");

  /** The prompt is due this long after power-on. */
  private static final double PROMPT_SECONDS = 2.5;

  private static final String NAME = "  Tamarisk      Marrow Lane Works";
  private static final String ALL = "  256 pages passed";

  @Test
  void boot_allFitted_passesEveryStepInOrder() {
    TamariskMap map = map(1);
    for (String step :
        List.of(
            "M_RESET",
            "M_STACK",
            "M_PORTS",
            "M_SIZING",
            "M_STACK_GOOD",
            "M_SECOND_LOOK",
            "M_CLEAR",
            "M_VIDEO",
            "M_PAGE_BITS",
            "M_TIMER",
            "M_INTERRUPTS",
            "M_CHORD",
            "M_BANNER",
            "M_PROMPT")) {
      assertTrue(map.reaches(LABELS.get(step), PROMPT_SECONDS), () -> step + "\n" + map.trail());
    }
    assertEquals(NAME, map.row(1));
    assertEquals(ALL, map.row(2));
    assertFalse(map.lampLit());
    assertEquals(List.of(), map.undriven, "addresses where nothing answers");
  }

  /** Registers as the board's description has them: 44 slots a line, 312 lines a frame. */
  @Test
  void boot_allFitted_programsTheStandardPicture() {
    TamariskMap map = atPrompt(map(1));
    int[] standard = {36, 3, 3, 2, 20, 24, 4, 44, 12, 0, 0};
    assertArrayEquals(standard, Arrays.copyOf(map.video, standard.length));
    assertEquals(0x09, map.video[13] & 0x0D, "display on, no blink by the controller, interrupt");
  }

  /** 1,375,000 / 16 / 275 = 312.5 Hz and / 165 = 520.8 Hz. */
  @Test
  void boot_allFitted_soundsTheChordAndEndsIt() {
    TamariskMap map = atPrompt(map(1));
    assertEquals(275, map.tone[0] | map.tone[1] << 8);
    assertEquals(165, map.tone[2] | map.tone[3] << 8);
    assertEquals(List.of(275), map.sounded);
    assertEquals(0xCC, map.tone[5]);
    map.run(700);
    assertEquals(0, map.tone[0] | map.tone[1] | map.tone[2] | map.tone[3]);
  }

  /** What memory, attributes and registers wake up with shows nowhere on the bus. */
  @Test
  void boot_otherContentsAtPowerOn_doesTheSameCycleByCycle() {
    TamariskMap one = map(1);
    TamariskMap other = map(2);
    for (TamariskMap map : List.of(one, other)) {
      // The reset sequence reads three times at the stack pointer of power-on.
      assertTrue(map.reaches(LABELS.get("M_RESET"), PROMPT_SECONDS));
      map.digest();
      atPrompt(map).type("at 800\n");
    }
    assertEquals(one.mpu.cycle, other.mpu.cycle);
    assertEquals(one.digest(), other.digest());
    assertArrayEquals(one.attributes, other.attributes);
    assertArrayEquals(
        Arrays.copyOfRange(one.ram, 0x7000, 0x8000), Arrays.copyOfRange(other.ram, 0x7000, 0x8000));
  }

  @ParameterizedTest
  @EnumSource
  void boot_aChipOut_reachesThePromptWithItsBanner(TamariskMap.Chip out) {
    TamariskMap map = map(3).without(out);
    atPrompt(map);
    assertEquals(NAME, map.row(1));
    // Without the controller the window shows bank 0 only: 3 x 32 pages are not there.
    assertEquals(out == TamariskMap.Chip.CONTROLLER ? "  160 pages passed" : ALL, map.row(2));
    map.run(500);
    assertTrue(map.mpu.pc >= 0xE000 && !map.mpu.locked, map.trail());
    if (out != TamariskMap.Chip.CONTROLLER) {
      map.type("at 800\n");
      assertEquals(
          out == TamariskMap.Chip.ROM1 ? "ROM 1 does not answer." : "0800 00 00 00 00 00 00 00 00",
          map.row(6));
    }
  }

  @Test
  void boot_interruptLineHeldLow_reachesThePromptWithoutKeys() {
    TamariskMap map = map(4);
    map.interruptHeldLow = true;
    atPrompt(map);
    map.run(100);
    map.type("abc");
    assertEquals(". ", map.row(5) + " ");
  }

  /** Bit 4 of memory above page 1 reads 1: 254 pages do not hold, 2 cells of pages 0 and 1 do. */
  @Test
  void boot_bitStuckAbovePageOne_countsTwoPages() {
    TamariskMap map = map(5);
    map.memory = (cell, value) -> cell < 0x200 ? value : value | 0x10;
    assertTrue(map.reaches(LABELS.get("M_CLEAR"), PROMPT_SECONDS));
    assertEquals(2, map.ram[LABELS.get("good")] & 0xFF);
  }

  /** Bit 3 of all memory reads 0: no stack, so the board shows which line it is and calls. */
  @Test
  void boot_noMemoryHolds_showsTheLineAndPulsesTheLamp() {
    TamariskMap map = map(5);
    map.memory = (cell, value) -> value & 0xF7;
    assertTrue(map.reaches(LABELS.get("M_ALARM"), PROMPT_SECONDS), map::trail);
    assertEquals("  Memory does not hold these lines:", map.row(1));
    byte[] ribbon = {2, 2, 2, 2, 3, 2, 2, 2};
    int first = 0x7000 + 2 * 36 + 2;
    assertArrayEquals(ribbon, Arrays.copyOfRange(map.ram, first, first + 8));
    map.lampCameOn.clear();
    map.run(2100);
    // 65536 turns of 5 cycles lit, twice that dark: 0.72 s.
    assertEquals(3, map.lampCameOn.size());
    assertEquals(430, map.sounded.get(0));
  }

  @Test
  void prompt_keysTyped_areEchoed() {
    TamariskMap map = atPrompt(map(6));
    map.type("Abc 12;");
    assertEquals(". Abc 12;", map.row(5));
    map.type("\b\bx");
    assertEquals(". Abc 1x", map.row(5));
    assertEquals(5 * 36 + 8, map.video[11] | (map.video[12] & 3) << 8);
    assertEquals(0xA0, map.video[12] & 0xF0);
  }

  @Test
  void prompt_nothingTyped_cursorComesAndGoes() {
    TamariskMap map = atPrompt(map(6));
    int shown = 0;
    for (int i = 0; i < 64; i++) {
      map.run(20);
      shown += map.video[13] >> 1 & 1;
    }
    assertTrue(shown > 24 && shown < 40, () -> "cursor on in so many of 64 looks");
  }

  @Test
  void put_bytes_areShownByAt() {
    TamariskMap map = atPrompt(map(7));
    map.type("put 900 5a C3 7\nat 900\n");
    assertEquals("0900 5A C3 07 00 00 00 00 00", map.row(7));
  }

  @Test
  void page_two_isShownAndWrittenOn() {
    TamariskMap map = atPrompt(map(7));
    map.type("page 2\nabc");
    assertEquals(2, map.latch & 3);
    assertEquals(". abc", map.row(2, 4));
    assertEquals(NAME, map.row(1));
  }

  @Test
  void alt_pressed_lightsTheLampAndMakesCapitals() {
    TamariskMap map = atPrompt(map(7));
    map.press(1, false);
    map.run(60);
    map.press(-1, false);
    map.run(60);
    map.type("ab1");
    assertEquals(0x40, map.latch);
    assertEquals(". AB1", map.row(5));
  }

  @Test
  void sums_healthy_areAsWritten() {
    TamariskMap map = atPrompt(map(7));
    map.type("sums\n");
    map.run(400);
    assertTrue(map.row(6).matches("ROM 0 adds up to [0-9A-F]{4}, as written\\."), map.row(6));
    assertTrue(map.row(7).matches("ROM 1 adds up to [0-9A-F]{4}, as written\\."), map.row(7));
  }

  @Test
  void sums_oneByteOtherwise_areNotSo() {
    byte[] rom1 = ROM1.clone();
    rom1[0x1000] ^= 0x04;
    TamariskMap map = atPrompt(new TamariskMap(ROM0, rom1, 8));
    map.type("sums\n");
    map.run(400);
    assertTrue(map.row(6).endsWith(", as written."), map.row(6));
    assertTrue(map.row(7).endsWith(", not so."), map.row(7));
  }

  @Test
  void files_twoOnTheDrive_areListed() {
    TamariskMap map = atPrompt(map(9));
    map.drive.files.put("WILLOW", new byte[3]);
    map.drive.files.put("ALDER", new byte[4]);
    map.type("files\n");
    assertEquals("WILLOW", map.row(6));
    assertEquals("ALDER", map.row(7));
    assertFalse(map.lampLit());
  }

  @Test
  void fetch_aFile_isInMemory() {
    TamariskMap map = atPrompt(map(9));
    byte[] bytes = "A catkin.".repeat(40).getBytes(StandardCharsets.ISO_8859_1);
    map.drive.files.put("WILLOW", bytes);
    map.type("fetch willow\n");
    map.run(800);
    assertEquals("Fetched 0168 bytes.", map.row(6));
    assertArrayEquals(bytes, Arrays.copyOfRange(map.ram, 0x800, 0x800 + bytes.length));
    map.type("fetch elm 1000\n");
    assertEquals("The drive has no such file.", map.row(8));
  }

  @Test
  void keep_memory_isOnTheDrive() {
    TamariskMap map = atPrompt(map(9));
    map.type("put 900 41 42\nkeep note 900 102\n");
    map.run(800);
    assertEquals("Kept 0102 bytes.", map.row(7));
    byte[] kept = map.drive.files.get("NOTE");
    assertEquals(0x102, kept.length);
    assertEquals('B', kept[1]);
  }

  @Test
  void files_noDrive_saysSoWithinAFewTicks() {
    TamariskMap map = atPrompt(map(9));
    map.drive.there = false;
    map.type("files\n");
    assertEquals("The drive did not answer.", map.row(6));
  }

  @Test
  void files_linkControllerOut_saysSoWithinAFewTicks() {
    TamariskMap map = atPrompt(map(9).without(TamariskMap.Chip.LINK));
    map.type("files\n");
    assertEquals("The drive did not answer.", map.row(6));
  }

  @Test
  void hear_whatWasHummed_isInMemoryAgain() {
    TamariskMap writer = atPrompt(map(13));
    writer.tape = new TamariskTape();
    writer.type("put 900 FF 0 a5 5A\nhum 900 30\n");
    assertTrue(writer.tapeRuns());
    writer.run(1500);
    assertEquals("Hummed 0030 bytes.", writer.row(7));
    assertFalse(writer.tapeRuns());

    TamariskMap reader = atPrompt(map(14));
    reader.type("hear A00\n");
    reader.tape = writer.tape;
    reader.tape.play(reader.mpu.cycle + 100_000);
    assertTrue(reader.tapeRuns());
    reader.run(1500);
    assertEquals("Heard 0030 bytes.", reader.row(6));
    assertFalse(reader.tapeRuns());
    assertArrayEquals(
        Arrays.copyOfRange(writer.ram, 0x900, 0x930), Arrays.copyOfRange(reader.ram, 0xA00, 0xA30));
    reader.type("at a00\n");
    assertEquals("0A00 FF 00 A5 5A 00 00 00 00", reader.row(8));
  }

  /** 2048 looks of 2816 cycles: 4.2 s. */
  @Test
  void hear_nothingOnTheTape_givesUp() {
    TamariskMap map = atPrompt(map(15));
    map.type("hear A00\n");
    map.run(4500);
    assertEquals("The tape is silent.", map.row(6));
    map.type("hear A00\n");
    map.press(7, false);
    map.run(200);
    assertEquals("The tape is silent.", map.row(8));
  }

  /** A above middle C is 440 Hz: 1,375,000 / 16 / 440 = 195; the octave above half of it. */
  @Test
  void tune_notes_areSoundedOneAfterTheOther() {
    TamariskMap map = atPrompt(map(10));
    map.run(700);
    map.type("tune a+a\n");
    map.run(20);
    assertEquals(195, map.tone[0]);
    map.run(180);
    assertEquals(97, map.tone[0]);
    map.run(200);
    assertEquals(0, map.tone[0]);
  }

  @Test
  void sticks_nothingPressed_tellsTheLevels() {
    TamariskMap map = atPrompt(map(11));
    map.type("sticks\n");
    assertEquals("Stick 1 - - - - -  level 1C", map.row(6));
    assertEquals("Stick 2 - - - - -  level 1D", map.row(7));
  }

  @Test
  void lines_moreThanThePageHas_moveUpUnderTheBanner() {
    TamariskMap map = atPrompt(map(12));
    for (int i = 0; i < 9; i++) {
      map.type("at " + i + "0\n");
    }
    assertEquals(NAME, map.row(1));
    assertEquals(".", map.row(19));
    assertTrue(map.row(18).startsWith("0080 "), map.row(18));
    assertEquals(". at 80", map.row(17));
  }

  @Test
  void commands_allFitted_readNothingWhereNothingAnswers() {
    TamariskMap map = atPrompt(map(16));
    map.drive.files.put("ELM", new byte[] {1, 2});
    for (String line :
        List.of("files", "fetch elm", "keep oak 800 4", "tune c", "at 0", "put 900 1")) {
      map.type(line + "\n");
      map.run(100);
    }
    for (String line : List.of("page 1", "page 0", "sticks", "sums", "hum 800 1", "what")) {
      map.type(line + "\n");
      map.run(300);
    }
    map.run(1000);
    assertEquals("That word is not known here.", map.row(map.ram[LABELS.get("row")] - 1));
    assertEquals(List.of(), map.undriven, "addresses where nothing answers");
  }

  private static TamariskMap map(long seed) {
    return new TamariskMap(ROM0, ROM1, seed);
  }

  private static TamariskMap atPrompt(TamariskMap map) {
    assertTrue(map.reaches(LABELS.get("M_PROMPT"), PROMPT_SECONDS), () -> map.trail());
    return map;
  }
}
