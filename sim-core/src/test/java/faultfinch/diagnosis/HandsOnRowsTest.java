package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import faultfinch.symptom.HandsOn;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** K30 is W, R17 the way from the first joystick's wiper, C24 that from the tape's head. */
class HandsOnRowsTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final long SEED = DictionaryBuild.BOARD_SEEDS.get(0);

  @ParameterizedTest
  @CsvSource("sticks,R17: open")
  void rows_ofAGroup_areThoseOfEachAlone(String look, String member) {
    HandsOn tried =
        HandsOn.of(TAMARISK).stream().filter(h -> h.name().equals(look)).findFirst().orElseThrow();
    RowSource rows = new HandsOnRows(TAMARISK, tried);
    List<Fault> group =
        FaultUniverse.of(TAMARISK).groups().stream()
            .filter(g -> g.stream().anyMatch(f -> f.text().equals(member)))
            .findFirst()
            .orElseThrow();
    List<Row> together = rows.rows(group, SEED);
    Row healthy = rows.row(List.of(), SEED);
    for (int i = 0; i < group.size(); i++) {
      assertEquals(rows.row(List.of(group.get(i)), SEED), together.get(i), group.get(i).text());
      assertNotEquals(healthy, together.get(i), group.get(i).text());
    }
  }

  @ParameterizedTest
  @Tag("sweep")
  @CsvSource({"every key,K30.1: open joint", "tape,C24: open"})
  void rows_ofAGroup_areThoseOfEachAlone_keysAndTape(String look, String member) {
    rows_ofAGroup_areThoseOfEachAlone(look, member);
  }
}
