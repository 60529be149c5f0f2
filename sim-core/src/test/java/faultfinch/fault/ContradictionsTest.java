package faultfinch.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContradictionsTest {
  private static final Board BOARD = TestBoards.small();

  @ParameterizedTest
  @CsvSource({
    "U4.A: reads low,U4.A: reads high,what U4.A reads",
    "U4.Y0/: drives low,U4.Y0/: drives high,what U4.Y0/ drives",
    "U2: dead,U2: dead,same fault twice",
    "U2: dead,U2: dead when warm,same fault twice",
    "U2: dead,U2: reversed,whether U2 works",
    "U2: dead,U2.D0: drives low,U2 does nothing",
    "U3: cell 0000 bit 1 stuck low,U3: dead,U3 does nothing",
    "U2: in the socket of U8,U8: defect timer-dead,U8 does nothing",
    "R2: open,R2: drifts to 50 per cent,what R2 is",
    "C3: short,C3: leaks through 1k,what C3 is",
    "U3: cell 0000 bit 1 stuck low,U3: cell 0000 bit 1 stuck high,bit 1",
    "brick: sags,brick: dead,what the brick gives",
    "VR1: low,VR1: shorted,what VR1 is"
  })
  void in_twoThatExcludeEachOther_namesBothInOneLine(String one, String other, String reason) {
    Optional<Contradictions.Pair> pair = Contradictions.in(faults("U5.1A: open leg", one, other));
    String says = pair.orElseThrow().says();
    assertTrue(says.contains("'" + one + "' and '" + other + "'"), says);
    assertTrue(says.contains(reason), says);
    assertEquals(1, says.lines().count());
  }

  @ParameterizedTest
  @CsvSource({
    "U4.A: reads low,U4.B: reads high",
    "U4.A: open joint,U4.A: open leg",
    "U2: dead,U2.D0: clamps to ground through 470 ohms",
    "U2: dead,U2.D0: open joint",
    "U2.D0: clamps to ground through 470 ohms,U2.D0: clamps to supply through 470 ohms",
    "U3: cell 0000 bit 1 stuck low,U3: cell 0000 bit 2 stuck high",
    "U8: defect timer-dead,U8: defect tone-dead"
  })
  void in_twoThatCanStandTogether_isEmpty(String one, String other) {
    assertTrue(Contradictions.in(faults(one, other)).isEmpty());
  }

  private static List<Fault> faults(String... texts) {
    return Arrays.stream(texts).map(t -> FaultKinds.parse(t, BOARD)).toList();
  }
}
