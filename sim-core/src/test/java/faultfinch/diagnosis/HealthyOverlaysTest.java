package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.BenchRom;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.symptom.Screen;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** That what overlays make of Tamarisk are computers that work, with the firmware as it is. */
class HealthyOverlaysTest {
  private static final long AT_THE_PROMPT = 190_000_000;
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final Map<String, String> SHOWN = shows(TAMARISK);

  /** Without an attribute memory nobody answers there. */
  private static final String NO_ATTRIBUTES = "tamarisk+no-attributes";

  static Stream<String> overlaid() {
    return BoardReader.shippedVariants().stream().filter(n -> n.startsWith("tamarisk+"));
  }

  private static Map<String, String> shows(Board board) {
    return new SurveyRows(board).row(List.of(), 1).shows();
  }

  private static String benchRom(Board board) {
    return new BenchRomRows(board, BenchRom.ALONE)
        .row(List.of(), 1)
        .shows()
        .get(BenchRom.ALONE.look());
  }

  /** A screen without its colours. */
  private static String text(String screen) {
    return screen.substring(0, screen.lastIndexOf('\''));
  }

  @ParameterizedTest
  @MethodSource("overlaid")
  void boot_reachesThePromptWithAllMemory(String name) {
    assertBoots(name, Machine.Kind.FAST);
  }

  @ParameterizedTest
  @Tag("sweep")
  @MethodSource("overlaid")
  void boot_onThePlainMachine_reachesThePromptWithAllMemory(String name) {
    assertBoots(name, Machine.Kind.PLAIN);
  }

  private static void assertBoots(String name, Machine.Kind kind) {
    Machine machine = new Machine(Setup.healthy(BoardReader.shipped(name), 1), kind);
    machine.runTo(AT_THE_PROMPT);
    assertEquals(
        List.of("Tamarisk      Marrow Lane Works", "256 pages passed"),
        Screen.look(machine).rows().subList(0, 2));
    assertTrue(machine.milestones().keySet().containsAll(Set.of("M_PROMPT", "M_TICK", "M_FRAME")));
  }

  @ParameterizedTest
  @MethodSource("overlaid")
  void exercise_answersAsTamariskDoes(String name) {
    Map<String, String> shown = shows(BoardReader.shipped(name));
    for (String look : List.of("screen", "typed")) {
      assertEquals(text(SHOWN.get(look)), text(shown.get(look)));
    }
    for (Map.Entry<String, String> e : SHOWN.entrySet()) {
      if (e.getKey().matches("(listen|lamp|key).*")) {
        assertEquals(e.getValue(), shown.get(e.getKey()), e.getKey());
      }
    }
  }

  /**
   * Lines that nobody drives read high through the LS inputs on them, F on four lines: 08 comes
   * back as 0F. Of the 256 cells each is written twice: page number and cell against a pattern,
   * which is F in one of 16 cells of each, so that 2 x 16 of 512 happen to be right.
   */
  @ParameterizedTest
  @MethodSource("overlaid")
  void benchRom_saysWhatItSaysOfTamarisk(String name) {
    String said = benchRom(BoardReader.shipped(name));
    if (name.equals(NO_ATTRIBUTES)) {
      assertTrue(
          said.contains("Station 06 wrote 08, read 0F at page A8: 480 of 512 differ."), said);
      assertTrue(
          said.contains("Station 05 wrote DA, read DA at page 80: 000 of 256 differ."), said);
    } else {
      assertEquals(benchRom(TAMARISK), said);
    }
  }
}
