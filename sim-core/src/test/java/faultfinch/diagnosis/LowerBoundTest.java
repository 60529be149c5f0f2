package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LowerBoundTest {
  private static final long BUDGET = 200_000;
  private static final long MOVES = 20_000_000;

  private static double bound(Field field) {
    return LowerBound.of(field.ground(), field.members(), BUDGET);
  }

  private static double bound(Toy toy) {
    return bound(toy.field());
  }

  @Test
  void bound_ofTwoClasses_isTheCheaperFirstMove() {
    // Told: 10 each. A look first adds 2: 12, which is what the best plan costs. With a probe at 3
    // that is 13; U1 first adds 10 less what it spares, 3/4 of 10: 12.5.
    Toy cheap =
        new Toy()
            .look("probe 1", 2)
            .exchange("U1", 10)
            .exchange("U2", 10)
            .fault("a", "U1", 3)
            .fault("b", "U2", 1, "probe 1", "low");
    assertEquals(12, bound(cheap), 1e-9);
    Toy dear =
        new Toy()
            .look("probe 1", 3)
            .exchange("U1", 10)
            .exchange("U2", 10)
            .fault("a", "U1", 3)
            .fault("b", "U2", 1, "probe 1", "low");
    assertEquals(12.5, bound(dear), 1e-9);
  }

  @Test
  void bound_ofThreeClassesInAChain_countsTheSecondLookWhereItIsDue() {
    // As in the planner's test: probe 2 at first, then half of the weight needs probe 1: 33.
    Toy toy =
        new Toy()
            .look("probe 1", 2)
            .look("probe 2", 2)
            .exchange("U1", 30)
            .exchange("U2", 30)
            .exchange("U3", 30)
            .fault("a", "U1", 2, "probe 1", "low", "probe 2", "low")
            .fault("b", "U2", 1, "probe 1", "low")
            .fault("c", "U3", 1);
    assertEquals(33, bound(toy), 1e-9);
  }

  @Test
  void bound_ofOneClass_isTheBestOrderOfOverlappingRepairs() {
    // Socket at 40 cures all three, exchange at 25 chip and joint, reflow at 8 the joint.
    // Weights 1 contact, 2 chip, 1 joint; by four: exchange first 25 x 4 + 40 x 1 = 140, socket
    // first 160, reflow first 8 x 4 + 25 x 3 + 40 x 1 = 147. So 140 / 4 = 35.
    RepairAction socket = new RepairAction(RepairAction.Kind.NEW_SOCKET, "U1");
    RepairAction joint = new RepairAction(RepairAction.Kind.REFLOW, "U1.D0");
    RepairAction chip = Toy.exchange("U1");
    Map<RepairAction, Integer> ofChip = new LinkedHashMap<>(Map.of(chip, 100, socket, 100));
    Map<RepairAction, Integer> ofJoint = new LinkedHashMap<>(ofChip);
    ofJoint.put(joint, 100);
    Toy toy =
        new Toy()
            .repair(socket, 40)
            .repair(joint, 8)
            .repair(chip, 25)
            .fault(new Suspect("contact", "U1", 1, socket, Map.of(socket, 100)))
            .fault(new Suspect("chip", "U1", 2, chip, ofChip))
            .fault(new Suspect("joint", "U1", 1, joint, ofJoint));
    assertEquals(35, bound(toy), 1e-9);
    Field field = toy.field();
    List<String> order =
        new OneClass(field.ground(), List.of(0, 1, 2))
            .order().stream().map(a -> field.ground().actions().get(a).text()).toList();
    assertEquals(List.of("exchange U1", "fit a new socket at U1"), order);
  }

  @Test
  void bound_ofManyRepairsThatShareNothing_isHalfAnExchangeBelowTheirOrder() {
    // Twenty parts at 10 min of weight 1: in the mean 10 x (1 + ... + 20) / 20 = 105. Flowing, each
    // minute is paid for by half a part less: 100.
    Toy toy = new Toy();
    for (int i = 0; i < 20; i++) {
      toy.exchange("U" + i, 10).fault("f" + i, "U" + i, 1);
    }
    assertEquals(100, bound(toy), 1e-9);
  }

  @Test
  void bound_ofOneClassOfDrawnBoards_isNeverAboveTheBestOrder() {
    int many = 0;
    for (int seed = 0; seed < 300; seed++) {
      Ground ground = DrawnBoard.of(seed).field().ground();
      List<Integer> members = new ArrayList<>();
      for (int i = seed % 3; i < ground.atoms().length; i += 3) {
        members.add(i);
      }
      OneClass one = new OneClass(ground, members);
      if (one.few()) {
        double[] best = one.byRepairsMade();
        assertTrue(one.atLeastAfter(-1) <= best[0] * (1 + 1e-9), "board " + seed);
        for (int i = 0; i < one.actions().length; i++) {
          double after = one.atLeastAfter(i);
          assertTrue(after <= best[1 << i] * (1 + 1e-9) + 1e-9, "board " + seed);
        }
        many++;
      }
    }
    assertTrue(many > 200, "only " + many);
  }

  @Test
  void bound_ofDrawnBoards_neverExceedsTheOptimum() {
    double sum = 0;
    for (int seed = 0; seed < 150; seed++) {
      Field field = DrawnBoard.of(seed).field();
      double optimum = PlayedOut.optimum(field, MOVES);
      double bound = bound(field);
      assertTrue(bound <= optimum * (1 + 1e-9), "board " + seed + ": " + bound + " > " + optimum);
      assertTrue(bound > 0);
      sum += bound / optimum / 150;
    }
    assertTrue(sum > 0.85, "mean " + sum);
  }

  @Test
  void bound_withoutABudget_isStillOne() {
    for (int seed = 0; seed < 50; seed++) {
      Field field = DrawnBoard.of(seed).field();
      double poor = LowerBound.of(field.ground(), field.members(), 1);
      assertTrue(poor <= bound(field) * (1 + 1e-9), "board " + seed);
      assertTrue(poor > 0);
    }
  }
}
