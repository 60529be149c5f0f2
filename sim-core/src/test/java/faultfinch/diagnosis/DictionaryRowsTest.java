package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

class DictionaryRowsTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final long SEED = DictionaryBuild.BOARD_SEEDS.get(0);

  /** Looks of runs of their own are among them, or this holds nothing: currents, cold starts. */
  @Test
  void shown_lookByLook_isTheWholeRow() {
    RowSource rows = DictionaryRows.of(SORREL, ShippedDictionaries.of(SORREL).orElseThrow());
    List<Fault> faults = List.of(FaultKinds.parse("U9.D0: open contact", SORREL));
    Row whole = rows.row(faults, SEED);
    Set<String> of = new TreeSet<>();
    UnaryOperator<String> shown = rows.shown(faults, SEED);
    whole
        .shows()
        .forEach(
            (look, outcome) -> {
              assertEquals(outcome, shown.apply(look), look);
              of.add(look.split(" ")[0]);
            });
    assertTrue(of.containsAll(Set.of("screen", "flow", "cold")), of::toString);
    assertEquals("", shown.apply("no look of this board"));
  }
}
