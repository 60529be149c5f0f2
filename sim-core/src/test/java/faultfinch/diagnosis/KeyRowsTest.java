package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import java.util.List;
import org.junit.jupiter.api.Test;

class KeyRowsTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final long SEED = DictionaryBuild.BOARD_SEEDS.get(0);
  private static final RowSource ROWS = new KeyRows(TAMARISK);

  @Test
  void rows_ofAGroup_areThoseOfEachAlone() {
    List<Fault> group =
        FaultUniverse.of(TAMARISK).groups().stream()
            .filter(g -> g.stream().anyMatch(f -> f.text().equals("K30.1: open joint")))
            .findFirst()
            .orElseThrow();
    List<Row> together = ROWS.rows(group, SEED);
    Row healthy = ROWS.row(List.of(), SEED);
    for (int i = 0; i < group.size(); i++) {
      assertEquals(ROWS.row(List.of(group.get(i)), SEED), together.get(i), group.get(i).text());
      assertNotEquals(healthy, together.get(i), group.get(i).text());
    }
  }
}
