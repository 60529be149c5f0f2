package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What does nothing once the part is out to which it leads. */
class SameWiringTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");

  private static Machine without(String part, List<Fault> faults) {
    Set<String> out = part.isEmpty() ? Set.of() : Set.of(part);
    return new Machine(new Setup(TAMARISK, faults, out, 1, 0), Machine.Kind.PLAIN);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // From the gate to the second ROM and no further.
        "track U40.3Y-U3.CE/: open | U3 | true",
        "track U40.3Y-U3.CE/: open |    | false",
        "U3.CE/: open joint        | U3 | true",
        // The gate itself, and two lines that go on to other chips.
        "U40.3Y: drives low        | U3 | false",
        "U3.A1-U3.A2: bridge       | U3 | false",
        "track U44.Y2/-U34.CS/: open | U34 | true",
        "track U44.Y2/-U34.CS/: open | U3  | false",
        // Nobody reads it before a key is down, and then it matters.
        "track K14.1-K11.1: open   | U3 | false",
        // Something is wrong inside a part that is still there.
        "U2: mis-programmed at 049E as 27 | U3 | false",
      })
  void faultOfAWayToAPart_isNoneWithoutIt(String fault, String out, boolean none) {
    String part = out == null ? "" : out;
    Machine faulty = without(part, List.of(FaultKinds.parse(fault, TAMARISK)));
    assertEquals(none, faulty.wiredAs(without(part, List.of())));
  }
}
