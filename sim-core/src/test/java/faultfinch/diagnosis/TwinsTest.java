package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TwinsTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");

  /**
   * All of these lie on the way of the supply. With the fuse open nothing comes; past the cut
   * return its current goes by the oscillator's branch and through the processor, whose two ground
   * pins are one inside.
   */
  @Test
  void rows_cutThatLeavesAnotherWay_isRunByItself() {
    List<Fault> alike =
        Stream.of("F1: open", "F1.2: open joint", "track J1.--C1.-: open")
            .map(text -> FaultKinds.parse(text, TAMARISK))
            .toList();
    List<String> run = new ArrayList<>();
    List<Row> rows =
        Twins.rows(
            alike,
            fault -> new Setup(TAMARISK, List.of(fault), Set.of(), 1, 0),
            fault -> {
              run.add(fault.text());
              return new Row(new TreeMap<>(), run.size());
            });
    assertEquals(List.of("F1: open", "track J1.--C1.-: open"), run);
    assertEquals(List.of(1L, 1L, 2L), rows.stream().map(Row::trail).toList());
  }
}
