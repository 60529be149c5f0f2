package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ShowingTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");

  private static int showing(String text, Surroundings surroundings, int powerOn) {
    List<Fault> faults = List.of(FaultKinds.parse(text, SORREL));
    return Showing.of(new Setup(SORREL, faults, Set.of(), 1, powerOn, surroundings))
        .faults()
        .size();
  }

  @Test
  void warmFault_onAColdBoard_waits() {
    String fault = "U9.D0: open pin when warm";
    assertEquals(0, showing(fault, Surroundings.BENCH, 0));
    assertEquals(1, showing(fault, new Surroundings(4, Surroundings.Air.ROOM, false), 0));
    assertEquals(1, showing(fault, new Surroundings(0, Surroundings.Air.WARMED, false), 0));
    assertEquals(0, showing(fault, new Surroundings(9, Surroundings.Air.COOLED, false), 0));
  }

  @Test
  void coldFault_onAWarmBoard_isGone() {
    String fault = "U9.D0: open pin when cold";
    assertEquals(1, showing(fault, Surroundings.BENCH, 0));
    assertEquals(0, showing(fault, new Surroundings(5, Surroundings.Air.ROOM, false), 0));
  }

  @Test
  void faultAfterMinutes_showsFromThatMinute() {
    String fault = "U9.D0: open pin after 3 minutes";
    assertEquals(0, showing(fault, new Surroundings(2, Surroundings.Air.ROOM, false), 0));
    assertEquals(1, showing(fault, new Surroundings(3, Surroundings.Air.ROOM, false), 0));
  }

  @Test
  void shakenFault_showsWhilePressed() {
    String fault = "U9.D0: open pin when shaken";
    assertEquals(0, showing(fault, Surroundings.BENCH, 0));
    assertEquals(1, showing(fault, new Surroundings(0, Surroundings.Air.ROOM, true), 0));
  }

  @Test
  void faultInOnePowerOnOfFour_overManyPowerOns_showsInAboutAQuarter() {
    String fault = "U9.D0: open pin one power-on in 4";
    int shown = IntStream.range(0, 400).map(n -> showing(fault, Surroundings.BENCH, n)).sum();
    // Binomial, n 400, p 1/4: mean 100, deviation 8.7; five deviations either side.
    assertEquals(100, shown, 44);
  }

  @Test
  void lowVoltsFault_onAHealthyRail_waits_andOnALowOneShows() {
    String fault = "U9.D0: open pin at low volts";
    assertEquals(0, showing(fault, Surroundings.BENCH, 0));
    List<Fault> both =
        List.of(FaultKinds.parse(fault, SORREL), FaultKinds.parse("VR1: low", SORREL));
    assertEquals(
        2, Showing.of(new Setup(SORREL, both, Set.of(), 1, 0, Surroundings.BENCH)).faults().size());
  }
}
