package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultUniverse;
import faultfinch.fault.RepairAction;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class NearbyTest {
  private static final double EXACT = 1e-12;

  /**
   * Of what is seen dark: 0.95 + 0.05 s, with s = (3/4 + 0.5/3) / (1 + 0.5/3) for three rows; of
   * the striped row 0.05 s.
   */
  private static final double STRIPED = 0.05 * s(0.75) / (0.95 + 0.05 * s(0.75));

  private static double s(double share) {
    return (share + 0.5 / 3) / (1 + 0.5 / 3);
  }

  private static Toy three() {
    return new Toy()
        .look("screen", 1)
        .exchange("U1", 10)
        .exchange("U2", 10)
        .repair(Toy.reseat("U1"), 1)
        .fault("inside", "U1", 1, "screen", "dark")
        .fault(Suspect.of("contact", "U1", 1, Toy.reseat("U1")), "screen", "striped")
        .fault("other", "U2", 2, "screen", "dark");
  }

  private static List<Due> nearby(Evidence evidence) {
    return three().diagnosis().nearby(evidence, Whereabouts.UNKNOWN, Set.of());
  }

  /**
   * The exchange of U2 was in vain. Left: the exchange of U1 with its own 1, and the reseating of
   * U1 with its own r; half of both weights is spread evenly over the two, for both are due as
   * often. For its price the reseating comes first.
   */
  @Test
  void repairs_ofAPartThatFits_countBesideTheOneThatCures() {
    Evidence seen = Evidence.of(Observation.bench("screen", "dark"));
    List<Due> due = nearby(seen.andMissed(Toy.exchange("U2")));
    double spread = 0.25 * (1 + STRIPED);
    double all = 1 + STRIPED + 2 * spread;
    assertEquals(List.of(Toy.reseat("U1"), Toy.exchange("U1")), actions(due));
    assertEquals((STRIPED + spread) / all, due.get(0).belief(), EXACT);
    assertEquals((1 + spread) / all, due.get(1).belief(), EXACT);
  }

  /** Dark before the repair, striped after it: only what is striped still fits. */
  @Test
  void repairs_afterARepairThatChangedSomething_goByWhatIsSeenNow() {
    Evidence seen =
        Evidence.of(Observation.bench("screen", "dark"))
            .andDone(Toy.exchange("U2"))
            .and(Observation.bench("screen", "striped").afterRepairs(1));
    List<Due> due = nearby(seen);
    // Striped is shown by a quarter of the list.
    double dark = 0.05 * s(0.25) / (0.95 + 0.05 * s(0.25));
    double spread = 0.25 * (1 + dark);
    assertEquals((1 + spread) / (1 + dark + 2 * spread), due.get(0).belief(), EXACT);
  }

  @Test
  void repairs_whenAllWereMade_areNone() {
    Evidence made =
        Evidence.NONE
            .andMissed(Toy.exchange("U1"))
            .andMissed(Toy.exchange("U2"))
            .andMissed(Toy.reseat("U1"));
    assertEquals(List.of(), nearby(made));
  }

  /**
   * A dead key whose joints were reflowed in vain: its switch, though no list holds that it opens.
   */
  @Test
  void repairs_ofAKeyWhoseJointsAreGood_areItsSwitch() {
    Board board = BoardReader.shipped("tamarisk");
    FaultDictionary dictionary = ShippedDictionaries.of(board).orElseThrow();
    String hidden = "K35: open";
    List<Suspect> listed =
        Suspects.of(FaultUniverse.of(board)).knownTo(dictionary).all().stream()
            .filter(s -> !s.fault().equals(hidden))
            .toList();
    Diagnosis diagnosis = Diagnosis.of(dictionary, new Suspects(listed), new ShippedPrices());
    int look = dictionary.look("every key").orElseThrow();
    Evidence evidence =
        Evidence.of(
                Observation.bench("every key", dictionary.outcome(look, dictionary.row(hidden))))
            .andMissed(new RepairAction(RepairAction.Kind.REFLOW, "K35.1"))
            .andMissed(new RepairAction(RepairAction.Kind.REFLOW, "K35.2"));
    assertEquals(
        new RepairAction(RepairAction.Kind.EXCHANGE_SMALL, "K35"),
        diagnosis.nearby(evidence, Whereabouts.of(board), Set.of()).get(0).action());
  }

  /**
   * A repair no fault of the list needs is due as often as the mean of its kind: of the two
   * exchanges, of which one cures a weight of 1 and one of 2, it is 1.5.
   */
  @Test
  void repairs_thatNoFaultOfTheListNeeds_countAsTheirKind() {
    RepairAction unheard = new RepairAction(RepairAction.Kind.EXCHANGE, "U1.9");
    Evidence seen = Evidence.of(Observation.bench("screen", "dark"));
    List<Due> due =
        new Toy()
            .look("screen", 1)
            .exchange("U1", 10)
            .exchange("U2", 10)
            .repair(unheard, 10)
            .fault("one", "U1", 1, "screen", "dark")
            .fault("other", "U2", 2, "screen", "striped")
            .diagnosis()
            .nearby(seen.andMissed(Toy.exchange("U2")), Whereabouts.UNKNOWN, Set.of(unheard));
    // Half of the weight is spread over U1 (1) and U1.9 (1.5); what shows stripes is at U2.
    double own = 1 + 0.5 * 1 / 2.5;
    double other = 0.5 * 1.5 / 2.5;
    assertEquals(List.of(Toy.exchange("U1"), unheard), actions(due));
    assertEquals(own / (own + other), due.get(0).belief(), EXACT);
  }

  /** No fault asks for a cleaning, so nobody knows how often one is due. */
  @Test
  void repairs_ofAKindThatNoFaultNeeds_areLeftOut() {
    Evidence seen = Evidence.of(Observation.bench("screen", "dark"));
    List<Due> due =
        three()
            .diagnosis()
            .nearby(
                seen, Whereabouts.UNKNOWN, Set.of(new RepairAction(RepairAction.Kind.CLEAN, "U2")));
    assertEquals(
        Set.of(Toy.exchange("U1"), Toy.exchange("U2"), Toy.reseat("U1")), Set.copyOf(actions(due)));
    assertEquals(1, due.stream().mapToDouble(Due::belief).sum(), EXACT);
  }

  /** Striped is shown by no fault of the list: what is odd is likelier than what is not. */
  @Test
  void repairs_whereNothingOfTheListShowsIt_areOfWhatIsOddToo() {
    Evidence seen = Evidence.of(Observation.bench("screen", "striped"));
    List<Due> due =
        new Toy()
            .look("screen", 1)
            .exchange("U1", 10)
            .exchange("U2", 10)
            .fault("odd", "U1", 1, "screen", "dark")
            .fault("silent", "U2", 1)
            .diagnosis()
            .nearby(seen, Whereabouts.UNKNOWN, Set.of());
    double share = (0.5 + 0.5 / 2) / (1 + 0.5 / 2);
    double silent = 0.05 * share / (0.95 + 0.05 * share);
    // Each part has one repair, which gets the half that is spread over its part as well.
    assertEquals(List.of(Toy.exchange("U1"), Toy.exchange("U2")), actions(due));
    assertEquals(1 / (1 + silent), due.get(0).belief(), EXACT);
  }

  /** All faults of the key 3, K16, are hidden; the key says itself that it is dead. */
  @Test
  void repairs_ofAKeyOfWhichNothingIsInTheList_areItsOwn() {
    Board board = BoardReader.shipped("tamarisk");
    FaultDictionary dictionary = ShippedDictionaries.of(board).orElseThrow();
    Suspects all = Suspects.of(FaultUniverse.of(board)).knownTo(dictionary);
    List<Suspect> listed = all.all().stream().filter(s -> !s.place().startsWith("K16")).toList();
    Diagnosis diagnosis = Diagnosis.of(dictionary, new Suspects(listed), new ShippedPrices());
    int look = dictionary.look("every key").orElseThrow();
    Evidence evidence =
        Evidence.of(
            Observation.bench("every key", dictionary.outcome(look, dictionary.row("K16: open"))));
    assertEquals(
        new RepairAction(RepairAction.Kind.EXCHANGE_SMALL, "K16"),
        diagnosis.nearby(evidence, Whereabouts.of(board), all.repairs()).get(0).action());
  }

  /** 15 of 16 signs are those of the second: what cures that is tried first, though it is rarer. */
  @Test
  void repairs_ofATextThatNoFaultShows_goByWhatItHasMostInCommonWith() {
    Toy toy =
        new Toy()
            .look("screen", 1)
            .exchange("U1", 10)
            .exchange("U2", 10)
            .fault("usual", "U1", 3, "screen", "0123456789 | 012345678")
            .fault("alike", "U2", 1, "screen", "HAVE A NICE DAY | HERE");
    Evidence seen = Evidence.of(Observation.bench("screen", "HAVE A N-CE DAY | HERE"));
    List<Due> due = toy.diagnosis().nearby(seen, Whereabouts.UNKNOWN, Set.of());
    assertEquals(Toy.exchange("U2"), due.get(0).action());
  }

  private static List<RepairAction> actions(List<Due> due) {
    return due.stream().map(Due::action).toList();
  }
}
