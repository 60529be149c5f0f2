package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultKinds;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KinTest {
  private static final Board BOARD = BoardReader.shipped("tamarisk");
  private static final Machine HEALTHY = new Machine(Setup.healthy(BOARD, 1), Machine.Kind.FAST);

  @Test
  void pressedKey_joinsNetsThatOnlyAPortLooksAt_isKin() {
    Machine pressed = new Machine(Setup.healthy(BOARD, 1), Machine.Kind.FAST);
    pressed.hold("K18", true);
    assertTrue(pressed.plain().circuit.netCount < HEALTHY.plain().circuit.netCount);
    assertTrue(kinToHealthy(pressed));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "U1.D0: leaks to ground through 1k",
        "U15.1Y: open leg",
        "U29.Q0: clamps to ground through 1",
        "U13.1Q2: drives low",
        "U2.CE/: reads high"
      })
  void faultOnANetThatMatters_isNoKin(String fault) {
    Setup setup = Setup.healthy(BOARD, 1).with(List.of(FaultKinds.parse(fault, BOARD)));
    assertFalse(kinToHealthy(new Machine(setup, Machine.Kind.FAST)));
  }

  @Test
  void boardOfAnotherSeed_hasOtherThresholds_isNoKin() {
    assertFalse(kinToHealthy(new Machine(Setup.healthy(BOARD, 2), Machine.Kind.FAST)));
  }

  @Test
  void idleBoard_ticksAndFrames_areNotPlayed() {
    Machine machine = new Machine(Setup.healthy(BOARD, 1), Machine.Kind.FAST);
    machine.passTo(300_000_000);
    long before = machine.byPhases();
    machine.passTo(1_300_000_000);
    // 100 ticks and 50 frames, of which each frame's status is read from the clockwork: played.
    assertTrue(machine.byPhases() - before < 4 * 50, machine.byPhases() - before + " played");
  }

  private static boolean kinToHealthy(Machine other) {
    return Kin.are(HEALTHY.plain().circuit, reach(HEALTHY), other.plain().circuit, reach(other));
  }

  private static Reach reach(Machine machine) {
    return ((FastBus) machine.bus()).reach();
  }
}
