package faultfinch.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.part.Dram4164;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The whole universe of the large board. */
class TamariskFaultsTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final Anatomy ANATOMY = new Anatomy(TAMARISK);
  private static final FaultUniverse ALL = FaultUniverse.of(TAMARISK);

  /** Reset lasts 55 ms; then ports are set and memory is being sized. */
  private static final long SIZING_NS = 62_000_000;

  private static final int SAMPLE = 12;

  @Test
  void text_everyFault_readsBack() {
    for (Fault fault : ALL.faults()) {
      assertEquals(fault, FaultKinds.parse(fault.text(), ANATOMY));
    }
  }

  @Test
  void collapse_fortyChips_needsFourToSixThousandRuns() {
    System.out.println("Tamarisk: " + ALL.size() + " faults, " + ALL.collapsedSize() + " runs");
    assertTrue(ALL.collapsedSize() >= 4000 && ALL.collapsedSize() <= 6000);
  }

  /**
   * Rows and columns 0, 1, 2-3, 4-7 and so on to 128-255: nine regions of eight chips, two ways.
   */
  @Test
  void cells_ofDynamicMemory_areOneForEachRegionOfEachChip() {
    assertEquals(9 * 8 * 2, ALL.byKind().get(FaultKinds.CELL_STUCK).size());
    assertEquals(9 * 8 * 2, ALL.byKind().get(FaultKinds.CELL_DEFECT).size());
    List<Integer> cells = CellStuck.regions(ANATOMY, TAMARISK.part("U7").orElseThrow());
    assertEquals(9, cells.size());
    for (int region = 0; region < 9; region++) {
      // The number of the highest bit, from 1; 0 of 0.
      assertEquals(region, 32 - Integer.numberOfLeadingZeros(cells.get(region) % 256));
      assertEquals(region, 32 - Integer.numberOfLeadingZeros(cells.get(region) / 256));
    }
  }

  @Test
  void weights_all_areAboveZeroAndSumToOne() {
    ALL.entries().forEach(e -> assertTrue(e.weight() > 0, e.fault().text()));
    assertEquals(1, ALL.entries().stream().mapToDouble(FaultUniverse.Entry::weight).sum(), 1e-9);
  }

  @Test
  void repairs_everyFault_isSurelyCuredByOneOfThem() {
    List<RepairAction> repairs = ALL.repairs();
    for (Fault fault : ALL.faults()) {
      assertTrue(repairs.stream().anyMatch(r -> r.cures(fault)), fault.text());
    }
  }

  @Test
  void groups_fewOfThem_runAlike() {
    runAlike(SAMPLE);
  }

  @Test
  @Tag("sweep")
  void groups_many_runAlike() {
    runAlike(25 * SAMPLE);
  }

  private static void runAlike(int sample) {
    List<List<Fault>> shared = ALL.groups().stream().filter(g -> g.size() > 1).toList();
    for (int i = 0; i < shared.size(); i += shared.size() / sample) {
      List<Fault> group = shared.get(i);
      Fault one = group.get(0);
      Fault other = group.get(group.size() - 1);
      assertEquals(outcome(one), outcome(other), one.text() + " | " + other.text());
    }
  }

  private static List<Object> outcome(Fault fault) {
    Setup setup = Setup.healthy(TAMARISK, 1).with(List.of(fault));
    Machine machine = new Machine(setup, Machine.Kind.FAST);
    machine.runTo(SIZING_NS);
    List<Object> outcome = new ArrayList<>();
    outcome.add(machine.milestones());
    outcome.add(machine.cycles());
    outcome.add(machine.programCounter());
    outcome.add(machine.locked());
    for (int chip = 4; chip <= 11; chip++) {
      String ref = "U" + chip;
      outcome.add(
          IntStream.range(0, Dram4164.CELLS.count())
              .map(cell -> machine.cell(ref, Dram4164.CELLS, cell) * (cell + 1))
              .sum());
    }
    return outcome;
  }
}
