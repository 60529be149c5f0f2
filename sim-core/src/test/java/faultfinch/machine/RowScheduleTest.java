package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultKinds;
import faultfinch.part.RowMemory;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RowScheduleTest {
  private static final long MILLISECOND = 1_000_000;

  /** 312 lines of 64 us. */
  private static final long FRAME = 19_968_000;

  @Test
  void rowsThatOnlyThePictureStrobes_areNotOlderThanAFrame() {
    // With a line of the refresh counter open, every second row pair is left to picture and
    // processor. 36 columns by 20 rows from 7000 on lie in the rows 70 to 72.
    Board board = BoardReader.shipped("tamarisk");
    Setup setup =
        new Setup(board, List.of(FaultKinds.parse("U14.1Q1: open pin", board)), Set.of(), 1, 0);
    Machine machine = new Machine(setup, Machine.Kind.FAST);
    machine.runTo(300 * MILLISECOND);
    machine.moment();
    int part = machine.plain().circuit.index("U9");
    PartPins pins = machine.plain().levels.pins[part];
    RowMemory memory = (RowMemory) machine.plain().circuit.parts[part];
    for (int row : new int[] {0x70, 0x71, 0x72}) {
      long age = machine.nanoseconds() - memory.strobedAt(pins, row);
      assertTrue(age <= FRAME, () -> "row of U9 not strobed for " + age / MILLISECOND + " ms");
    }
  }
}
