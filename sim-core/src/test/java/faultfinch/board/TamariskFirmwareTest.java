package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Tamarisk's firmware on a plain map with the registers of its chips: what it does, and in time.
 */
class TamariskFirmwareTest {
  private static final Path FIRMWARE =
      Path.of("src/main/resources/faultfinch/boards/tamarisk/firmware");
  private static final byte[] ROM0 = bytes("rom0.bin");
  private static final byte[] ROM1 = bytes("rom1.bin");
  private static final Map<String, Integer> LABELS = labels("rom0.lbl", "rom1.lbl");

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
    assertTrue(map.loudness.contains(0xCC));
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
    map.stuckHigh = 0x10;
    assertTrue(map.reaches(LABELS.get("M_CLEAR"), PROMPT_SECONDS));
    assertEquals(2, map.ram[LABELS.get("good")] & 0xFF);
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
    map.drive.files.put("willow", new byte[3]);
    map.drive.files.put("alder", new byte[4]);
    map.type("files\n");
    assertEquals("willow", map.row(6));
    assertEquals("alder", map.row(7));
    assertFalse(map.lampLit());
  }

  @Test
  void fetch_aFile_isInMemory() {
    TamariskMap map = atPrompt(map(9));
    byte[] bytes = "A catkin.".repeat(40).getBytes(StandardCharsets.ISO_8859_1);
    map.drive.files.put("willow", bytes);
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
    byte[] kept = map.drive.files.get("note");
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

  private static TamariskMap map(long seed) {
    return new TamariskMap(ROM0, ROM1, seed);
  }

  private static TamariskMap atPrompt(TamariskMap map) {
    assertTrue(map.reaches(LABELS.get("M_PROMPT"), PROMPT_SECONDS), () -> map.trail());
    return map;
  }

  private static Map<String, Integer> labels(String... files) {
    Map<String, Integer> labels = new HashMap<>();
    for (String file : files) {
      new String(bytes(file), StandardCharsets.US_ASCII)
          .lines()
          .forEach(l -> labels.put(l.substring(5), Integer.parseInt(l.substring(0, 4), 16)));
    }
    return labels;
  }

  private static byte[] bytes(String file) {
    try {
      return Files.readAllBytes(FIRMWARE.resolve(file));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
