package faultfinch.judging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.ShippedDictionaries;
import faultfinch.diagnosis.Suspects;
import faultfinch.fault.FaultUniverse;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Jobs of a real board; the bars are those we set ourselves before anything was measured. */
class JudgeTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");

  private static final Judge JUDGE =
      new Judge(
          SORREL,
          ShippedDictionaries.of(SORREL).orElseThrow(),
          Suspects.of(FaultUniverse.of(SORREL)),
          Prices.shipped());

  @Test
  void advice_onSorrel_keepsTheBars() {
    Judged judged = JUDGE.jobs(300, 0, 2, (done, all) -> true).orElseThrow();
    assertTrue(judged.advisor().innocent().at() <= 0.15, judged.advisor().toString());
    assertTrue(judged.over().at() <= 0.10, judged.over().toString());
    assertTrue(judged.advisor().minutes().at() <= 60, judged.advisor().toString());
    assertTrue(judged.advisor().minutes95().at() <= 150, judged.advisor().toString());
    assertTrue(judged.ratio().high() <= 0.85, judged.ratio().toString());
    // The reference minds nothing but innocent chips.
    assertTrue(judged.over().high() >= 0, judged.over().toString());
    judged
        .practices()
        .values()
        .forEach(c -> assertTrue(c.innocent().at() > judged.reference().innocent().at()));
  }

  @Test
  void sameSeed_sameFigures() {
    AtomicInteger told = new AtomicInteger();
    Judged first =
        JUDGE
            .jobs(
                4,
                2,
                2,
                (done, all) -> {
                  assertTrue(done <= all);
                  told.incrementAndGet();
                  return true;
                })
            .orElseThrow();
    assertEquals(first.toString(), JUDGE.jobs(4, 2, 2, (d, a) -> true).orElseThrow().toString());
    assertEquals(4 + 5 * 2, told.get());
  }
}
