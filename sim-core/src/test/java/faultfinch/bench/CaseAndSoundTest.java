package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The lid, the keys and the way of the sound. */
class CaseAndSoundTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");

  private static Bench bench(Board board, String... faults) {
    List<Fault> all = Arrays.stream(faults).map(f -> FaultKinds.parse(f, board)).toList();
    return new Bench(new Job(board, all, 1, Intake.none(), Prices.shipped()));
  }

  private static String does(Bench bench, String move) {
    return bench.perform(Move.parse(move)).reading().text();
  }

  @Test
  void lid_on_leavesOnlyWhatStandsOutsideInReach() {
    Bench bench =
        new Bench(new Job(SORREL, List.of(), 1, new Intake("", Map.of(), true), Prices.shipped()));
    assertTrue(bench.can(Move.parse("look: screen")));
    assertTrue(bench.can(Move.parse("power on")));
    assertFalse(bench.can(Move.parse("look: probe U9.D0 at the pin")));
    assertFalse(bench.can(Move.parse("reseat: U9")));
    assertEquals(List.of(), bench.possible(Moves.RESEAT));
    does(bench, "lid off");
    assertEquals(3, bench.spent().minutes());
    assertTrue(bench.can(Move.parse("reseat: U9")));
    assertFalse(bench.can(Move.parse("lid off")));
  }

  @Test
  void type_keysThatWork_bringAboutSomethingAndADeadOneNothing() {
    Bench bench = bench(SORREL);
    does(bench, "power on");
    String one = does(bench, "type: K1");
    String two = does(bench, "type: K1 K2");
    assertNotEquals("display reads 'SORREL'; sound silent", one);
    assertNotEquals(one, two);
    Bench open = bench(SORREL, "K1: open");
    does(open, "power on");
    assertEquals("display reads 'SORREL'; sound silent", does(open, "type: K1"));
    assertFalse(bench.can(Move.parse("type: U1")));
  }

  /** With the drive unplugged nobody answers, and the firmware gives up. */
  @Test
  void files_driveUnplugged_areOthersThanWithIt() {
    Bench bench = bench(TAMARISK);
    does(bench, "power on");
    String listed = does(bench, "files");
    does(bench, "unplug: DRV1");
    String nobody = does(bench, "files");
    assertTrue(listed.startsWith("display 'Tamarisk"), listed);
    assertNotEquals(listed, nobody);
    assertFalse(bench(SORREL).can(Move.parse("files")));
  }

  /**
   * K30 is W, which no exercise presses; K61 is up on the first joystick, C24 the capacitor between
   * the tape's head and the board. Only what is worked by hand, and the retest that does so, tells.
   */
  @Test
  void handsOn_keyStickAndTapeBroken_areMissedByThemAndTheRetest() {
    Bench bench = bench(TAMARISK, "K30: open", "K61: open", "C24: open");
    assertFalse(bench.can(Move.parse("sticks")));
    does(bench, "power on");
    assertTrue(does(bench, "every key").contains("| # qertyuiop*/ |"));
    assertTrue(does(bench, "sticks").contains("| Stick 1 - - L - -  level 3F |"));
    assertTrue(does(bench, "tape").contains("| The tape is silent. |"));
    String retest = does(bench, "retest all");
    assertTrue(retest.contains("# qertyuiop*/ |") && retest.contains("# qwertyuiop*/ |"), retest);
    assertTrue(retest.contains("sticks: ") && retest.contains("tape: "), retest);
    assertFalse(bench(SORREL).can(Move.parse("every key")));
    assertFalse(bench(SORREL).can(Move.parse("sticks")));
  }

  /** The last thing before the beeper is its resistor; with it open the sound ends there. */
  @Test
  void tracer_resistorOfTheBeeperOpen_hearsTheSoundBeforeItAndNotBehind() {
    Bench bench = bench(SORREL, "R2: open");
    does(bench, "power on");
    assertEquals("silent", does(bench, "look: listen"));
    assertNotEquals("silent", does(bench, "tracer: R2.1"));
    assertEquals("silent", does(bench, "tracer: LS1.1"));
  }

  /** The capacitor to the speaker is open: the amplifier's output still sounds. */
  @Test
  void tracer_couplingCapacitorOpen_hearsTheChordAtTheAmplifierOnly() {
    Bench bench = bench(TAMARISK, "C26: open");
    does(bench, "power on");
    assertTrue(does(bench, "tracer: U35.OUT1").contains("chord"), does(bench, "tracer: U35.OUT1"));
    assertEquals("silent", does(bench, "tracer: LS1.1"));
  }
}
