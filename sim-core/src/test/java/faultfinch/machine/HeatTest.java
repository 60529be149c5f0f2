package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.fault.Bridge;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked examples of case temperatures and fights on Sorrel, in air of 25.0 degrees. */
class HeatTest {
  private static final Board BOARD = BoardReader.shipped("sorrel");
  private static final long SEED = 1;
  private static final long BOOTED_NS = 300_000_000;
  private static final int SETTLED_S = 3600;

  private static Machine running(Fault... faults) {
    Setup setup = Setup.healthy(BOARD, SEED).with(List.of(faults));
    Machine machine = new Machine(setup, Machine.Kind.FAST);
    machine.runTo(BOOTED_NS);
    return machine;
  }

  private static Fault fault(String text) {
    return FaultKinds.parse(text, BOARD);
  }

  /** U6.4Y rests high and U12.2Y low; neither goes anywhere. */
  private static final Bridge FIGHT = new Bridge(new Pad("U6", "4Y"), new Pad("U12", "2Y"));

  @Test
  void fight_ofTwoGates_warmsThoseTwoByVoltsTimesCurrent() {
    Heat heat = running(FIGHT).heat();
    // 200 mV behind 25 ohms against 3400 mV behind 100: 840 mV and 25.6 mA. The low side turns
    // 0.84 V * 25.6 mA = 21.5 mW into heat, the high side (5 - 0.84) V * 25.6 mA = 106.5 mW.
    assertEquals(21.5, heat.signalMilliwatts("U12"), 1);
    assertEquals(106.5, heat.signalMilliwatts("U6"), 1);
    Heat healthy = running().heat();
    assertEquals(0, healthy.signalMilliwatts("U6"), 1);
    assertEquals(25.6, heat.currentMilliamps() - healthy.currentMilliamps(), 1);
    // U6 rises 2 K at its own 20 mW, so 10.65 K more: warm. U12 2.2 K more: not to be felt.
    int more = heat.caseTenths("U6", SETTLED_S) - healthy.caseTenths("U6", SETTLED_S);
    assertEquals(106, more, 2);
    assertEquals(Finger.WARM, heat.finger("U6", SETTLED_S, healthy));
    assertEquals(Finger.NORMAL, heat.finger("U12", SETTLED_S, healthy));
  }

  @Test
  void fight_onBothMachines_isTheSame() {
    Setup setup = Setup.healthy(BOARD, SEED).with(List.of(FIGHT));
    Machine plain = new Machine(setup, Machine.Kind.PLAIN);
    plain.runTo(BOOTED_NS / 10);
    Machine fast = new Machine(setup, Machine.Kind.FAST);
    fast.runTo(BOOTED_NS / 10);
    for (PlacedPart part : BOARD.parts()) {
      assertEquals(plain.caseTenths(part.ref(), 60), fast.caseTenths(part.ref(), 60), part.ref());
    }
  }

  @Test
  void processor_healthy_settlesAtItsRiseInAboutFourMinutes() {
    Machine machine = running();
    // 17 K at 5 V; the rail of a board is off by up to 4 %, and its signals add a little.
    int rise = machine.caseTenths("U1", SETTLED_S) - 250;
    assertEquals(170.0 * machine.power().railMillivolts() / 5000, rise, 4);
    assertEquals(250, machine.caseTenths("U1", 0));
    // 1 - exp(-1) = 0.632 after a minute, 1 - exp(-4) = 0.982 after four.
    assertEquals(rise * 0.632, machine.caseTenths("U1", 60) - 250, 1);
    assertEquals(rise * 0.982, machine.caseTenths("U1", 240) - 250, 1);
  }

  @Test
  void regulator_healthy_heatsByWhatItTakesAway() {
    Machine machine = running();
    Power power = machine.power();
    int across = power.afterDiodeMillivolts() - power.railMillivolts();
    // About 4 V times what the parts take (all but the 4.5 mA of its own), 15 K per watt.
    double watts = across / 1000.0 * (machine.currentMilliamps() - 4.5) / 1000;
    double own = power.afterDiodeMillivolts() / 1000.0 * 4.5 / 1000;
    assertEquals(250 + 150 * (watts + own), machine.caseTenths("VR1", SETTLED_S), 3);
  }

  @Test
  void controller_withoutItsSupply_feelsCold() {
    Heat heat = running(fault("U8.VCC: open joint")).heat();
    assertEquals(Finger.COLD, heat.finger("U8", 240, running().heat()));
    // Nothing but air.
    assertEquals(250, heat.caseTenths("U8", SETTLED_S), 1);
  }

  @Test
  void board_withoutARail_isColdAndTakesNothing() {
    Machine machine = running(fault("VR1: dead"));
    assertFalse(machine.power().railUp());
    assertEquals(0, machine.currentMilliamps());
    assertEquals(250, machine.caseTenths("U1", SETTLED_S));
    assertEquals(0, machine.milestones().size());
  }

  @Test
  void processor_heldInResetOrWaiting_isMeasuredAtRest() {
    Fault reset = fault("U1.RES/: clamps to ground through 1 ohm");
    Fault waits = fault("U1.RDY: clamps to ground through 1 ohm");
    for (Fault held : List.of(reset, waits)) {
      Machine machine = running(held);
      long cycles = machine.cycles();
      assertTrue(machine.caseTenths("U1", SETTLED_S) > 400, held.text());
      assertEquals(cycles, machine.cycles());
    }
    // U6.1Y drives high, 3400 mV behind 100 ohms, into 1 ohm: 34 mV, 33.66 mA, 167 mW in U6.
    // Once the start is over, 300 ms on, it stays so.
    assertEquals(167, running(reset).heat().signalMilliwatts("U6"), 2);
  }

  @Test
  void shortedCapacitor_onABenchSupply_warmsUp() {
    Setup setup = Setup.healthy(BOARD, SEED).with(List.of(fault("C4: short")));
    Power power = Power.of(setup, new Feed.Bench(9000, 1000));
    // 801 mW at 60 K per watt.
    assertEquals(801, power.milliwatts("C4"));
    assertEquals(730, Heat.of(power, setup).caseTenths("C4", SETTLED_S), 1);
    // 48.06 K * 0.632.
    assertEquals(250 + 304, Heat.of(power, setup).caseTenths("C4", 60), 1);
  }

  @Test
  void finger_atEachBound_saysTheClassOfTheTable() {
    assertEquals(Finger.COLD, Finger.of(300, 350));
    assertEquals(Finger.NORMAL, Finger.of(301, 350));
    assertEquals(Finger.NORMAL, Finger.of(429, 350));
    assertEquals(Finger.WARM, Finger.of(430, 350));
    assertEquals(Finger.WARM, Finger.of(599, 350));
    assertEquals(Finger.HOT, Finger.of(600, 350));
  }

  @Test
  void overvolted_parts_areDeadInTheMachine() {
    Machine machine = running(fault("VR1: shorted"));
    assertFalse(machine.power().killed().isEmpty());
    Circuit circuit = machine.plain().circuit;
    for (String ref : machine.power().killed()) {
      assertFalse(circuit.alive[circuit.index(ref)], ref);
    }
  }

  @Test
  void heat_askedTwiceAtOneMoment_playsOnce() {
    Machine machine = running();
    machine.caseTenths("U1", 60);
    long cycles = machine.cycles();
    machine.currentMilliamps();
    machine.caseTenths("U2", 60);
    assertEquals(cycles, machine.cycles());
    assertTrue(machine.milestones().containsKey("M_BANNER"));
  }
}
