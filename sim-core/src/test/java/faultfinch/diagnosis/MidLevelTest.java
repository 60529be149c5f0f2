package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A mid level can be a busy line, a floating one or a fight; which it is, a look tells. */
class MidLevelTest {
  private static final int DRAWN = 5;
  private static final String MID = "mid";

  @Test
  void midLevel_onTamarisk_isPartedByALookBeforeAnyChipIsPulled() {
    Board board = BoardReader.shipped("tamarisk");
    FaultDictionary dictionary = ShippedDictionaries.of(board).orElseThrow();
    Suspects suspects =
        SuspectsFile.shipped(board, dictionary.origin()).orElseThrow().knownTo(dictionary);
    Diagnosis diagnosis = Diagnosis.of(dictionary, suspects, new BenchPrices(Prices.shipped()));
    List<String> looks = new ArrayList<>();
    for (int i = 0; i < dictionary.looks().size(); i++) {
      List<String> outcomes = dictionary.outcomes(i);
      if (dictionary.looks().get(i).startsWith("probe ") && outcomes.indexOf(MID) > 0) {
        looks.add(dictionary.looks().get(i));
      }
    }
    Collections.shuffle(looks, new Random(3));
    assertTrue(looks.size() >= DRAWN, "only " + looks.size());
    for (String look : looks.subList(0, DRAWN)) {
      Advice advice = diagnosis.next(Evidence.of(Observation.bench(look, MID)), 1);
      assertInstanceOf(Step.Observe.class, advice.best().step(), look);
      assertEquals(0, advice.best().price().pulls(), look);
      assertTrue(advice.proposals().get(0).bits() > 0, look);
    }
  }
}
