package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.fault.RepairAction;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class BeliefTest {
  private static final double EXACT = 1e-12;

  /** Weights 3 to 1; the second shows itself on one probe. */
  private static Toy two() {
    return new Toy()
        .look("probe 1", 1)
        .look("screen", 1)
        .fault("a", "U1", 3, "screen", "dark")
        .fault("b", "U2", 1, "screen", "dark", "probe 1", "low");
  }

  @Test
  void belief_nothingSeen_isThePriorWithThreePerCentOutside() {
    Belief belief = two().diagnosis().belief(Evidence.NONE);
    assertEquals(0.03, belief.outside(), EXACT);
    assertEquals(0.97 * 3 / 4, belief.of("a"), EXACT);
    assertEquals(0.97 / 4, belief.of("b"), EXACT);
  }

  @Test
  void belief_probeOnTheBench_isWeighedWithOnePerCentOfErrors() {
    Belief belief = two().diagnosis().belief(Evidence.of(Observation.bench("probe 1", "low")));
    // Two outcomes, normal and low. a: 0.01 x 0.2 of errors go to the one other outcome, the rest
    // to named confusions. b: 0.99. Three rows, so outside: (1/4 + 1/6) / (1 + 1/6).
    double a = 0.97 * 3 / 4 * 0.01 * 0.2;
    double b = 0.97 / 4 * 0.99;
    double outside = 0.03 * (1.0 / 4 + 1.0 / 6) / (7.0 / 6);
    double sum = a + b + outside;
    assertEquals(a / sum, belief.of("a"), EXACT);
    assertEquals(b / sum, belief.of("b"), EXACT);
    assertEquals(outside / sum, belief.outside(), EXACT);
  }

  @Test
  void belief_toldEntry_neverCountsMoreThanTenToOne() {
    Toy toy = two();
    Belief belief = toy.diagnosis().belief(Evidence.of(Observation.told("probe 1", "low")));
    // 3 x 0.095 to 1 x 0.95.
    assertEquals(0.3, belief.of("a") / belief.of("b"), EXACT);
  }

  @Test
  void belief_confusionOfTheInstrument_countsLessThanAnyOtherError() {
    Toy toy =
        new Toy()
            .look("probe 1", 1)
            .fault("pulsing", "U1", 1, "probe 1", "pulsing")
            .fault("high", "U2", 1, "probe 1", "high")
            .fault("low", "U3", 1, "probe 1", "low");
    Belief belief = toy.diagnosis().belief(Evidence.of(Observation.bench("probe 1", "low")));
    // Pulsing is taken for low in 0.8 of errors; high for one of three others in 0.2 of errors.
    assertEquals(0.01 * 0.8 / 0.99, belief.of("pulsing") / belief.of("low"), EXACT);
    assertEquals(0.01 * 0.2 / 3 / 0.99, belief.of("high") / belief.of("low"), EXACT);
  }

  @Test
  void belief_lookNobodyKnows_isKeptAsNotWeighed() {
    Observation odd = Observation.bench("probe 9", "low");
    Belief belief = two().diagnosis().belief(Evidence.of(odd));
    assertEquals(List.of(odd), belief.notWeighed());
    assertEquals(0.97 / 4, belief.of("b"), EXACT);
  }

  @Test
  void belief_whatNoFaultShows_goesOutside() {
    Evidence odd =
        Evidence.of(Observation.bench("probe 1", "mid"), Observation.bench("screen", "stripes"));
    Belief belief = two().diagnosis().belief(odd);
    assertTrue(belief.outside() > 0.9, "" + belief.outside());
  }

  @Test
  void belief_exchangeThatMissed_leavesOneInAHundredForABadPart() {
    Evidence missed = Evidence.NONE.andMissed(Toy.exchange("U1"));
    Belief belief = two().diagnosis().belief(missed);
    assertEquals(3 * 0.01, belief.of("a") / belief.of("b"), EXACT);
  }

  @Test
  void belief_contactFault_isTwoHalvesOfWhichReseatingClearsOne() {
    RepairAction socket = new RepairAction(RepairAction.Kind.NEW_SOCKET, "U1");
    Suspect contact = new Suspect("c", "U1", 1, socket, Map.of(socket, 100, Toy.reseat("U1"), 50));
    Toy toy = new Toy().look("probe 1", 1).fault("a", "U2", 1).fault(contact);
    assertEquals(
        0.97 / 4, toy.diagnosis().belief(Evidence.NONE).cureChance(Toy.reseat("U1")), EXACT);
    Belief after = toy.diagnosis().belief(Evidence.NONE.andMissed(Toy.reseat("U1")));
    assertEquals(0.5 + 0.5 * 0.01, after.of("c") / after.of("a"), EXACT);
  }

  @Test
  void belief_shownOverPlacesAndRepairs_addsUp() {
    Toy toy =
        new Toy().look("probe 1", 1).fault("a", "U1", 1).fault("b", "U2", 3).fault("c", "U1", 4);
    Belief belief = toy.diagnosis().belief(Evidence.NONE);
    assertEquals("U1", belief.places().get(0).what());
    assertEquals(0.97 * 5 / 8, belief.places().get(0).belief(), EXACT);
    assertEquals("exchange U1", belief.repairs().get(0).what());
    assertEquals("c", belief.faults().get(0).what());
  }
}
