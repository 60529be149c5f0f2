package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.BoardReader;
import faultfinch.fault.FaultUniverse;
import faultfinch.fault.RepairAction;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class DiagnosisTest {

  private static Toy two() {
    return new Toy()
        .look("probe 1", 2)
        .exchange("U1", 10)
        .exchange("U2", 10)
        .fault("a", "U1", 3)
        .fault("b", "U2", 1, "probe 1", "low");
  }

  @Test
  void next_probeWorthItsPrice_isFirstWithWhatEachOutcomeMeans() {
    Advice advice = two().diagnosis().next(Evidence.NONE, 5);
    Advice.Proposal first = advice.proposals().get(0);
    assertEquals("probe 1", first.step().text());
    assertEquals(2, advice.classes());
    // H(1/4) = 0.8113 bit.
    assertEquals(0.8113, first.bits(), 1e-4);
    assertEquals(12, first.expectedPrice().orElseThrow(), 1e-9);
    assertEquals("normal", first.outcomes().get(0).outcome());
    assertEquals(0.75, first.outcomes().get(0).chance(), 1e-9);
    assertEquals(List.of(new Share("exchange U1", 1)), first.outcomes().get(0).repairs());
    assertEquals(3, advice.proposals().size());
  }

  @Test
  void next_lookAlreadyMade_isNotProposedAgain() {
    Evidence seen = Evidence.of(Observation.bench("probe 1", "low"));
    Advice advice = two().diagnosis().next(seen, 5);
    assertEquals("exchange U2", advice.best().step().text());
    assertTrue(advice.proposals().stream().noneMatch(p -> p.step().text().equals("probe 1")));
  }

  @Test
  void route_ofTheRareFault_goesByTheLookThatAnyoneWouldMake() {
    Route route = two().diagnosis().route("b", Evidence.NONE);
    assertTrue(route.cured());
    assertEquals(
        List.of("probe 1: low", "exchange U2: cured"),
        route.legs().stream().map(l -> l.choice().step().text() + ": " + l.saw()).toList());
    assertEquals(12, route.price().total(), 1e-9);
  }

  @Test
  void route_boardThatShowsWhatNoFaultShows_endsUncured() {
    Route route = two().diagnosis().route(look -> "mid", a -> false, Evidence.NONE);
    assertFalse(route.cured());
    assertEquals(1, route.legs().size());
  }

  @Test
  void suspects_thatTheOwnerCanNotice_areThoseThatShowOnTheScreenNotOnTheProbe() {
    Toy toy =
        new Toy()
            .look("screen", 1)
            .look("probe 1", 1)
            .fault("a", "U1", 1, "screen", "dark")
            .fault("b", "U2", 1, "probe 1", "low")
            .fault("c", "U3", 1);
    Suspects noticed =
        toy.suspects().showing(toy.dictionary(), ErrorRates.shipped(), ErrorRates.Tier.OWNER);
    assertEquals(List.of("a"), noticed.all().stream().map(Suspect::fault).toList());
  }

  @Test
  void suspects_ofABoard_areCuredByOverlappingRepairs() {
    FaultUniverse universe = FaultUniverse.of(BoardReader.shipped("sorrel"));
    Suspects suspects = Suspects.of(universe);
    assertEquals(universe.size(), suspects.all().size());
    Suspect contact = suspects.of("U9.D0: open contact");
    Map<String, Integer> cures =
        contact.cures().entrySet().stream()
            .collect(Collectors.toMap(e -> e.getKey().text(), Map.Entry::getValue));
    assertEquals(Map.of("fit a new socket at U9", 100, "exchange U9", 50, "reseat U9", 50), cures);
    Suspect joint = suspects.of("U9.D0: open joint");
    for (RepairAction action : suspects.actions()) {
      boolean listed = joint.cures().containsKey(action);
      boolean should =
          action.cures(
              universe.faults().stream()
                  .filter(f -> f.text().equals("U9.D0: open joint"))
                  .findFirst()
                  .orElseThrow());
      assertEquals(should, listed, action.text());
    }
  }

  /**
   * After the exchange in vain a new part that is bad is 200 to 1 likelier, and not tried again.
   */
  @Test
  void next_afterARepairInVain_isAnotherOneThoughItIsLessBelieved() {
    Toy toy =
        new Toy()
            .look("screen", 1)
            .exchange("U1", 10)
            .exchange("U2", 10)
            .fault("often", "U1", 20_000, "screen", "dark")
            .fault("rare", "U2", 1, "screen", "dark");
    Evidence vain =
        Evidence.of(Observation.bench("screen", "dark"))
            .andDone(Toy.exchange("U1"))
            .and(Observation.bench("screen", "dark").afterRepairs(1));
    Belief belief = toy.diagnosis().belief(vain);
    assertTrue(belief.of("often") > 100 * belief.of("rare"), belief.faults().toString());
    Evidence twice =
        vain.andDone(Toy.exchange("U1")).and(Observation.bench("screen", "dark").afterRepairs(2));
    Step next = toy.diagnosis().next(twice, 1).best().step();
    assertEquals(new Step.Act(Toy.exchange("U2")), next);
  }
}
