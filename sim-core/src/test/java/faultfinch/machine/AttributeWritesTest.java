package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultKinds;
import faultfinch.part.AttributeMemory;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The processor's writes into the memory that the picture half reads are taken from tables, and do
 * what they do when they are played.
 */
class AttributeWritesTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final String REF = "U26";
  private static final long MS = 1_000_000;

  /** Less than lie between two marks. */
  private static final int CYCLES = 1_200;

  /** When cells of a healthy board change: as all are cleared, and as the banner gets its inks. */
  private static final List<Long> WRITTEN = written();

  @Test
  void healthyBoard_whileAllCellsAreCleared_isPlayedFromTables() {
    Machine machine = new Machine(Setup.healthy(TAMARISK, 1), Machine.Kind.FAST);
    machine.runTo(WRITTEN.get(0));
    long byPhases = machine.byPhases();
    long cycles = machine.cycles();
    machine.runTo(WRITTEN.get(WRITTEN.size() - 1) + MS);
    double share = (double) (machine.byPhases() - byPhases) / (machine.cycles() - cycles);
    assertTrue(WRITTEN.size() > 5, WRITTEN + "");
    assertTrue(share < 0.05, "share of cycles played: " + share);
  }

  @Test
  void healthyBoard_whileCellsAreWritten_agrees() {
    Agreement.Outcome outcome = fromMarks(Setup.healthy(TAMARISK, 1));
    assertEquals(Optional.empty(), outcome.difference());
    assertTrue(outcome.compared() > 1_000 * WRITTEN.size(), outcome.compared() + "");
  }

  /** Both sides of the memory, its neighbours on the bus, and who tells it when. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "U26.CS/: open pin",
        "U26.CS/: reads low",
        "U26.RW: open pin",
        "U26.PHI2: reads high",
        "U26.A0: open pin",
        "U26.A2-U26.A3: bridge",
        "U26.D1: open pin",
        "U26.D0-U26.D1: bridge",
        "U26.CK: open pin",
        "U26.AOFF: reads high"
      })
  void faultyBoard_whileCellsAreWritten_agrees(String fault) {
    Setup setup = Setup.healthy(TAMARISK, 1).with(List.of(FaultKinds.parse(fault, TAMARISK)));
    assertEquals(Optional.empty(), fromMarks(setup).difference());
  }

  private static Agreement.Outcome fromMarks(Setup setup) {
    return Agreement.fromMarks(setup, List.of(), WRITTEN, CYCLES);
  }

  private static List<Long> written() {
    Machine machine = new Machine(Setup.healthy(TAMARISK, 1), Machine.Kind.FAST);
    return LongStream.range(55, 300)
        .map(ms -> ms * MS)
        .filter(at -> !Arrays.equals(cells(machine, at), cells(machine, at + MS)))
        .boxed()
        .toList();
  }

  private static int[] cells(Machine machine, long nanoseconds) {
    machine.runTo(nanoseconds);
    return LongStream.range(0, AttributeMemory.CELLS.count())
        .mapToInt(cell -> machine.cell(REF, AttributeMemory.CELLS, (int) cell))
        .toArray();
  }
}
