package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PairSearchTest {
  private static final double EXACT = 1e-9;

  private static final Evidence BOTH =
      Evidence.of(Observation.bench("screen", "dark"), Observation.bench("listen", "silent"));

  /** Weights 2, 2, 1 and 5; no fault shows both signs. */
  private static Toy toy() {
    return new Toy()
        .look("screen", 1)
        .look("listen", 1)
        .fault("dark", "U1", 2, "screen", "dark")
        .fault("silent", "U2", 2, "listen", "silent")
        .fault("silent too", "U3", 1, "listen", "silent", "screen", "torn")
        .fault("torn", "U4", 5, "screen", "torn");
  }

  @Test
  void pairs_ofTwoSigns_areThoseThatExplainBoth() {
    List<SuspectPair> pairs = toy().diagnosis().pairs(BOTH).proposals(3);
    assertEquals(List.of("dark", "silent"), pairs.get(0).faults());
  }

  @Test
  void pairs_ofOneSign_areNone() {
    assertEquals(
        List.of(),
        toy().diagnosis().pairs(Evidence.of(Observation.bench("screen", "dark"))).proposals(3));
  }

  /**
   * A dead board is dark and silent whatever the display would read: it explains no second sign.
   */
  @Test
  void pairs_ofWhichOneHidesTheSign_areNotProposed() {
    Toy hiding =
        new Toy()
            .look("screen", 1)
            .look("listen", 1)
            .look("lamp", 1)
            .fault("garbled", "U1", 1, "screen", "garbled")
            .fault("dead", "U2", 9, "screen", "dark", "listen", "silent", "lamp", "dark")
            .fault("dumb", "U3", 1, "listen", "silent");
    Evidence seen =
        Evidence.of(Observation.bench("screen", "garbled"), Observation.bench("listen", "silent"));
    List<SuspectPair> pairs = hiding.diagnosis().pairs(seen).proposals(3);
    assertEquals(1, pairs.size());
    assertEquals(List.of("garbled", "dumb"), pairs.get(0).faults());
  }

  @Test
  void pairs_thatOneRepairCures_areOneJob() {
    Toy one =
        new Toy()
            .look("screen", 1)
            .look("listen", 1)
            .fault("dark", "U1", 1, "screen", "dark")
            .fault("silent", "U1", 1, "listen", "silent");
    assertEquals(List.of(), one.diagnosis().pairs(BOTH).proposals(3));
  }

  @Test
  void odds_ofAPairThatShowsAll_areItsPriorAgainstTheErrorOfTheBestAlone() {
    PairSearch search = toy().diagnosis().pairs(BOTH);
    SuspectPair pair = search.proposals(1).get(0);
    Map<String, String> shows = Map.of("screen", "dark", "listen", "silent");
    // Prior of the pair 2 x 0.45 x 0.2 x 0.2. Alone "dark" or "silent": 0.55 x 0.2 x an error of
    // 0.01, of which 0.2 go to other outcomes: of the screen there are two others, of the sound
    // one.
    double pairs = 2 * 0.45 * 0.2 * 0.2 * 0.99 * 0.99;
    double dark = 0.55 * 0.2 * 0.99 * 0.01 * 0.2;
    assertEquals(pairs / dark, search.odds(pair, List.of(shows)), EXACT * pairs / dark);
  }
}
