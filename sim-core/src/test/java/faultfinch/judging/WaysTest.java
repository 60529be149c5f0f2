package faultfinch.judging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.Price;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Outlook;
import faultfinch.diagnosis.PricePlanner;
import faultfinch.diagnosis.Suspects;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Ways to go about the small board, each bill worked out on paper; the retest takes 10 minutes. */
class WaysTest {
  private static final FaultDictionary DICTIONARY = Small.dictionary();
  private static final Suspects SUSPECTS = Small.suspects();
  private static final Price RETEST = new Price(10, 0, 0, 10);

  private static Bill bill(Practice practice, String fault) {
    Job job = Small.job(fault);
    return Ways.follow(List.of(job), practice, new TrueReadings(DICTIONARY), Small.prices(), RETEST)
        .get(job);
  }

  private static Ways ways() {
    return new Ways(Small.BOARD, DICTIONARY, SUSPECTS, Small.prices(), Small.population());
  }

  private static Advised advised() {
    return new Advised(
        c -> Outlook.atItsWord(DICTIONARY, SUSPECTS, Small.prices(), c.evidence()),
        new PricePlanner(),
        Advised.Patience.FIRM);
  }

  /**
   * Dark: U2 at once costs 27, and 27 more in one of four, 33.75; the probe first 2 + 27. So it is
   * probed, and no chip comes out in vain.
   */
  @Test
  void advice_onADarkScreen_probesFirst() {
    for (String fault : List.of(Small.U2, Small.U3)) {
      Bill bill = bill(advised(), fault);
      assertEquals(2 + 27 + 10, bill.price().total());
      assertEquals(2 + 7 + 10, bill.price().minutes());
      assertEquals(0, bill.innocent());
      assertEquals(1, bill.looks());
      assertEquals(new Bill.FirstAct(1, true, 1), bill.first().orElseThrow());
    }
  }

  @Test
  void advice_onABlankScreen_repairsAtOnce() {
    Bill bill = bill(advised(), Small.U9);
    assertEquals(27 + 10, bill.price().total());
    assertEquals(0, bill.looks());
  }

  /** Dark, the screen as the complaint has it: nothing decided there is worked out twice. */
  @Test
  void advice_onJobsThatLookAlike_isWorkedOutOnce() {
    Advised advised = advised();
    bill(advised, Small.U2);
    bill(advised, Small.U2);
    assertEquals(2, advised.worked());
    bill(advised, Small.U3);
    assertEquals(3, advised.worked());
  }

  /** U2 is the likelier of the two, at the same price. */
  @Test
  void symptomFirst_ofADarkScreen_exchangesTheLikelierFirst() {
    assertEquals(27 + 10, bill(ways().symptomFirst(), Small.U2).price().total());
    Bill second = bill(ways().symptomFirst(), Small.U3);
    assertEquals(27 + 27 + 10, second.price().total());
    assertEquals(1, second.innocent());
  }

  /** The board lists U1, U2, U3 and U9 in this order. */
  @Test
  void boardOrder_ofTheLastPart_takesOutAllBefore() {
    Bill bill = bill(ways().boardOrder(), Small.U9);
    assertEquals(3, bill.innocent());
    assertEquals(4 * 7 + 10, bill.price().minutes());
  }

  /** Most goes wrong in U1 (4), then U2 (3), U9 (2), U3 (1). */
  @Test
  void mostFailingFirst_ofTheThird_takesOutTwoBefore() {
    assertEquals(2, bill(ways().mostFailingFirst(), Small.U9).innocent());
    assertEquals(3, bill(ways().mostFailingFirst(), Small.U3).innocent());
  }

  /** All that shows otherwise is known for nothing, and no two of these four show the same. */
  @Test
  void reference_whereAllShowOtherwise_takesOutNoInnocent() {
    for (String fault : List.of(Small.U2, Small.U3, Small.U9)) {
      Bill bill = bill(ways().noPullReference(), fault);
      assertEquals(0, bill.innocent());
      assertEquals(27 + 10, bill.price().total());
    }
  }

  /** Who takes the fault for another that he then cannot find asks the symptom. */
  @Test
  void advice_withoutTheFaultInItsList_isLeftForTheSymptom() {
    Suspects listed = new Suspects(List.of(SUSPECTS.of(Small.U2), SUSPECTS.of(Small.U9)));
    Advised advised =
        new Advised(
            c -> Outlook.atItsWord(DICTIONARY, listed, Small.prices(), c.evidence()),
            new PricePlanner(),
            Advised.Patience.FIRM);
    Bill bill = bill(advised.then(ways().symptomFirst()), Small.U3);
    assertEquals(27 + 27 + 10, bill.price().total());
    assertTrue(bill.first().isPresent());
    assertEquals(0, bill.first().get().place());
  }

  /** U1 shows nothing: 4 of 10. The others share what is left as 3, 1 and 2 of 6. */
  @Test
  void population_isWhatSomebodyNotices() {
    Population population = Small.population();
    assertEquals(0.4, population.silent(), 1e-12);
    assertEquals(3, population.noticed().size());
    List<Job> jobs = population.draw(600, 5);
    assertEquals(600, jobs.size());
    assertEquals(1, jobs.stream().mapToDouble(Job::share).sum(), 1e-9);
    long u2 =
        jobs.stream()
            .filter(j -> j.complaint().equals(Small.job(Small.U2).complaint()))
            .filter(j -> j.truth().suspect().fault().equals(Small.U2))
            .count();
    // 300 are expected; four standard deviations of 600 draws are 49.
    assertEquals(300, u2, 49);
    assertEquals(jobs, population.draw(600, 5));
  }
}
