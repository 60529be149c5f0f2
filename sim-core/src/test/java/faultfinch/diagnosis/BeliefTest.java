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
    // to named confusions, and only alone: of a pair b would lead. b: 0.99, alone or not. Three
    // rows, so outside: (1/4 + 1/6) / (1 + 1/6).
    double a = 0.97 * 3 / 4 * 0.55 * 0.01 * 0.2;
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
    // 3 x 0.55 x 0.095 to 1 x 0.95.
    assertEquals(0.165, belief.of("a") / belief.of("b"), EXACT);
  }

  @Test
  void belief_complaint_hardlyComesOfAFaultThatShowsAnOwnerNothing() {
    Toy toy =
        new Toy()
            .look("screen", 1)
            .look("probe 1", 1)
            .fault("shown", "U1", 1, "screen", "dark")
            .fault("silent", "U2", 1, "probe 1", "low");
    Belief belief = toy.diagnosis().belief(Evidence.of(Observation.bench("screen", "dark")));
    // Shown: 0.99, alone or not. Silent: brought in 0.02, alone only, and 0.2 of the errors; of a
    // pair the other would lead.
    double error = 0.01 * 0.2;
    assertEquals(0.55 * 0.02 * error / 0.99, belief.of("silent") / belief.of("shown"), EXACT);
    // A probe is no complaint: here only the error counts.
    Belief probed = toy.diagnosis().belief(Evidence.of(Observation.bench("probe 1", "low")));
    assertEquals(0.55 * error / 0.99, probed.of("shown") / probed.of("silent"), EXACT);
  }

  @Test
  void looksMade_thatSomebodyTold_areStillToBeMade() {
    Evidence told =
        Evidence.of(Observation.told("screen", "dark"), Observation.bench("lamp", "lit"));
    assertEquals(List.of("lamp"), told.looksMade());
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
  void belief_whatNoFaultShows_isNoneOfTheListOrTwoOfWhichOneMeddles() {
    Evidence odd =
        Evidence.of(Observation.bench("probe 1", "mid"), Observation.bench("screen", "stripes"));
    Belief belief = two().diagnosis().belief(odd);
    // What no row shows is as often as half a row of three: (1/6) / (7/6), in each of two looks.
    double unheard = 1.0 / 7;
    double outside = 0.03 * unheard * unheard;
    // A misreading is 0.01 x 0.2. Of two faults each shows its own, or in 0.2 one meddles with it.
    double misread = 0.01 * 0.2;
    double alone = 0.55 * misread * misread;
    double a = alone + 0.45 * misread * (0.8 * misread + 0.2 * unheard);
    double b = alone + 0.45 * (0.8 * misread * misread + 0.2 * unheard * unheard);
    double sum = outside + 0.97 * (0.75 * a + 0.25 * b);
    assertEquals(outside / sum, belief.outside(), EXACT);
    assertEquals(0.97 * 0.25 * b / sum, belief.of("b"), EXACT);
  }

  @Test
  void belief_textThatNoFaultShows_isASpoiltFormOfTheOneItHasMostInCommonWith() {
    Toy toy =
        new Toy()
            .look("screen", 1)
            .fault("a", "U1", 1, "screen", "HAVE A NICE DAY | HERE")
            .fault("b", "U2", 1, "screen", "0123456789 | 012345678");
    Evidence seen = Evidence.of(Observation.bench("screen", "HAVE A N-CE DAY | HERE"));
    Belief belief = toy.diagnosis().belief(seen);
    // 15 of 16 signs in common with the first, none with the second. Both factors have the mean 1.
    double first = StrictMath.exp(0);
    double second = StrictMath.exp(-20 * 15.0 / 16);
    double mean = (first + second) / 2;
    double unheard = 1.0 / 7;
    double misread = 0.01 * 0.2 / 2;
    double a = 0.45 * (0.8 * misread + 0.2 * unheard * (0.1 + 0.9 * first / mean));
    double b = 0.45 * (0.8 * misread + 0.2 * unheard * (0.1 + 0.9 * second / mean));
    double alone = 0.55 * misread;
    assertEquals((alone + b) / (alone + a), belief.of("b") / belief.of("a"), EXACT);
  }

  /** Whatever the other fault shows it shows again; each look again is no accident of its own. */
  @Test
  void belief_ofTwo_afterARepairThatChangedNothing_isThatOfOneLookAtIt() {
    Toy toy =
        new Toy()
            .look("screen", 1)
            .look("probe 1", 1)
            .fault("a", "U1", 8, "screen", "dark")
            .fault("b", "U2", 1, "probe 1", "low")
            .fault("c", "U3", 1, "probe 1", "high");
    Evidence seen =
        Evidence.of(Observation.bench("screen", "dark"), Observation.bench("probe 1", "low"));
    double before = ratio(toy.diagnosis().belief(seen));
    Evidence again =
        seen.andDone(Toy.exchange("U3"))
            .and(Observation.bench("screen", "dark").afterRepairs(1))
            .and(Observation.bench("probe 1", "low").afterRepairs(1));
    // All of a alone is a misreading, so what is left of it is of two.
    assertEquals(before, ratio(toy.diagnosis().belief(again)), 0.02 * before);
  }

  private static double ratio(Belief belief) {
    return belief.of("a") / belief.of("b");
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

  @Test
  void belief_faultThatExplainsOneOfTwoOddities_standsAsOneOfTwo() {
    Toy toy =
        new Toy()
            .look("probe 1", 1)
            .look("probe 2", 1)
            .fault("a", "U1", 1, "probe 1", "low")
            .fault("b", "U2", 1, "probe 2", "low");
    Evidence both =
        Evidence.of(Observation.bench("probe 1", "low"), Observation.bench("probe 2", "low"));
    // Each alone: 0.55 x 0.99 x 0.002. With another: 0.45 x 0.99 x (0.99 + 0.002) / 2, the usual
    // chance of the low that it does not explain itself.
    double alone = 0.55 * 0.99 * 0.002;
    double pair = 0.45 * 0.99 * 0.992 / 2;
    Belief belief = toy.diagnosis().belief(both);
    assertEquals(pair / (alone + pair), belief.two() / (1 - belief.outside()), EXACT);
    assertEquals(belief.of("a"), belief.of("b"), EXACT);
  }

  @Test
  void belief_afterARepairThatHelped_isThatItIsCured() {
    Evidence helped =
        Evidence.of(Observation.bench("probe 1", "low"))
            .andDone(Toy.exchange("U2"))
            .and(Observation.bench("probe 1", "normal").afterRepairs(1));
    // Alone, b before and nothing after: 0.25 x 0.55 x 0.99 x 0.99 x 0.99. With another: a is left
    // and shows nothing on probe 1: 0.25 x 0.45 x 0.99 x 0.99 x what is left, 0.75 x 0.99 for a,
    // and 0.25 x 0.002 for another b. The rest is a misreading or a bad new part.
    Belief belief = two().diagnosis().belief(helped);
    double cured = 0.25 * 0.55 * 0.99 * 0.99 * 0.99;
    double left = 0.25 * 0.45 * 0.99 * 0.99 * (0.75 * 0.99 + 0.25 * 0.002);
    // Of pairs there are besides those of which b is still there after a bad new part or
    // misreading:
    // below 1 in 100.
    assertEquals(left / cured, belief.two() / belief.cured(), 0.01);
  }

  @Test
  void belief_afterARepairThatHelpedHalf_isInWhatTheOtherShows() {
    Toy toy =
        new Toy()
            .look("probe 1", 1)
            .look("probe 2", 1)
            .fault("a", "U1", 1, "probe 1", "low")
            .fault("b", "U2", 1, "probe 2", "low");
    Evidence half =
        Evidence.of(Observation.bench("probe 1", "low"))
            .andDone(Toy.exchange("U1"))
            .and(Observation.bench("probe 1", "normal").afterRepairs(1))
            .and(Observation.bench("probe 2", "low").afterRepairs(1));
    Belief belief = toy.diagnosis().belief(half);
    assertTrue(belief.of("b") > 0.9, "" + belief.of("b"));
    assertTrue(belief.two() > 0.9, "" + belief.two());
  }

  @Test
  void belief_rangeOfOutcomes_weighsAllItCovers() {
    Toy toy =
        new Toy()
            .look("probe 1", 1)
            .fault("pulsing", "U1", 1, "probe 1", "pulsing")
            .fault("high", "U2", 1, "probe 1", "high")
            .fault("low", "U3", 1, "probe 1", "low");
    Belief belief =
        toy.diagnosis().belief(Evidence.of(reach(true, Tally.ONCE, List.of("low", "high"))));
    assertEquals(1, belief.of("high") / belief.of("low"), EXACT);
    // Pulsing for low in 0.8 of errors, for high as one of three others in 0.2 of them.
    assertEquals(0.01 * (0.8 + 0.2 / 3) / 0.99, belief.of("pulsing") / belief.of("low"), EXACT);
  }

  @Test
  void belief_someOfTheLines_isMetByAnyOne() {
    Toy toy =
        new Toy()
            .look("probe 1", 1)
            .look("probe 2", 1)
            .fault("a", "U1", 1, "probe 1", "low")
            .fault("b", "U2", 1, "probe 2", "low")
            .fault("c", "U3", 1);
    Sight one = new Sight(List.of("probe 1"), List.of("low"));
    Sight two = new Sight(List.of("probe 2"), List.of("low"));
    Observation some =
        new Observation(
            "a line",
            "low",
            Observation.Source.BENCH,
            Observation.Doubt.SURE,
            new Observation.Reach(List.of(one, two), false, Tally.ONCE),
            0);
    Belief belief = toy.diagnosis().belief(Evidence.of(some));
    assertEquals(belief.of("a"), belief.of("b"), EXACT);
    // Two chances to mistake a normal line, each 0.01 x 0.2; and c only alone.
    double mistaken = 0.55 * (1 - 0.998 * 0.998);
    assertEquals(mistaken / 0.99, belief.of("c") / belief.of("a"), EXACT);
  }

  @Test
  void belief_oneTimeInFive_isOneThatComesAndGoes() {
    Toy toy = new Toy().look("screen", 1).fault("a", "U1", 1, "screen", "dark").fault("b", "U2", 1);
    Belief belief =
        toy.diagnosis().belief(Evidence.of(reach(true, new Tally(1, 5), "screen", "normal")));
    // a: one normal of five by misreading 0.002 a time, or it comes and goes, 0.05 / 6.
    double always = 5 * 0.002 * StrictMath.pow(0.998, 4);
    double a = 0.95 * always + 0.05 / 6;
    // b never is dark: one normal of five would be four misreadings, and of a pair a would lead.
    double b = 0.55 * 5 * 0.99 * StrictMath.pow(0.01, 4);
    assertEquals(b / a, belief.of("b") / belief.of("a"), 1e-9);
    // Outside the list it is as likely as the list makes it, alone.
    double average = (a + b / 0.55) / 2;
    double listed = 0.97 * (a + b) / 2;
    assertEquals(0.03 * average / (0.03 * average + listed), belief.outside(), 1e-9);
  }

  @Test
  void belief_oneTimeInFive_isSoonerAContactThanAChip() {
    Toy toy =
        new Toy()
            .look("screen", 1)
            .fault("chip", "U1", 1, "screen", "dark")
            .fault(Suspect.of("contact", "U2", 1, Toy.reseat("U2")), "screen", "dark");
    Observation now = reach(true, new Tally(1, 5), "screen", "normal");
    Belief wavering = toy.diagnosis().belief(Evidence.of(now));
    // Of contacts 0.27 come and go, of all faults 0.05.
    assertEquals(0.27 / 0.05, wavering.of("contact") / wavering.of("chip"), EXACT);
    Belief always =
        toy.diagnosis().belief(Evidence.of(reach(true, new Tally(5, 5), "screen", "dark")));
    assertEquals(1, always.of("contact") / always.of("chip"), EXACT);
  }

  @Test
  void outside_afterARepairThatChangedNothing_growsAndAfterOneThatChangedTheSignShrinks() {
    Toy toy =
        new Toy()
            .look("probe 1", 1)
            .fault("a", "U1", 1, "probe 1", "low")
            .fault("b", "U2", 1, "probe 1", "high");
    Evidence before = Evidence.of(Observation.bench("probe 1", "low"));
    double outside = toy.diagnosis().belief(before).outside();
    Evidence exchanged = before.andDone(Toy.exchange("U1"));
    Observation still = Observation.bench("probe 1", "low").afterRepairs(1);
    Observation other = Observation.bench("probe 1", "high").afterRepairs(1);
    assertTrue(toy.diagnosis().belief(exchanged.and(still)).outside() > outside);
    assertTrue(toy.diagnosis().belief(exchanged.and(other)).outside() < outside);
  }

  @Test
  void belief_rightWhenCold_isOneThatWaitsAndClearsNobody() {
    Toy toy = new Toy().look("screen", 1).fault("a", "U1", 1, "screen", "dark").fault("b", "U2", 1);
    Observation.Reach cold =
        new Observation.Reach(
            List.of(new Sight(List.of("screen"), List.of("normal"))),
            true,
            Tally.ONCE,
            Observation.Climate.COLD);
    Observation fine =
        new Observation(
            "screen cold", "normal", Observation.Source.BENCH, Observation.Doubt.SURE, cold, 0);
    Belief belief = toy.diagnosis().belief(Evidence.of(fine));
    // a: a misreading 0.002, or it waits, 0.05, and then in half of cases does not show: 0.99. All
    // was as on a healthy board, so each may be one of two, and the other shows as usual.
    double a = 0.002 + 0.05 * (0.99 - 0.002) / 2;
    double b = 0.99;
    double usual = (a + b) / 2;
    assertEquals(a / (0.55 * b + 0.45 * usual), belief.of("a") / belief.of("b"), EXACT);
  }

  private static Observation reach(boolean every, Tally tally, List<String> outcomes) {
    return new Observation(
        "probe 1",
        String.join(" or ", outcomes),
        Observation.Source.BENCH,
        Observation.Doubt.SURE,
        new Observation.Reach(List.of(new Sight(List.of("probe 1"), outcomes)), every, tally),
        0);
  }

  private static Observation reach(boolean every, Tally tally, String look, String seen) {
    return new Observation(
        look,
        seen,
        Observation.Source.BENCH,
        Observation.Doubt.SURE,
        new Observation.Reach(List.of(new Sight(List.of(look), List.of(seen))), every, tally),
        0);
  }
}
