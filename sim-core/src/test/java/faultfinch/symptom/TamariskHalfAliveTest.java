package faultfinch.symptom;

import static faultfinch.symptom.Marginal.TAMARISK;
import static faultfinch.symptom.Marginal.allWell;
import static faultfinch.symptom.Marginal.reached;
import static faultfinch.symptom.Marginal.run;
import static faultfinch.symptom.Marginal.setup;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Pad;
import faultfinch.machine.Machine;
import faultfinch.machine.Surroundings;
import java.util.List;

/** Parts without one of their supplies or without ground, on both machines. */
class TamariskHalfAliveTest {
  private static Machine with(Machine.Kind kind, String fault) {
    return run(setup(TAMARISK, 1, Surroundings.BENCH, fault), kind);
  }

  /** Most millivolts at a pad while anything drives it. */
  private static int highest(Machine machine, String ref, String pin) {
    int[] highest = {0};
    Pad pad = new Pad(ref, pin);
    machine.play(
        100,
        (phase, ns) -> {
          int point = machine.point(pad, true);
          int driven = machine.floating(point) ? 0 : machine.millivolts(point);
          highest[0] = Math.max(highest[0], driven);
        });
    return highest[0];
  }

  private static int lowest(Machine machine, String ref, String pin) {
    int[] lowest = {Integer.MAX_VALUE};
    Pad pad = new Pad(ref, pin);
    machine.play(
        100,
        (phase, ns) ->
            lowest[0] = Math.min(lowest[0], machine.millivolts(machine.point(pad, true))));
    return lowest[0];
  }

  /**
   * The latch of page and bank bits cannot pull low: 2.6 V behind 470 ohms, which every input reads
   * high. The page bit so shows another page than firmware wrote; the processor lives.
   */
  @EachMachine
  void latchWithoutGround_outputs_floatUpAndThePictureIsFromElsewhere(Machine.Kind kind) {
    Machine machine = with(kind, "U29.GND: open pin");
    assertTrue(reached(machine, "M_PROMPT") && reached(machine, "M_TICK"));
    assertEquals(2600, lowest(machine, "U29", "Q0"));
    Screen screen = Screen.look(machine);
    assertTrue(screen.synced());
    assertFalse(screen.rows().contains("256 pages passed"));
  }

  /**
   * One memory of eight without ground drives no low, so that its line is bad in the first look.
   */
  @EachMachine
  void memoryWithoutGround_firmware_findsItsLineBad(Machine.Kind kind) {
    Machine machine = with(kind, "U4.GND: open joint");
    assertTrue(reached(machine, "M_NO_MEMORY"));
  }

  /**
   * The dead side's multiplexer feeds each address line of memory back into its rail: 3.4 V behind
   * 30 ohms against 0.7 V behind 100 leave (3400 / 30 + 700 / 100) / (1 / 30 + 1 / 100) = 2777 mV.
   * That still reads high, so memory passes without a picture.
   */
  @EachMachine
  void pictureRegulatorDead_addressLines_areFedBackAndStillRead(Machine.Kind kind) {
    Machine machine = with(kind, "VR2: dead");
    assertEquals(2777, highest(machine, "U15", "1Y"));
    assertTrue(reached(machine, "M_PROMPT"));
    assertFalse(Screen.look(machine).synced());
  }

  /** The video controller without its supply, and nothing else: timer and keys go on. */
  @EachMachine
  void supplyOfTheVideoControllerOpen_controller_givesNoSyncAndNoInterrupt(Machine.Kind kind) {
    Machine machine = with(kind, "U21.VCC: open joint");
    assertFalse(Screen.look(machine).synced());
    assertTrue(reached(machine, "M_TICK"));
    assertFalse(reached(machine, "M_FRAME"));
  }

  /** The address side's regulator feeds processor and memory: nothing starts. */
  @EachMachine
  void addressRegulatorDead_board_isDead(Machine.Kind kind) {
    Machine machine = with(kind, "VR1: dead");
    assertEquals(List.of(), List.copyOf(machine.milestones().keySet()));
    assertFalse(allWell(machine));
  }
}
