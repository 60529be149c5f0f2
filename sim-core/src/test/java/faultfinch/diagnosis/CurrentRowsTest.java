package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.FaultUniverse;
import java.util.List;
import org.junit.jupiter.api.Test;

class CurrentRowsTest {
  private static final Board BOARD = BoardReader.shipped("tamarisk");
  private static final CurrentRows ROWS = new CurrentRows(BOARD);

  @Test
  void groupOfFaults_eachHasTheRowOfARunOfItsOwn() {
    Fault one = FaultKinds.parse("U19.2Y3: clamps to supply through 1 ohm", BOARD);
    List<Fault> group =
        FaultUniverse.of(BOARD).groups().stream().filter(g -> g.contains(one)).findFirst().get();
    List<Fault> some = group.subList(0, Math.min(4, group.size()));
    assertTrue(some.size() > 1, "a line with several pins that can hold it");
    List<Row> together = ROWS.rows(some, 1);
    for (int i = 0; i < some.size(); i++) {
      assertEquals(ROWS.row(List.of(some.get(i)), 1).shows(), together.get(i).shows());
    }
    assertNotEquals(together.get(0).shows(), together.get(1).shows(), "the place of the fault");
  }

  @Test
  void look_isTheMoveOfThatNetAndHasItsPrice() {
    Move move = new Move(Moves.FLOW, "MA6");
    assertEquals(move, CurrentRows.move("flow MA6").orElseThrow());
    assertEquals("flow MA6", CurrentRows.look("MA6"));
    assertTrue(CurrentRows.move("probe U1.A0 at the pin").isEmpty());
    Prices prices = Prices.shipped();
    assertEquals(prices.of(move), new BenchPrices(prices).look("flow MA6"));
  }
}
