package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Draw;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.FaultUniverse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * A fault that is not run, for the healthy board's run tells all, has the row of a run of its own.
 */
class SparedRunsTest {
  private static final long SEED = 5;
  private static final long BOARD_SEED = DictionaryBuild.BOARD_SEEDS.get(0);

  /** Spared faults, in turn from every kind that has any, and where their rows differ. */
  private static List<String> differences(Board board, int drawn, int howMany, int kinds) {
    SurveyRows alone = new SurveyRows(board);
    SurveyRows build = SurveyRows.ofMany(board);
    Map<String, Integer> spared = new LinkedHashMap<>();
    List<String> wrong = new ArrayList<>();
    int held = 0;
    for (Fault fault : new Draw(FaultUniverse.of(board), SEED).overKinds(drawn)) {
      if (held < howMany && build.spares(fault, BOARD_SEED)) {
        held++;
        spared.merge(fault.kind().name(), 1, Integer::sum);
        if (!alone
            .row(List.of(fault), BOARD_SEED)
            .equals(build.rows(List.of(fault), BOARD_SEED).get(0))) {
          wrong.add(fault.text());
        }
      }
    }
    assertTrue(spared.size() >= kinds, spared::toString);
    return wrong;
  }

  @Test
  void sorrel_faultsSpared_haveTheRowsOfTheirOwnRuns() {
    assertEquals(List.of(), differences(BoardReader.shipped("sorrel"), 200, 40, 3));
  }

  /** A key of the exercise does nothing any more if it is cut off. */
  @Test
  void sorrel_keysOfTheExercise_openAreRun() {
    Board board = BoardReader.shipped("sorrel");
    SurveyRows build = SurveyRows.ofMany(board);
    String key = board.exercise().get(0).ref();
    assertFalse(
        build.spares(FaultKinds.parse(key + ".1: open joint", board), BOARD_SEED), key + " is cut");
  }

  @Test
  @Tag("sweep")
  @Timeout(value = 3, unit = TimeUnit.HOURS)
  void tamarisk_manyFaultsSpared_haveTheRowsOfTheirOwnRuns() {
    assertEquals(List.of(), differences(BoardReader.shipped("tamarisk"), 4000, 400, 6));
  }
}
