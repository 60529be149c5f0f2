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
import faultfinch.part.Dram4164;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Tape as sound: keys typed, the recorder's turns through coupling capacitor and comparator, the
 * port's tone through its divider onto the tape.
 */
class TamariskTapeTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final long MS = 1_000_000;
  private static final String DELIVERED = "MARROW LANE WORKS, TAPE ONE. WIND ME BACK, DO.\r\r";

  /** Key by character: its row and column from the nets of the board file. */
  private static final Map<Character, String> KEYS =
      Map.ofEntries(
          Map.entry('h', "K34"),
          Map.entry('u', "K14"),
          Map.entry('m', "K12"),
          Map.entry('e', "K10"),
          Map.entry('a', "K9"),
          Map.entry('r', "K21"),
          Map.entry('0', "K44"),
          Map.entry('2', "K39"),
          Map.entry('9', "K43"),
          Map.entry(' ', "K3"),
          Map.entry('\n', "K4"));

  private static Machine started(String... faults) {
    Setup setup =
        Setup.healthy(TAMARISK, 1)
            .with(Arrays.stream(faults).map(f -> FaultKinds.parse(f, TAMARISK)).toList());
    Machine machine = new Machine(setup, Machine.Kind.FAST);
    machine.runTo(600 * MS);
    return machine;
  }

  /** Keys are looked at every 10 ms. */
  private static void type(Machine machine, String text) {
    for (char c : text.toCharArray()) {
      machine.hold(KEYS.get(c), true);
      machine.runTo(machine.nanoseconds() + 60 * MS);
      machine.hold(KEYS.get(c), false);
      machine.runTo(machine.nanoseconds() + 60 * MS);
    }
  }

  private static String shows(Machine machine) {
    return String.join("\n", Screen.look(machine).rows());
  }

  private static String memory(Machine machine, int address, int length) {
    StringBuilder text = new StringBuilder();
    for (int at = address; at < address + length; at++) {
      int value = 0;
      for (int bit = 0; bit < 8; bit++) {
        int cell = at;
        value |= machine.cell("U" + (4 + bit), Dram4164.CELLS, cell) << bit;
      }
      text.append((char) value);
    }
    return text.toString();
  }

  /** 1,026 half turns of a leader and of 51 bytes are 0.5 s; the line takes 1.1 s to type. */
  @Test
  void hear_theTapeThatCameWithIt_bringsItsBlock() {
    Machine machine = started();
    type(machine, "hear a00\n");
    machine.runTo(machine.nanoseconds() + 1200 * MS);
    assertTrue(shows(machine).contains("Heard 0030 bytes."), shows(machine));
    assertEquals(DELIVERED, memory(machine, 0xA00, 48));
  }

  @Test
  void hum_withTheRecordKeyHeld_canBeHeardOverOtherMemory() {
    Machine machine = started();
    machine.hold("K57", true);
    type(machine, "hum 200 20\n");
    machine.runTo(machine.nanoseconds() + 1500 * MS);
    assertTrue(shows(machine).contains("Hummed 0020 bytes."), shows(machine));
    String written = memory(machine, 0x200, 0x20);
    machine.hold("K57", false);
    type(machine, "hear a00\n");
    machine.runTo(machine.nanoseconds() + 1200 * MS);
    assertTrue(shows(machine).contains("Heard 0020 bytes."), shows(machine));
    assertEquals(written, memory(machine, 0xA00, 0x20));
  }

  /**
   * The capacitor open, the head's track cut, the comparator without its reference or its output:
   * the port sees no turn. Loaded with 47 ohms the head gives 500 x 47 / 1047 = 22 mV, less than
   * the 50 mV of the comparator's reference.
   */
  @ParameterizedTest
  @CsvSource({
    "C24: open",
    "track TP1.IN-C24.1: open",
    "U35.OUT2: open pin",
    "U35.IN2: clamps to ground through 47",
    "U33.6Y: drives low"
  })
  void hear_pathBroken_findsTheTapeSilent(String fault) {
    Machine machine = started(fault);
    type(machine, "hear a00\n");
    machine.runTo(machine.nanoseconds() + 5000 * MS);
    assertFalse(shows(machine).contains("Heard"), shows(machine));
    assertTrue(shows(machine).contains("The tape is silent."), shows(machine));
  }

  /** Nobody pulls GO low any more: the tape runs from power-on and is over when it is asked for. */
  @Test
  void hear_haltLineOpen_comesTooLate() {
    Machine machine = started("U33.6Y: open pin");
    machine.runTo(1500 * MS);
    type(machine, "hear a00\n");
    machine.runTo(machine.nanoseconds() + 5000 * MS);
    assertTrue(shows(machine).contains("The tape is silent."), shows(machine));
  }

  /**
   * High the head stands at 500 mV behind 1k, 1061 ohms of the capacitor at 1.5 kHz and 100k to
   * ground: 490 mV at the comparator. Low it is 0, against 5 V over 100k and 1k: 50 mV.
   */
  @Test
  void comparator_whileTheTapeRuns_seesTheHeadOverTheCapacitor() {
    Machine machine = started();
    type(machine, "hear a00\n");
    List<Integer> seen = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      machine.runTo(machine.nanoseconds() + 150_000);
      machine.rest();
      seen.add(machine.millivolts(new Pad("U35", "IN2"), false));
    }
    assertTrue(seen.contains(0) && seen.stream().anyMatch(mv -> mv >= 485 && mv <= 495), "" + seen);
    assertEquals(50, machine.millivolts(new Pad("U35", "INV2"), false), 1);
  }
}
