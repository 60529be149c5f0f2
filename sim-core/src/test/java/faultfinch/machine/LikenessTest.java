package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Pad;
import faultfinch.fault.FaultKinds;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What can be told of a board's run from the run of a healthy one. */
class LikenessTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final List<Pad> LAMP = List.of(new Pad("LED1", "A"), new Pad("LED1", "K"));
  private static final Witness WITNESS = followed();

  private static Witness followed() {
    Machine machine = new Machine(Setup.healthy(TAMARISK, 1), Machine.Kind.PLAIN);
    Witness witness = Witness.of(machine);
    machine.runTo(60_000_000);
    return witness;
  }

  private static boolean same(String fault) {
    return same(fault, LAMP);
  }

  private static boolean same(String fault, List<Pad> eyed) {
    Setup setup = Setup.healthy(TAMARISK, 1).with(List.of(FaultKinds.parse(fault, TAMARISK)));
    return WITNESS.same(new Machine(setup, Machine.Kind.PLAIN), eyed);
  }

  @Test
  void healthyBoard_isLikeItself() {
    assertTrue(WITNESS.same(new Machine(Setup.healthy(TAMARISK, 1), Machine.Kind.PLAIN), LAMP));
  }

  @Test
  void boardOfAnotherSeed_isNotAlike_forItsMemoriesWakeUpOtherwise() {
    assertFalse(WITNESS.same(new Machine(Setup.healthy(TAMARISK, 2), Machine.Kind.PLAIN), LAMP));
  }

  /**
   * The processor drives 3.8 V behind 1.2 k: with 4.7 k to ground 3.0 V are left, which is high.
   */
  @Test
  void addressLine_pulledALittle_isAlike() {
    assertTrue(same("U1.A0: leaks to ground through 4k7"));
  }

  /** Of 3.8 V behind 1.2 k not a millivolt in a hundred is left over 1 ohm. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "U1.A0: clamps to ground through 1 ohm",
        "U1.A0: clamps to supply through 1 ohm",
        "U2.A0: reads high",
        "U2.A0: reads low",
        "U2.A0: open pin",
        "U1.D0: open joint"
      })
  void busLine_thatCannotMove_isNotAlike(String fault) {
    assertFalse(same(fault));
  }

  /** A contact that nobody closes joins nothing, be it cut off or not. */
  @Test
  void keyThatWasNotPressed_open_isAlike() {
    assertTrue(same("K6.1: open joint"));
  }

  /** A key that sticks joins a row and a column; when its row is scanned the column goes low. */
  @Test
  void stuckKey_isNotAlike() {
    assertFalse(same("K6: stuck closed"));
  }

  /** No part reads another bit of 3.0 V than of 3.8, but who takes the millivolts does. */
  @Test
  void pulledLine_isAlikeOnlyWhereNobodyTakesItsMillivolts() {
    String pulled = "U1.A0: leaks to ground through 4k7";
    assertTrue(same(pulled, List.of()));
    assertFalse(same(pulled, List.of(new Pad("U1", "A0"))));
  }

  /** A cell that is looked up and found to be 0 or 1 cannot be stuck at both. */
  @Test
  void cellUnderTheStack_stuckEitherWay_isNotAlikeInOneOfThem() {
    assertFalse(same("U4: cell 01FF bit 0 stuck high") && same("U4: cell 01FF bit 0 stuck low"));
  }
}
