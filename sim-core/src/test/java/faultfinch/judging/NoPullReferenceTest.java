package faultfinch.judging;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.diagnosis.Suspect;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The order that takes out fewest innocent chips, on paper and against every order there is. */
class NoPullReferenceTest {
  private static final RepairAction REFLOW = new RepairAction(RepairAction.Kind.REFLOW, "U1.D0");

  private final NoPullReference reference = new NoPullReference(job -> List.of(), Small.prices());

  private static Truth truth(String fault, double weight, RepairAction... cures) {
    Map<RepairAction, Integer> all = new LinkedHashMap<>();
    for (RepairAction cure : cures) {
      all.put(cure, 100);
    }
    return Truth.of(new Suspect(fault, "U1", weight, cures[0], all)).get(0);
  }

  private static RepairAction chip(int number) {
    return Small.exchange("U" + number);
  }

  @Test
  void repairWithoutAPull_thoughUnlikely_comesFirst() {
    List<RepairAction> order =
        reference.order(List.of(truth("a", 9, chip(1)), truth("b", 1, REFLOW)));
    assertEquals(List.of(REFLOW, chip(1)), order);
  }

  /** U1 first leaves 1 uncured: one chip in vain in one of ten; U2 first, nine in ten. */
  @Test
  void twoChips_theLikelierFirst() {
    List<RepairAction> order =
        reference.order(List.of(truth("a", 1, chip(2)), truth("b", 9, chip(1))));
    assertEquals(List.of(chip(1), chip(2)), order);
  }

  /**
   * Weights 4, 3, 3. U1 cures the first; U2 cures the second and third; so U2 first: 4 pulls in
   * vain of 10, U1 first: 6.
   */
  @Test
  void chipThatCuresTwo_comesBeforeTheLikeliestSingle() {
    List<RepairAction> order =
        reference.order(
            List.of(truth("a", 4, chip(1)), truth("b", 3, chip(2)), truth("c", 3, chip(2))));
    assertEquals(List.of(chip(2), chip(1)), order);
  }

  @Test
  void drawnCureSets_areOrderedAsWellAsByTryingEveryOrder() {
    for (long seed = 1; seed <= 40; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<Truth> truths = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        RepairAction one = chip(1 + random.nextInt(5));
        RepairAction other = chip(1 + random.nextInt(5));
        truths.add(truth("f" + i, 1 + random.nextInt(9), one, other));
      }
      List<RepairAction> all =
          truths.stream().flatMap(t -> t.suspect().cures().keySet().stream()).distinct().toList();
      assertEquals(
          least(truths, new ArrayList<>(), all), inVain(truths, reference.order(truths)), 1e-9);
    }
  }

  private static double least(List<Truth> truths, List<RepairAction> made, List<RepairAction> all) {
    if (made.size() == all.size()) {
      return inVain(truths, made);
    }
    double least = Double.POSITIVE_INFINITY;
    for (RepairAction next : all) {
      if (!made.contains(next)) {
        List<RepairAction> more = new ArrayList<>(made);
        more.add(next);
        least = Math.min(least, least(truths, more, all));
      }
    }
    return least;
  }

  private static double inVain(List<Truth> truths, List<RepairAction> order) {
    double sum = 0;
    for (Truth truth : truths) {
      int before = 0;
      while (!truth.curedBy(order.get(before))) {
        before++;
      }
      sum += before * truth.weight();
    }
    return sum;
  }
}
