package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultUniverse;
import faultfinch.fault.RepairAction;
import java.util.List;
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
    return three().diagnosis().nearby(evidence, Whereabouts.UNKNOWN);
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
        diagnosis.nearby(evidence, Whereabouts.of(board)).get(0).action());
  }

  private static List<RepairAction> actions(List<Due> due) {
    return due.stream().map(Due::action).toList();
  }
}
