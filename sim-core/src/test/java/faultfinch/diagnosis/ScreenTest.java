package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The screen against gains worked out from their definition, for every look. */
class ScreenTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final Field FIELD = field();
  private static final int MOST = 20;

  private static Field field() {
    FaultDictionary dictionary = ShippedDictionaries.of(SORREL).orElseThrow();
    Suspects suspects = SuspectsFile.shipped(SORREL, dictionary.origin()).orElseThrow();
    return Field.strict(dictionary, suspects, new BenchPrices(Prices.shipped()), Evidence.NONE);
  }

  /** Bits still missing in some parts: of each its entropy over the due repair, times weight. */
  private static double missing(Iterable<? extends Iterable<Integer>> parts) {
    double missing = 0;
    for (Iterable<Integer> part : parts) {
      Map<Integer, Double> byRepair = new LinkedHashMap<>();
      double all = 0;
      for (int member : part) {
        Ground.Atom atom = FIELD.ground().atoms()[member];
        byRepair.merge(atom.own(), atom.weight(), Double::sum);
        all += atom.weight();
      }
      for (double weight : byRepair.values()) {
        missing -= weight * Math.log(weight / all) / Math.log(2);
      }
    }
    return missing;
  }

  /** Scores of the looks by definition, best first. */
  private static List<Double> scores(List<Integer> members) {
    double weight = members.stream().mapToDouble(m -> FIELD.ground().atoms()[m].weight()).sum();
    double before = missing(List.of(members));
    List<Double> scores = new ArrayList<>();
    for (Ground.Column column : FIELD.ground().columns()) {
      Map<Short, List<Integer>> parts = new LinkedHashMap<>();
      for (int member : members) {
        parts.computeIfAbsent(column.codes()[member], k -> new ArrayList<>()).add(member);
      }
      double gain = before - missing(parts.values());
      if (gain > 1e-5 * weight) {
        scores.add(gain / (column.price() * weight));
      }
    }
    scores.sort(Comparator.reverseOrder());
    return scores;
  }

  private static void assertBestAreFound(List<Integer> members) {
    int[] left = members.stream().mapToInt(Integer::intValue).toArray();
    Gains gains = new Gains(FIELD.ground());
    List<Double> expected = scores(members);
    List<Double> found =
        gains.ranked(left, MOST).stream().filter(Option::isLook).map(Option::score).toList();
    for (int i = 0; i < Math.min(found.size(), expected.size()); i++) {
      assertEquals(expected.get(i), found.get(i), 1e-5 * expected.get(i), "look " + i);
    }
    long repairs = gains.ranked(left, MOST).stream().filter(o -> !o.isLook()).count();
    assertTrue(found.size() + repairs >= Math.min(MOST, expected.size()), found.size() + " found");
  }

  @Test
  void bestLooks_ofTheWholeBoard_areThoseByDefinition() {
    assertBestAreFound(IntStream.of(FIELD.members()).boxed().toList());
  }

  @Test
  void bestLooks_ofCandidatesDrawnAtRandom_areThoseByDefinition() {
    Random random = new Random(5);
    for (int i = 0; i < 60; i++) {
      int often = 1 + random.nextInt(60);
      List<Integer> members = new ArrayList<>();
      for (int member : FIELD.members()) {
        if (random.nextInt(often) == 0) {
          members.add(member);
        }
      }
      if (members.size() > 1) {
        assertBestAreFound(members);
      }
    }
  }

  @Test
  void screenedLooks_areTheSameOnesAsWhenEveryLookIsJudged() {
    Gains gains = new Gains(FIELD.ground());
    int[] members = FIELD.members();
    List<Option> all = gains.ranked(members, Integer.MAX_VALUE);
    assertEquals(all.subList(0, MOST), gains.ranked(members, MOST));
    assertEquals(all.subList(0, 1), gains.ranked(members, 1));
  }

  /** Counted, not timed: judging every look of a whole board is what {@code next} waited for. */
  @Test
  void advice_onAWholeBoard_judgesFewLooks() {
    PricePlanner.Plan plan = new PricePlanner().plan(FIELD, MOST);
    int looks = FIELD.ground().columns().length;
    assertTrue(looks > 1000, looks + " looks");
    // Twenty for the proposals and a dozen after them; all would be some thousand for each step.
    assertTrue(plan.gains().judged() < looks / 5, plan.gains().judged() + " judged");
  }
}
