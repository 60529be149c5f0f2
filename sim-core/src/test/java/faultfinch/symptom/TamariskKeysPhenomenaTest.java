package faultfinch.symptom;

import static faultfinch.symptom.TamariskRun.ALL;
import static faultfinch.symptom.TamariskRun.AT_THE_PROMPT;
import static faultfinch.symptom.TamariskRun.NAME;
import static faultfinch.symptom.TamariskRun.memory;
import static faultfinch.symptom.TamariskRun.millivolts;
import static faultfinch.symptom.TamariskRun.reached;
import static faultfinch.symptom.TamariskRun.toThePrompt;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.machine.HandedOver;
import faultfinch.machine.Machine;
import java.util.List;
import java.util.Set;

/** Keys, joystick switches, link and side port of a Tamarisk that is at fault, and why. */
class TamariskKeysPhenomenaTest {
  private static final int TYPED = 0x200;
  private static final long MS = 1_000_000;

  /** The first character taken after these keys went down, or a dot if none was. */
  private static char echo(Machine.Kind kind, Set<String> keys, String... faults) {
    Machine machine = TamariskRun.pressed(kind, TamariskRun.setup(faults), keys);
    return reached(machine, "M_ECHO") ? (char) memory(machine, TYPED) : '.';
  }

  /** K10 is E, in row 1 and column 1. */
  @EachMachine
  void healthy_keyWithTheJoystickPushed_isTheKey(Machine.Kind kind) {
    assertEquals('e', echo(kind, Set.of("K10")));
    assertEquals('e', echo(kind, Set.of("K61", "K62", "K10")));
  }

  /**
   * Joystick 1 up and down lead columns 0 and 1 to row 8, each through a diode. With the diode of
   * down shorted, row 1 pulled low reaches column 1 through the key, row 8 through the short, and
   * column 0 through the whole diode of up: A, in row 1 and column 0, is found first. With the
   * joystick let go there is no ghost.
   */
  @EachMachine
  void rowDiodeShorted_keyWithTheJoystickPushed_isAnother(Machine.Kind kind) {
    assertEquals('e', echo(kind, Set.of("K10"), "D11: short"));
    assertEquals('a', echo(kind, Set.of("K61", "K62", "K10"), "D11: short"));
  }

  /**
   * Eight columns hang on 5 V through one pack. With its common pin open they hang on each other: a
   * key in column 1 pulls the common point, and it all others, below the threshold of their TTL
   * inputs: (7 x 1.4 / 14.7k + 0.2 / 4.7k) / (7 / 14.7k + 1 / 4.7k) = 1.03 V there, 1.15 V at each
   * column against 1.3. The first column is found, whatever the key.
   */
  @EachMachine
  void packCommonOpen_columns_areCoupled(Machine.Kind kind) {
    assertEquals('a', echo(kind, Set.of("K10"), "RN1.COM: open joint"));
    assertEquals('b', echo(kind, Set.of("K18"), "RN1.COM: open joint"));
    assertEquals('f', echo(kind, Set.of("K18")));
  }

  /** A row whose driver is open is dead, and only that row. */
  @EachMachine
  void rowDriverOpen_thatRow_isDead(Machine.Kind kind) {
    assertEquals('.', echo(kind, Set.of("K18"), "U30.Y2/: open pin"));
    assertEquals('e', echo(kind, Set.of("K10"), "U30.Y2/: open pin"));
  }

  /** Asks for the drive's files; the plain machine answers for the last of the line. */
  private static Machine filesAsked(Machine.Kind kind, String... faults) {
    Machine fast = TamariskRun.from(Machine.Kind.FAST, AT_THE_PROMPT, TamariskRun.setup(faults));
    int at = AT_THE_PROMPT;
    for (String key : List.of("K18", "K11", "K35", "K10", "K29")) {
      fast.hold(key, true);
      fast.runTo((at += 70) * MS);
      fast.hold(key, false);
      fast.runTo((at += 50) * MS);
    }
    fast.hold("K4", true);
    Machine machine = HandedOver.to(kind, fast);
    machine.runTo((at + 110) * MS);
    return machine;
  }

  @EachMachine
  void healthyLink_filesAsked_answers(Machine.Kind kind) {
    Machine machine = filesAsked(kind);
    assertTrue(reached(machine, "M_FILES"));
    assertFalse(reached(machine, "M_NO_ANSWER"));
  }

  /**
   * ROM 1's mark is 4D 4C 57 31; with D0 open, which rests high, its second byte reads 4D, and ROM
   * 0 finds no commands. The banner was as ever, and the line is taken.
   */
  @EachMachine
  void socketContactOfRomOneOpen_lineEntered_isNoCommand(Machine.Kind kind) {
    Machine machine = filesAsked(kind, "U3.D0: open contact");
    assertTrue(reached(machine, "M_ENTER"));
    assertFalse(reached(machine, "M_COMMAND"));
    List<String> rows = Screen.look(machine).rows();
    assertEquals(List.of(NAME, ALL), rows.subList(0, 2));
    assertTrue(rows.stream().anyMatch(r -> r.contains("ROM 1 does not answer.")), rows + "");
  }

  /** The strobe never leaves the board: the drive hears nothing, and the firmware waits 20 ms. */
  @EachMachine
  void linkBufferOpen_drive_didNotAnswer(Machine.Kind kind) {
    assertTrue(reached(filesAsked(kind, "U33.1Y: open pin"), "M_NO_ANSWER"));
  }

  /**
   * The controller's word that a byte is through does not come, for its interrupt is looked at only
   * when nobody else has interrupted.
   */
  @EachMachine
  void interruptPinOfTheLinkOpen_drive_didNotAnswer(Machine.Kind kind) {
    Machine machine = filesAsked(kind, "U32.IRQ/: open pin");
    assertTrue(reached(machine, "M_NO_ANSWER"));
    assertTrue(reached(machine, "M_TICK") && reached(machine, "M_FRAME"));
  }

  /**
   * One fuse feeds the drive, the pull-ups of the link and those of the side port: no drive and no
   * side port, and the rest of the board is as ever.
   */
  @EachMachine
  void linkFuseOpen_driveAndSidePort_areDeadAndAllElseIsFine(Machine.Kind kind) {
    Machine machine = toThePrompt(kind, "F2: open");
    assertTrue(reached(machine, "M_TICK") && reached(machine, "M_FRAME"));
    assertTrue(millivolts(machine, "SP1.LK5") < 800);
    assertTrue(millivolts(machine, "SP1.SP3") < 2000, "nothing pulls the side port up");
    assertEquals(List.of(NAME, ALL), Screen.look(machine).rows().subList(0, 2));
    assertTrue(reached(filesAsked(kind, "F2: open"), "M_NO_ANSWER"));
    Machine healthy = toThePrompt(kind);
    assertEquals(5000, millivolts(healthy, "SP1.LK5"));
    assertEquals(5000, millivolts(healthy, "SP1.SP3"));
  }
}
