package faultfinch.symptom;

import static faultfinch.symptom.TamariskRun.ALL;
import static faultfinch.symptom.TamariskRun.NAME;
import static faultfinch.symptom.TamariskRun.reached;
import static faultfinch.symptom.TamariskRun.toThePrompt;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.machine.Machine;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What faults of the picture half make of Tamarisk's picture, and why. */
class TamariskPicturePhenomenaTest {
  private static final int FIRST_LINE = 44;
  private static final int LINES = 240;
  private static final int FIRST_DOT = 48;
  private static final int COLUMNS = 36;

  /** The line floats at the shifter's TTL input and reads high: dot 3 is lit in every glyph. */
  @ParameterizedTest
  @EnumSource
  void characterRomPinOpen_everyCell_hasTheSameStripe(Machine.Kind kind) {
    Screen screen = Screen.look(toThePrompt(kind, "U24.D3: open pin"));
    for (int y = FIRST_LINE; y < FIRST_LINE + LINES; y++) {
      for (int column = 0; column < COLUMNS; column++) {
        assertTrue(
            screen.dot(FIRST_DOT + 8 * column + 4, y) != 0, "line " + y + " column " + column);
      }
    }
  }

  /** It never takes a word and sends what it woke up with, then zeros: dark, but with sync. */
  @ParameterizedTest
  @CsvSource({
    "PLAIN, U25.LD/: reads high",
    "FAST, U25.LD/: reads high",
    "PLAIN, U25.DOT: drives low",
    "FAST, U25.DOT: drives low"
  })
  void shiftRegisterSendsNothing_picture_isBlankWithSync(Machine.Kind kind, String fault) {
    Machine machine = toThePrompt(kind, fault);
    Screen screen = Screen.look(machine);
    assertTrue(screen.synced() && screen.dark());
    assertTrue(reached(machine, "M_FRAME"));
  }

  /**
   * A set that gets no frame sync begins its frames when it likes: lines are good, so the text can
   * be read while it runs by, from the dark above it on.
   */
  @EachMachine
  void frameSyncMissing_picture_rollsAndCanBeRead(Machine.Kind kind) {
    Screen screen = Screen.look(toThePrompt(kind, "track U21.VS/-MON1.VS/: open"));
    assertTrue(screen.synced() && screen.rolls());
    assertEquals(List.of(NAME, ALL), screen.rows().subList(0, 2));
    assertTrue(screen.says().endsWith(", rolls"), screen.says());
  }

  /** Without lines to follow it mutes. */
  @EachMachine
  void lineSyncMissing_picture_isNone(Machine.Kind kind) {
    Screen screen = Screen.look(toThePrompt(kind, "track U21.HS/-MON1.HS/: open"));
    assertEquals(Screen.NO_PICTURE, screen.says());
  }

  /**
   * Green is a bit of every ink: without it yellow is red, cyan is blue, white is magenta, and what
   * was green cannot be seen. The text stands where it stood.
   */
  @ParameterizedTest
  @EnumSource
  void oneAttributeBitStuck_inks_loseGreenAndNothingElse(Machine.Kind kind) {
    Screen screen = Screen.look(toThePrompt(kind, "U26.INK1: drives low"));
    assertEquals(List.of(NAME, ALL), screen.rows().subList(0, 2));
    assertEquals(Set.of("red", "blue", "magenta"), screen.inks());
  }

  /**
   * The green gun is always on, beside the text too: what lacks green is gone into the ground, and
   * the text is read against it, red in yellow.
   */
  @EachMachine
  void oneColourAlwaysOn_text_isReadOnThatGround(Machine.Kind kind) {
    Screen screen = Screen.look(toThePrompt(kind, "U27.2Y: drives high"));
    assertEquals(List.of(NAME, ALL), screen.rows().subList(0, 2));
    assertEquals(Set.of("green", "yellow", "cyan", "white"), screen.inks());
  }

  /**
   * The pin of attribute memory is cut off from the bus and from its TTL inputs: nothing but a MOS
   * input hangs on it, it falls low, and every ink is stored without its red.
   */
  @ParameterizedTest
  @EnumSource
  void dataPinOfAttributeMemoryOpen_inks_loseRedAndNothingElse(Machine.Kind kind) {
    Screen screen = Screen.look(toThePrompt(kind, "U26.D0: open pin"));
    assertEquals(List.of(NAME, ALL), screen.rows().subList(0, 2));
    assertEquals(Set.of("green", "blue", "cyan"), screen.inks());
  }

  /**
   * The even buffer lets go and its lines keep what the odd one drove: each even column shows its
   * left neighbour. {@code " Tamarisk"} becomes {@code " aaaaiikk"}.
   */
  @ParameterizedTest
  @EnumSource
  void evenBufferSilent_everySecondColumn_repeatsTheOneBefore(Machine.Kind kind) {
    Screen screen = Screen.look(toThePrompt(kind, "U22.OE/: reads high"));
    assertTrue(screen.rows().get(0).startsWith("aaaaiikk "), screen.says());
  }

  /** So with the odd one: {@code "Tamarisk"}, which begins in an even column, becomes TTmmrrss. */
  @ParameterizedTest
  @EnumSource
  void oddBufferSilent_everySecondColumn_isMissing(Machine.Kind kind) {
    Screen screen = Screen.look(toThePrompt(kind, "U23.OE/: reads high"));
    assertTrue(screen.rows().get(0).startsWith("TTmmrrss "), screen.says());
  }

  /**
   * A buffer whose clock never comes holds one code for good: every second column is the same,
   * fixed on the screen, and between them stands every second letter.
   */
  @ParameterizedTest
  @EnumSource
  void oddBufferNeverClocked_everySecondColumn_isTheSame(Machine.Kind kind) {
    Screen screen = Screen.look(toThePrompt(kind, "U23.CLK: reads low"));
    for (int y = FIRST_LINE; y < FIRST_LINE + LINES; y++) {
      for (int x = 0; x < 8; x++) {
        int line = (y - FIRST_LINE) % 12;
        boolean first = screen.dot(FIRST_DOT + 8 + x, FIRST_LINE + line) != 0;
        for (int column = 1; column < COLUMNS; column += 2) {
          boolean here = screen.dot(FIRST_DOT + 8 * column + x, y) != 0;
          assertEquals(first, here, "line " + y + " column " + column);
        }
      }
    }
  }

  /**
   * The picture's column is its row again, the processor's is not: memory passes, text does not.
   */
  @ParameterizedTest
  @EnumSource
  void pictureMultiplexerSelectStuck_memory_passesAndThePictureIsFromElsewhere(Machine.Kind kind) {
    Machine machine = toThePrompt(kind, "U17.S: reads low");
    assertTrue(reached(machine, "M_PROMPT"));
    assertEquals(1, TamariskRun.memory(machine, 0x11), "256 pages: the high byte of the count");
    assertTrue(!Screen.look(machine).rows().contains(NAME));
  }

  /**
   * Bit 5 of the cell address is always 1 on its way to the memory, so cells 32 to 63 stand where 0
   * to 31 should, and so on: bands that are there twice.
   */
  @ParameterizedTest
  @EnumSource
  void pictureMultiplexerOutputStuck_bands_areRepeated(Machine.Kind kind) {
    Machine machine = toThePrompt(kind, "U18.2Y: drives high");
    List<String> rows = Screen.look(machine).rows();
    assertTrue(reached(machine, "M_PROMPT"));
    assertEquals(2, rows.stream().filter(r -> r.startsWith("Tamarisk")).count(), rows + "");
  }
}
