package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SweepTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");

  private static Fault fault(String text) {
    return FaultKinds.parse(text, SORREL);
  }

  private static Sweep swept(List<Fault> ran, String... faults) {
    List<Fault> all = List.of(faults).stream().map(SweepTest::fault).toList();
    Sweep sweep = new Sweep();
    sweep.run(
        FaultSpread.sorts(SORREL, all),
        f -> {
          ran.add(f);
          return switch (f.text()) {
            case "X1: dead" -> new Agreement.Outcome(Optional.of("cell 3"), 5);
            case "U8: dead" -> throw new IllegalStateException("no phase");
            default -> new Agreement.Outcome(Optional.empty(), 7);
          };
        });
    return sweep;
  }

  @Test
  void faults_thatHarmAlike_shareARunAndAreCountedEach() {
    List<Fault> ran = new ArrayList<>();
    Sweep sweep = swept(ran, "U9.D0: open contact", "U9.D0: open joint", "U9.D1: open joint");
    assertEquals(List.of(fault("U9.D0: open contact"), fault("U9.D1: open joint")), ran);
    // Two sorts: contact, and joint with two faults; each fault compared 7 cycles.
    assertTrue(sweep.table().contains("     1      1                  7  OPEN_CONTACT; DATA/"));
    assertTrue(sweep.table().contains("     2      2                 14  OPEN_JOINT; DATA/"));
    assertTrue(sweep.table().contains("     3      3                 21  2 sorts, 2 runs"));
  }

  @Test
  void difference_orFailure_isNotCountedAsAgreed() {
    Sweep sweep = swept(new ArrayList<>(), "X1: dead", "U8: dead", "U4: dead");
    assertEquals(
        List.of("X1: dead: cell 3", "U8: dead: java.lang.IllegalStateException: no phase"),
        sweep.differences());
    assertTrue(sweep.table().contains("     3      1 "), sweep.table());
  }

  @Test
  void harm_ofTheSamePinOtherwise_differs() {
    assertNotEquals(Sweep.harm(fault("U9.D0: reads low")), Sweep.harm(fault("U9.D0: reads high")));
    assertNotEquals(Sweep.harm(fault("U9.D0: reads low")), Sweep.harm(fault("U9.D1: reads low")));
  }
}
