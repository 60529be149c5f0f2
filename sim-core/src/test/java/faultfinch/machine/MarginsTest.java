package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.CellStuck;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Faint cells: 30 in a million at 4.7 V, ten times as many for each quarter of a volt less. */
class MarginsTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");

  private static Setup with(String... texts) {
    List<Fault> faults = Stream.of(texts).map(t -> FaultKinds.parse(t, TAMARISK)).toList();
    return Setup.healthy(TAMARISK, 1).with(faults);
  }

  @Test
  void share_voltsOnPaper_growsTenfoldAQuarterOfAVolt() {
    assertEquals(0, Margins.share(4700));
    assertEquals(3e-4, Margins.share(4450), 1e-12);
    assertEquals(3e-3, Margins.share(4200), 1e-12);
  }

  @Test
  void cells_regulatorLow_areAsManyAsTheShareSays_andStickWhereTheyRest() {
    Setup setup = with("VR1: low");
    List<Fault> faint = Margins.of(setup, Power.of(setup));
    // At 4.3 V 30e-6 * 10^1.6 of 8 * 65,536 cells are 626; five times the root of it is 125.
    assertEquals(626, faint.size(), 125);
    for (Fault f : faint) {
      CellStuck cell = (CellStuck) f;
      assertEquals(cell.index() >= 32_768, cell.high(), f.text());
    }
  }

  @Test
  void cells_lowerRail_areTheSameAndMore() {
    Setup low = with("VR1: low");
    Setup rippled = with("brick: ripples");
    Set<Fault> few = new HashSet<>(Margins.of(rippled, Power.of(rippled)));
    Set<Fault> many = new HashSet<>(Margins.of(low, Power.of(low)));
    assertTrue(!few.isEmpty() && many.containsAll(few) && many.size() > few.size());
  }

  @Test
  void margins_healthyBoards_areNone() {
    for (String name : BoardReader.shippedNames()) {
      for (int seed = 0; seed < 20; seed++) {
        Setup setup = Setup.healthy(BoardReader.shipped(name), seed);
        assertEquals(List.of(), Margins.of(setup, Power.of(setup)), name);
      }
    }
  }

  /** Faint cells are tabled like stuck ones; what a rail does is settled before either runs. */
  @Test
  void agreement_rippledAndLow_bothMachinesPlayTheSame() {
    for (String fault : List.of("brick: ripples", "VR1: low", "VR2: low")) {
      Agreement.Outcome outcome = Agreement.ofRuns(with(fault), 75_000_000);
      assertTrue(outcome.difference().isEmpty(), fault + ": " + outcome.difference());
    }
  }

  @Test
  void agreement_slowAndRacing_bothMachinesPlayTheSame() {
    for (String fault : List.of("U4: slow at 179 ns", "U4: races at 99 ns", "U2: slow at 359 ns")) {
      Agreement.Outcome outcome = Agreement.ofRuns(with(fault), 60_000_000);
      assertTrue(outcome.difference().isEmpty(), fault + ": " + outcome.difference());
    }
  }
}
