package faultfinch.judging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.diagnosis.ErrorRates;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Outlook;
import faultfinch.diagnosis.PricePlanner;
import faultfinch.diagnosis.Suspects;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SecondThoughtsTest {
  private static final FaultDictionary DICTIONARY = Small.dictionary();
  private static final Suspects SUSPECTS = Small.suspects();

  /** The probe says low of U3's board, which is high: so U2 comes out first, in vain, then U3. */
  @Test
  void aWrongReading_isDoubtedOnceItsRepairWasInVain() {
    TrueReadings right = new TrueReadings(DICTIONARY);
    Readings wrong =
        new Readings() {
          @Override
          public String shows(Job job, String look) {
            return look.equals(Small.PROBE) ? "low" : right.shows(job, look);
          }

          @Override
          public Complaint complaint(Job job) {
            return right.complaint(job);
          }
        };
    Visit visit = new Visit(Small.job(Small.U3), wrong, Small.prices());
    visit.look(Small.PROBE);
    ErrorRates doubting = ErrorRates.shipped().doubting();
    new SecondThoughts(
            v -> Outlook.weighed(DICTIONARY, SUSPECTS, doubting, Small.prices(), v.evidence()),
            new PricePlanner())
        .go(visit);
    assertTrue(visit.cured());
    assertEquals(Set.of(Small.exchange("U2"), Small.exchange("U3")), visit.made());
    assertEquals(Small.exchange("U2"), List.copyOf(visit.made()).get(0));
  }

  /** What was tried in vain is not proposed first again: all is weighed that came before. */
  @Test
  void repairsInVainBefore_count() {
    Visit visit = new Visit(Small.job(Small.U3), new TrueReadings(DICTIONARY), Small.prices());
    visit.repair(Small.exchange("U2"));
    new SecondThoughts(
            v ->
                Outlook.weighed(
                    DICTIONARY,
                    SUSPECTS,
                    ErrorRates.shipped().doubting(),
                    Small.prices(),
                    v.evidence()),
            new PricePlanner())
        .go(visit);
    assertTrue(visit.cured());
    assertEquals(Set.of(Small.exchange("U2"), Small.exchange("U3")), visit.made());
  }
}
