package faultfinch.judging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.ShippedDictionaries;
import faultfinch.diagnosis.SurveyRows;
import faultfinch.diagnosis.Suspect;
import faultfinch.diagnosis.Suspects;
import faultfinch.fault.FaultUniverse;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

class PairJudgeTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final int FEW = 6;
  private static final int MANY = 300;

  /** Nobody looked at the draw of this seed before the rules stood. */
  private static final long SEED = 3;

  private static PairJudge judge() {
    FaultDictionary dictionary = ShippedDictionaries.of(SORREL).orElseThrow();
    return new PairJudge(
        SORREL,
        dictionary,
        Suspects.of(FaultUniverse.of(SORREL)).knownTo(dictionary),
        Prices.shipped(),
        () -> new SurveyRows(SORREL));
  }

  /** By Wilson: of 300 without a miss 98.7 %, of half of 100 40.4 %. */
  @Test
  void lower_ofAShare_isWilsons() {
    assertEquals(0.9874, PairJudge.lower(1, 300), 0.0001);
    assertEquals(0.4038, PairJudge.lower(0.5, 100), 0.0001);
    assertEquals(0, PairJudge.lower(0, 0));
  }

  @Test
  @Timeout(value = 5, unit = TimeUnit.MINUTES)
  void sixPairs_followedAtTheDesk_areCuredAndPass() {
    PairsJudged judged = judge().follow(FEW, SEED, (done, all) -> true);
    assertEquals(FEW, judged.jobs() + judged.masked());
    assertEquals(1, judged.cured(), judged.toString());
    // Two repairs and one retest at the least.
    assertTrue(judged.minutes() > 12, judged.toString());
  }

  @Test
  @Timeout(value = 5, unit = TimeUnit.MINUTES)
  void stopped_afterTwo_tellsOfTwo() {
    PairsJudged judged =
        judge().follow(FEW, SEED, (soFar, all) -> soFar.jobs() + soFar.masked() < 2);
    assertEquals(2, judged.jobs() + judged.masked());
  }

  @Test
  @Tag("sweep")
  @Timeout(value = 1, unit = TimeUnit.HOURS)
  void threeHundredPairs_followedAtTheDesk_meetTheBars() {
    PairsJudged judged = judge().follow(MANY, SEED, (done, all) -> true);
    System.out.println(judged);
    assertTrue(judged.atLeast() >= 0.92, judged.toString());
    assertTrue(judged.innocent() <= 0.6, judged.toString());
    assertTrue(judged.ratio() <= 1.3, judged.toString());
  }

  @Test
  void draw_ofPairs_isApartAndHalfOfItJoined() {
    FaultDictionary dictionary = ShippedDictionaries.of(SORREL).orElseThrow();
    List<Suspect> suspects = Suspects.of(FaultUniverse.of(SORREL)).knownTo(dictionary).all();
    List<PairJob> jobs = new PairDraw(SORREL, suspects).draw(100, SEED);
    assertEquals(100, jobs.size());
    for (PairJob job : jobs) {
      assertTrue(
          job.one().cures().keySet().stream()
              .noneMatch(a -> job.one().surelyCuredBy(a) && job.other().surelyCuredBy(a)),
          job.toString());
    }
    long together = jobs.stream().filter(PairJob::together).count();
    assertTrue(together > 30 && together <= 50, "" + together);
  }
}
