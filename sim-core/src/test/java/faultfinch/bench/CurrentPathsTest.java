package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.symptom.Watching;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;

class CurrentPathsTest {
  private static final Board BOARD = BoardReader.shipped("tamarisk");

  private static SortedMap<String, String> of(String... faults) {
    List<Fault> wrong = Arrays.stream(faults).map(f -> FaultKinds.parse(f, BOARD)).toList();
    Machine machine = new Machine(new Setup(BOARD, wrong, Set.of(), 1, 0), Watching.KIND);
    machine.runTo(CurrentPaths.begin(BOARD));
    return CurrentPaths.of(machine);
  }

  @Test
  void healthyBoard_needsNoCurrentToSpeakOf() {
    of().forEach((net, says) -> assertFalse(says.startsWith("from"), net));
  }

  @Test
  void outputThatIsAlwaysLow_isFollowed_whicheverOfTheLineItIs() {
    // 5 V through 1,000 ohms meet 0.1 V behind 150: 4.3 mA into the pin, whatever else drives D1.
    for (String ref : List.of("U1", "U34", "U28")) {
      String says = of(ref + ".D1: drives low").get("D1");
      assertTrue(says.endsWith(ref + ".D1"), says);
    }
  }

  @Test
  void outputThatIsAlwaysHigh_isFollowedToo() {
    // 3.8 V behind 1,200 ohms and 1,000 to ground: 1.7 mA.
    for (String ref : List.of("U34", "U28")) {
      String says = of(ref + ".D1: drives high").get("D1");
      assertTrue(says.contains(ref + ".D1"), says);
    }
  }

  @Test
  void selectOfAHealthyBoard_isHeldByWhatDrivesIt() {
    // U3, the ROM of commands, is not read while the board waits: its select is high all the time.
    assertEquals("held high by U40.3Y", of().get("ROM1/"));
  }

  @Test
  void lineHeldByAnInput_isFollowedToThatPin_whicheverOfTheLineItIs() {
    // MA6: driven by U16, U18 and U19, read by eight memories.
    assertTrue(
        of("U19.2Y3: clamps to supply through 1 ohm").get("MA6").startsWith("from U19.2Y3 "));
    assertTrue(of("U11.A6: clamps to supply through 1 ohm").get("MA6").startsWith("from U11.A6 "));
    // Held low, current flows to the pin that holds it.
    assertTrue(of("U11.A6: clamps to ground through 1 ohm").get("MA6").endsWith(" to U11.A6"));
  }

  @Test
  void weakLeak_isBelowWhatCanBeFollowed() {
    // 5 V over 4,700 ohms is 1 mA.
    assertEquals(CurrentPaths.NOTHING, of("U11.A6: clamps to supply through 4k7").get("MA6"));
  }

  @Test
  void nets_areAllButTheGround() {
    List<String> nets = CurrentPaths.nets(BOARD);
    assertTrue(nets.contains("MA6"));
    assertTrue(nets.contains("5VA"));
    assertFalse(nets.contains("GND"));
  }
}
