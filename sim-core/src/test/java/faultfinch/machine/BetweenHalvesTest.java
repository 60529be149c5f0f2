package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Pad;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.part.RowMemory;
import faultfinch.signal.Pin;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A row strobe falls twice in a cycle, and so rises twice, where nothing keeps it down. */
class BetweenHalvesTest {
  private static final Board BOARD = BoardReader.shipped("tamarisk");

  private static Machine machine(String... faults) {
    List<Fault> parsed = List.of(faults).stream().map(f -> FaultKinds.parse(f, BOARD)).toList();
    return new Machine(Setup.healthy(BOARD, 1).with(parsed), Machine.Kind.FAST);
  }

  /** Memories whose strobe pin is taken to read high for good. */
  private static Set<String> neverStrobed(Machine machine) {
    Circuit c = machine.plain().circuit;
    Set<String> never = new TreeSet<>();
    for (int p = 0; p < c.parts.length; p++) {
      long strobe = c.parts[p].pinout().role(Pin.Role.LATCH);
      if (c.parts[p] instanceof RowMemory && (c.readMask[p] & c.readBits[p] & strobe) != 0) {
        never.add(c.refs[p]);
      }
    }
    return never;
  }

  /** The clock is 11 MHz by 8, and a cycle has two halves. */
  @Test
  void rowStrobe_goodBoard_hasTwiceTheClocksRateAndNothingElseDoes() {
    Machine machine = machine();
    assertEquals(2.75e6, machine.clockHertz(new Pad("U12", "RAS/"), false), 1);
    assertEquals(0.3, machine.clockDuty(new Pad("U4", "RAS/"), false), 0.01);
    assertEquals(Set.of(), neverStrobed(machine));
    Circuit c = machine.plain().circuit;
    int moving = 0;
    for (boolean moves : c.betweenHalves) {
      moving += moves ? 1 : 0;
    }
    assertEquals(1, moving);
  }

  /**
   * A pin that floats falls low for good. An ohm holds the driver's high at 3.4 x 1/101 V; 470 ohms
   * leave it 2.8 V, which is high.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "U4.RAS/: open pin                            | [U4]",
        "U4.RAS/: reads low                           | [U4]",
        "track U9.RAS/-U10.RAS/: open                 | [U10, U11]",
        "U12.RAS/: clamps to ground through 1 ohm     | [U10, U11, U4, U5, U6, U7, U8, U9]",
        "U12: dead                                    | [U10, U11, U4, U5, U6, U7, U8, U9]",
        "U12.RAS/: drives low                         | [U10, U11, U4, U5, U6, U7, U8, U9]",
        "U12.RAS/: clamps to ground through 470 ohms  | []",
        "U4.CAS/: reads low                           | []"
      })
  void rowStrobe_thatDoesNotRise_strobesNothing(String fault, String memories) {
    assertEquals(memories, neverStrobed(machine(fault)).toString());
  }

  @Test
  void rowStrobe_driverStuck_hasNoRate() {
    Machine machine = machine("U12.RAS/: drives low");
    assertEquals(0, machine.clockHertz(new Pad("U4", "RAS/"), false));
  }

  /** Without a clock there are no halves. */
  @Test
  void rowStrobe_boardWithoutClock_hasNoRate() {
    Machine machine = machine("U1.PHI0: reads low");
    assertEquals(0, machine.clockHertz(new Pad("U12", "RAS/"), false));
  }
}
