package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultUniverse;
import faultfinch.fault.RepairAction;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is weighed entry by entry is held against the belief that weighs all of them at once. */
class WeighedTest {
  private static final double ROUNDING = 1e-9;

  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final FaultDictionary DICTIONARY = ShippedDictionaries.of(SORREL).orElseThrow();
  private static final Suspects SUSPECTS = Suspects.of(FaultUniverse.of(SORREL));
  private static final ErrorRates RATES = ErrorRates.shipped();

  private static void assertAsBelief(Evidence evidence) {
    Outlook outlook =
        Outlook.weighed(DICTIONARY, SUSPECTS, RATES, new BenchPrices(Prices.shipped()), evidence);
    Belief belief = new Belief(DICTIONARY, SUSPECTS, RATES, evidence);
    assertArrayEquals(belief.weights(), ((Weighed) outlook).weights(), ROUNDING);
    assertEquals(belief.outside(), outlook.outside(), ROUNDING);
    RepairAction action = SUSPECTS.actions().get(7);
    assertEquals(belief.cureChance(action), outlook.cureChance(action), ROUNDING);
  }

  @Test
  void nothing_seen_isThePrior() {
    assertAsBelief(Evidence.NONE);
  }

  @Test
  void toldAndSeen_entryByEntry_isAsWeighedAtOnce() {
    String fault = "U3: dead";
    int row = DICTIONARY.row(fault);
    Evidence evidence = Evidence.NONE;
    for (String look : List.of("lamp", "listen", "screen")) {
      evidence = evidence.and(Observation.told(look, shows(look, row)));
      assertAsBelief(evidence);
    }
    for (String look : List.of("screen", "current", "probe U2.D0 at the pin", "meter U1.D3")) {
      evidence = evidence.and(Observation.bench(look, shows(look, row)));
      assertAsBelief(evidence);
    }
    evidence = evidence.andMissed(SUSPECTS.of("U2: dead").repair());
    assertAsBelief(evidence);
  }

  @Test
  void healthyFirst_thenOdd_isAsWeighedAtOnce() {
    Evidence evidence =
        Evidence.of(
            Observation.bench("current", shows("current", FaultDictionary.HEALTHY)),
            Observation.told("lamp", shows("lamp", FaultDictionary.HEALTHY)));
    assertAsBelief(evidence);
    assertAsBelief(evidence.and(Observation.told("screen", "dark")));
  }

  /** Told and seen, in two looks at once, and again: what no row shows may be of two. */
  @Test
  void whatNoRowShows_entryByEntry_isAsWeighedAtOnce() {
    Evidence evidence =
        Evidence.of(
            Observation.told("lamp", shows("lamp", FaultDictionary.HEALTHY)),
            Observation.told("screen", "'what no fault of the list shows'"),
            Observation.bench("screen", "'what no fault of the list shows'"));
    assertAsBelief(evidence);
    evidence = evidence.and(Observation.bench("typed", "'nor what comes of typing there'"));
    assertAsBelief(evidence);
    assertAsBelief(evidence.and(Observation.bench("listen", "a sound nobody has ever heard")));
  }

  private static String shows(String look, int row) {
    return DICTIONARY.outcome(DICTIONARY.look(look).getAsInt(), row);
  }
}
