package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Pad;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Tamarisk with its firmware. Reset ends after 55 ms; sizing writes and reads 64 KB twice, so that
 * the prompt is due well within 200 ms; a frame lasts 20 ms.
 */
class TamariskBootTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final int A_FRAME_AFTER_THE_PROMPT = 190;
  private static final long MS = 1_000_000;
  private static final int BEFORE_VIDEO = 136;
  private static final int IN_RESET = 54;
  private static final String NAME = "Tamarisk      Marrow Lane Works";
  private static final String ALL = "256 pages passed";

  @Test
  void boot_healthy_showsTheBannerAndTheMemoryThatPassed() {
    Machine machine = run(Setup.healthy(TAMARISK, 1), Machine.Kind.PLAIN);
    assertEquals(List.of(NAME, ALL), Screen.look(machine).rows().subList(0, 2));
    assertTrue(machine.milestones().keySet().containsAll(Set.of("M_PROMPT", "M_TICK", "M_FRAME")));
  }

  /**
   * Page bits and bank bits rest at 0 in the latch, whose enable reads high with nobody there: the
   * picture is right, but of the four banks in the window only the first is found. 32 KB and 8 KB
   * are 128 + 32 pages. Keys are looked at by the tick of the timer, which is out too.
   */
  @ParameterizedTest
  @EnumSource
  void boot_controllerOut_showsItsBannerWithoutTheBanksAndTakesNoKeys(Machine.Kind kind) {
    Setup without = new Setup(TAMARISK, List.of(), Set.of("U28"), 1, 0);
    Machine machine = TamariskRun.to(TamariskRun.AT_THE_PROMPT, BEFORE_VIDEO, kind, without);
    assertEquals(List.of(NAME, "160 pages passed"), Screen.look(machine).rows().subList(0, 2));
    assertFalse(machine.milestones().containsKey("M_TICK"));
  }

  /**
   * Held, the button keeps the timing capacitor empty; let go, it charges for 55 ms. What was typed
   * is gone from the picture and memory is sized again.
   */
  @Test
  void resetButton_pressedAtThePrompt_startsTheBoardAnew() {
    Machine machine = new Machine(Setup.healthy(TAMARISK, 1), Machine.Kind.FAST);
    machine.runTo(300 * MS);
    machine.hold("K9", true);
    machine.runTo(380 * MS);
    machine.hold("K9", false);
    machine.runTo(420 * MS);
    List<String> typed = Screen.look(machine).rows();
    assertTrue(String.join("", typed).contains("a"));
    machine.hold("K58", true);
    machine.runTo(500 * MS);
    assertFalse(running(machine));
    machine.hold("K58", false);
    machine.runTo(550 * MS);
    assertFalse(running(machine));
    machine.runTo(560 * MS);
    assertTrue(running(machine));
    machine.runTo(750 * MS);
    assertEquals(List.of(NAME, ALL), Screen.look(machine).rows().subList(0, 2));
    assertFalse(typed.equals(Screen.look(machine).rows()));
  }

  private static boolean running(Machine machine) {
    machine.rest();
    return machine.millivolts(new Pad("U1", "RES/"), false) > 2000;
  }

  @Test
  void resetButton_stuck_neverLetsTheBoardBegin() {
    Machine machine =
        run(
            Setup.healthy(TAMARISK, 1)
                .with(List.of(FaultKinds.parse("K58: stuck closed", TAMARISK))),
            Machine.Kind.FAST);
    assertFalse(machine.milestones().containsKey("M_RESET"));
  }

  /** From the ROM a 1 loses against the pin that pulls: 1.1 V (see {@link TamariskBoardTest}). */
  @ParameterizedTest
  @EnumSource
  void boot_controllerDrivesADataLineLow_showsNoBanner(Machine.Kind kind) {
    Setup setup = TamariskRun.setup("U28.D3: drives low");
    Machine machine = TamariskRun.to(A_FRAME_AFTER_THE_PROMPT, IN_RESET, kind, setup);
    assertFalse(machine.milestones().containsKey("M_BANNER"));
  }

  private static Machine run(Setup setup, Machine.Kind kind) {
    Machine machine = new Machine(setup, kind);
    machine.runTo(A_FRAME_AFTER_THE_PROMPT * 1_000_000L);
    return machine;
  }
}
