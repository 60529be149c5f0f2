package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.part.Dram4164;
import faultfinch.part.RowMemory;
import java.util.ArrayList;
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

  @Test
  void boardHeldInReset_rowsOfTheRefreshCounter_areTwoCyclesApart() {
    // The counter shows a row in every second cycle, 256 rows in 512 cycles of 16/22 us. The
    // picture, between those, shows cells of the page at 7000, which lie in the rows 70 to 73. In
    // reset the processor reads FFFF, whose row is FF, in every cycle.
    Board board = BoardReader.shipped("tamarisk");
    String held = "track U26.GND-U21.GND and U21.RES/-EX1.RES/: bridge";
    Machine machine =
        new Machine(
            Setup.healthy(board, 1).with(List.of(FaultKinds.parse(held, board))),
            Machine.Kind.FAST);
    machine.runTo(20 * MILLISECOND);
    machine.moment();
    assertEquals(Standing.IN_RESET, machine.standing());
    double cycle = 16_000.0 / 22;
    int part = machine.plain().circuit.index("U9");
    PartPins pins = machine.plain().levels.pins[part];
    RowMemory memory = (RowMemory) machine.plain().circuit.parts[part];
    for (int row = 0; row < 254; row++) {
      if (row >= 0x6F && row <= 0x73) {
        continue;
      }
      long later = memory.strobedAt(pins, row + 1) - memory.strobedAt(pins, row);
      double apart = later > 0 ? later : later + 512 * cycle;
      assertEquals(2 * cycle, apart, 2, "row " + row);
      assertTrue(machine.nanoseconds() - memory.strobedAt(pins, row) <= 512 * cycle);
    }
    assertEquals(cycle, machine.nanoseconds() - memory.strobedAt(pins, 0xFF), 1);
  }

  @Test
  void cellsOfTheRowThatAHeldProcessorReads_areKept() {
    // The refresh counter leaves out the rows with the second bit set. A processor in reset reads
    // FFFF, row FF, in every cycle, so that even cells that keep 10 to 100 ms lose nothing; what is
    // lost there reads 1.
    Board board = BoardReader.shipped("tamarisk");
    List<Fault> faults = new ArrayList<>();
    faults.add(FaultKinds.parse("track U26.GND-U21.GND and U21.RES/-EX1.RES/: bridge", board));
    faults.add(FaultKinds.parse("U14.1Q1: drives low", board));
    List<Integer> lows = new ArrayList<>();
    Machine first = new Machine(Setup.healthy(board, 1), Machine.Kind.FAST);
    for (int cell = 0xFF00; cell < 0xFF40; cell++) {
      if (first.cell("U9", Dram4164.CELLS, cell) == 0) {
        lows.add(cell);
        faults.add(FaultKinds.parse(String.format("U9: cell %04X short-lived", cell), board));
      }
    }
    Machine machine = new Machine(Setup.healthy(board, 1).with(faults), Machine.Kind.FAST);
    machine.runTo(240 * MILLISECOND);
    assertEquals(Standing.IN_RESET, machine.standing());
    assertTrue(lows.size() > 10);
    for (int cell : lows) {
      assertEquals(0, machine.cell("U9", Dram4164.CELLS, cell), () -> "cell " + cell);
    }
  }
}
