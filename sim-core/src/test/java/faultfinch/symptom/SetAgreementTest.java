package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.bench.BenchRom;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.part.Monitor;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The fast machine plays the picture only while somebody looks; the plain one always. What stands
 * on the glass is the same. The first fault draws a longer frame for a while, which leaves nothing.
 */
class SetAgreementTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final long AT_NS = 500_000_000;

  @ParameterizedTest
  @Tag("sweep")
  @ValueSource(strings = "U26.VA4: reads high")
  void theLike_onBothMachines_isTheSame(String fault) {
    glass_onBothMachines_isTheSame(fault);
  }

  @ParameterizedTest
  @ValueSource(strings = "U32: badly seated at pins 1 to 18")
  void glass_onBothMachines_isTheSame(String fault) {
    Setup setup =
        new Setup(
            BenchRom.ALONE.on(TAMARISK),
            List.of(FaultKinds.parse(fault, TAMARISK)),
            Set.of(),
            1L,
            0);
    assertEquals(glass(setup, Machine.Kind.PLAIN), glass(setup, Machine.Kind.FAST));
  }

  private static List<Integer> glass(Setup setup, Machine.Kind kind) {
    Machine machine = new Machine(setup, kind);
    machine.runTo(AT_NS);
    Screen.look(machine);
    String set = Screen.of(TAMARISK).orElseThrow();
    return IntStream.range(0, Monitor.CELLS.count())
        .mapToObj(i -> machine.cell(set, Monitor.CELLS, i))
        .toList();
  }
}
