package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.diagnosis.Verdict.Finding;
import faultfinch.diagnosis.Verdict.Mismatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What every contradiction must hold, over drawn boards, hypotheses and observations. */
class ContradictionPropertyTest {
  private static final long SEED = 20260611;
  private static final int CASES = 200;
  private static final List<String> OUTCOMES = List.of("normal", "low", "high", "mid");

  /** A board of a dozen faults that show something in one of so many of 18 looks. */
  private static Toy board(Random random, int rare) {
    Toy toy = new Toy();
    for (int look = 0; look < 18; look++) {
      toy.look("probe " + (10 + look), 1);
    }
    for (int fault = 0; fault < 12; fault++) {
      List<String> shows = new ArrayList<>();
      for (int look = 0; look < 18; look++) {
        if (random.nextInt(rare) == 0) {
          shows.add("probe " + (10 + look));
          shows.add(OUTCOMES.get(1 + random.nextInt(3)));
        }
      }
      toy.fault("f" + fault, "U" + fault, 1 + random.nextInt(9), shows.toArray(String[]::new));
    }
    return toy;
  }

  /** Most of the looks, most as one of the faults shows them, seen or told. */
  private static Evidence evidence(Toy toy, Random random) {
    String truth = "f" + random.nextInt(12);
    List<Observation> seen = new ArrayList<>();
    for (String look : toy.looks()) {
      if (random.nextInt(8) != 0) {
        String outcome =
            random.nextInt(6) == 0
                ? OUTCOMES.get(random.nextInt(OUTCOMES.size()))
                : toy.row(truth).get(look);
        seen.add(
            random.nextBoolean()
                ? Observation.bench(look, outcome)
                : Observation.told(look, outcome));
      }
    }
    return new Evidence(seen, List.of());
  }

  private static Evidence without(Evidence all, List<Observation> some) {
    List<Observation> left = new ArrayList<>(all.seen());
    left.removeAll(some);
    return new Evidence(left, List.of());
  }

  @Test
  void contradictingSet_takenAwayLiftsIt_andWithAnyOnePutBackItStands() {
    Random random = new Random(SEED);
    int contradicted = 0;
    int large = 0;
    for (int i = 0; i < CASES; i++) {
      Toy toy = board(random, i % 4 == 0 ? 1 : 4);
      Evidence all = evidence(toy, random);
      String suspect = "f" + random.nextInt(12);
      Verdict verdict = toy.diagnosis().weigh(suspect, all);
      List<Observation> set = verdict.contradicting().stream().map(Mismatch::seen).toList();
      assertEquals(verdict.finding() == Finding.CONTRADICTED, !set.isEmpty());
      if (set.isEmpty()) {
        continue;
      }
      contradicted++;
      large += verdict.mismatches().size() > 12 ? 1 : 0;
      assertTrue(verdict.fit() < 1.0 / 20, suspect);
      assertFalse(contradicted(toy, suspect, without(all, set)), suspect + " without " + set);
      for (Observation back : set) {
        List<Observation> less = new ArrayList<>(set);
        less.remove(back);
        assertTrue(contradicted(toy, suspect, without(all, less)), back + " of " + set);
      }
    }
    // Both ways to find a set were tried often.
    assertTrue(contradicted > CASES / 2, contradicted + " of " + CASES);
    assertTrue(large > 5, large + " with many mismatches");
  }

  private static boolean contradicted(Toy toy, String suspect, Evidence evidence) {
    return toy.diagnosis().weigh(suspect, evidence).finding() == Finding.CONTRADICTED;
  }

  @Test
  void contradictingSet_ofFewMismatches_isOfTheSmallestSize() {
    Random random = new Random(SEED + 1);
    int tried = 0;
    for (int i = 0; i < 40; i++) {
      Toy toy = board(random, 4);
      Evidence all = evidence(toy, random);
      String suspect = "f" + random.nextInt(12);
      Verdict verdict = toy.diagnosis().weigh(suspect, all);
      int size = verdict.contradicting().size();
      if (size < 2 || verdict.mismatches().size() > 6) {
        continue;
      }
      tried++;
      List<Observation> against = verdict.mismatches().stream().map(Mismatch::seen).toList();
      for (int set = 0; set < 1 << against.size(); set++) {
        if (Integer.bitCount(set) < size) {
          List<Observation> gone = new ArrayList<>();
          for (int j = 0; j < against.size(); j++) {
            if ((set >> j & 1) != 0) {
              gone.add(against.get(j));
            }
          }
          assertTrue(contradicted(toy, suspect, without(all, gone)), suspect + " " + gone);
        }
      }
    }
    assertTrue(tried > 5, tried + " tried");
  }
}
