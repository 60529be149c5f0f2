package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Setup;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TrailTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final Survey SURVEY = Survey.on(SORREL);
  private static final long HEALTHY = SURVEY.run(Setup.healthy(SORREL, 1)).trail();

  private static boolean excited(String fault) {
    Setup setup = Setup.healthy(SORREL, 1).with(List.of(FaultKinds.parse(fault, SORREL)));
    return SURVEY.run(setup).trail() != HEALTHY;
  }

  @Test
  void sameBoard_runAgain_leavesTheSameTrailAndAnotherBoardAnother() {
    assertEquals(HEALTHY, SURVEY.run(Setup.healthy(SORREL, 1)).trail());
    // Its memory wakes up otherwise.
    assertFalse(HEALTHY == SURVEY.run(Setup.healthy(SORREL, 2)).trail());
  }

  /** Inputs that are tied to ground and read low anyway, and one tied high. */
  @ParameterizedTest
  @ValueSource(strings = {"U6.4A: reads low", "U11.2D: reads low", "U11.2CLK: reads low"})
  void input_thatReadsWhatItIsTiedTo_isNotExcited(String fault) {
    assertFalse(excited(fault));
  }

  /** The inverter behind it drives the other way, into nothing. */
  @Test
  void tiedInput_readingTheOtherLevel_isExcitedThoughNoLookShowsIt() {
    assertTrue(excited("U6.4A: reads high"));
  }

  /** The lines of an address bus are each low and high in every window. */
  @ParameterizedTest
  @ValueSource(strings = {"U2.A0: reads low", "U2.A0: reads high", "U1.D0: open joint"})
  void busPin_gone_isExcited(String fault) {
    assertTrue(excited(fault));
  }

  /** Memory sizing leaves one byte in a cell, so one of the two is not what is stored. */
  @Test
  void cell_stuckEitherWay_isExcitedInOneOfThem() {
    assertTrue(
        excited("U3: cell 0234 bit 5 stuck low") || excited("U3: cell 0234 bit 5 stuck high"));
  }

  /** No pin moves otherwise if the supply is a little lower, but the supply does. */
  @Test
  void supply_sagging_isExcited() {
    assertTrue(excited("VR1: low"));
  }
}
