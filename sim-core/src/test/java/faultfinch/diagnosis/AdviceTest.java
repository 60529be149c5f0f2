package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.Price;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.PricePlanner.Effort;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is printed of a plan: how long, how many chips in vain, and for the owner. */
class AdviceTest {

  /** Exchanges pull a chip; a minute is a minute. */
  private static Advice advise(Toy toy, PricePlanner planner) {
    PriceList prices =
        new PriceList() {
          @Override
          public Price look(String look) {
            return toy.look(look);
          }

          @Override
          public Price repair(faultfinch.fault.RepairAction action) {
            Price price = toy.repair(action);
            return new Price(price.minutes(), 1, 0, price.total() + 20);
          }
        };
    Field field = Field.strict(toy.dictionary(), toy.suspects(), prices, Evidence.NONE);
    return new Advisor(planner, Whereabouts.UNKNOWN).advise(field, 0, 5);
  }

  private static List<PricePlanner> planners() {
    return List.of(
        new PricePlanner(),
        new PricePlanner(Effort.SHIPPED.withoutExact()),
        new PricePlanner(new Effort(0, 0, 0, 8, 1_000_000)));
  }

  @Test
  void forecast_ofALookAndTheDueRepair_isTheirMinutesAndNoChipInVain() {
    // Probe 2, then exchange U1 at 5 or U2 at 15. Price 2 + 3/4 x 25 + 1/4 x 35 = 29.5.
    Toy toy =
        new Toy()
            .look("probe 1", 2)
            .exchange("U1", 5)
            .exchange("U2", 15)
            .fault("a", "U1", 3)
            .fault("b", "U2", 1, "probe 1", "low");
    for (PricePlanner planner : planners()) {
      Advice advice = advise(toy, planner);
      assertEquals("probe 1", advice.best().step().text());
      assertEquals(29.5, advice.forecast().price(), 1e-9);
      assertEquals(29.5, advice.best().expectedPrice(), 1e-9);
      assertEquals(2 + 3.75 + 3.75, advice.forecast().minutes(), 1e-9);
      assertEquals(0, advice.forecast().innocentChips(), 1e-9);
      assertEquals(7, advice.forecast().half());
      assertEquals(17, advice.forecast().eighth());
      assertEquals(29.5, advice.atLeast(), 1e-9);
      assertEquals(0, advice.gap(), 1e-9);
      assertTrue(advice.groups().isEmpty());
    }
  }

  @Test
  void forecast_ofWhatNoLookParts_isAGroupWithTheOrderToTry() {
    // Weights 5, 2, 1 at 10 min each, a pull each: one chip in vain for b, two for c.
    Toy toy =
        new Toy()
            .exchange("U1", 10)
            .exchange("U2", 10)
            .exchange("U3", 10)
            .fault("a", "U1", 5)
            .fault("b", "U2", 2)
            .fault("c", "U3", 1);
    for (PricePlanner planner : planners()) {
      Advice advice = advise(toy, planner);
      assertEquals((2 + 2) / 8.0, advice.forecast().innocentChips(), 1e-9);
      // 10 min for 5 of 8, 20 for 7 of 8, 30 for all: half in 10; 20 is just 7 of 8.
      assertEquals(10, advice.forecast().half());
      assertEquals(20, advice.forecast().eighth());
      assertEquals((50 + 40 + 30) / 8.0, advice.forecast().minutes(), 1e-9);
      Advice.Group group = advice.groups().get(0);
      assertEquals(1, group.chance(), 1e-9);
      assertEquals(
          List.of(
              new Share("exchange U1", 5 / 8.0),
              new Share("exchange U2", 2 / 8.0),
              new Share("exchange U3", 1 / 8.0)),
          group.order());
    }
  }

  @Test
  void forecast_ofDrawnBoards_costsWhatWasPromised() {
    PricePlanner[] planners = {new PricePlanner(), new PricePlanner(Effort.SHIPPED.withoutExact())};
    for (int seed = 0; seed < 60; seed++) {
      for (PricePlanner planner : planners) {
        Field field = DrawnBoard.of(seed).field();
        Advice advice = new Advisor(planner, Whereabouts.UNKNOWN).advise(field, 0, 3);
        double promised = advice.best().expectedPrice();
        assertEquals(promised, advice.forecast().price(), 1e-9 * promised, "board " + seed);
        assertTrue(advice.atLeast() <= promised);
        assertTrue(advice.forecast().half() <= advice.forecast().eighth());
      }
    }
  }

  @Test
  void proposals_atOneNet_areMadeOnce() {
    // U9.D0 and U1.D0 are on one net of Sorrel, U9.D1 is not.
    Toy toy =
        new Toy()
            .look("probe U9.D0 at the pin", 1)
            .look("probe U1.D0 at the pin", 1)
            .look("probe U9.D1 at the pin", 1)
            .exchange("U1", 10)
            .exchange("U2", 10)
            .exchange("U3", 10)
            .fault("a", "U1", 4)
            .fault("b", "U2", 3, "probe U9.D0 at the pin", "low", "probe U1.D0 at the pin", "low")
            .fault("c", "U3", 2, "probe U9.D0 at the pin", "low", "probe U9.D1 at the pin", "low");
    Whereabouts sorrel = Whereabouts.of(BoardReader.shipped("sorrel"));
    Evidence none = Evidence.NONE;
    Belief belief = toy.diagnosis().belief(none);
    List<String> looks =
        toy.diagnosis().next(none, belief, 9, sorrel).proposals().stream()
            .map(p -> p.step().text())
            .filter(t -> t.startsWith("probe"))
            .toList();
    assertEquals(2, looks.size(), looks.toString());
    assertTrue(looks.contains("probe U9.D1 at the pin"), looks.toString());
  }

  @Test
  void customPart_isOneMadeForTheBoard() {
    Whereabouts tamarisk = Whereabouts.of(BoardReader.shipped("tamarisk"));
    assertTrue(tamarisk.custom(Toy.exchange("U21")));
    assertFalse(tamarisk.custom(Toy.exchange("U1")));
    assertFalse(tamarisk.custom(Toy.reseat("U21")));
  }
}
