package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class RepeatsTest {
  private static final Repeats REPEATS =
      new Repeats(
          List.of(
              Observation.told("screen", "dark"),
              Observation.bench("screen", "dark"),
              Observation.bench("lamp", "lit"),
              Observation.bench("screen", "dark").afterRepairs(1),
              Observation.bench("lamp", "dark").afterRepairs(1)));

  @Test
  void seenAgain_ofWhatWasToldOrSeen_isWhatAgrees() {
    assertFalse(REPEATS.seenAgain(0));
    assertTrue(REPEATS.seenAgain(1));
    assertFalse(REPEATS.seenAgain(2));
    assertTrue(REPEATS.seenAgain(3));
    assertFalse(REPEATS.seenAgain(4));
    assertEquals(1, REPEATS.last(3));
  }

  @Test
  void acrossRepairs_countsOnlyWhatARepairCameBetween() {
    assertFalse(REPEATS.acrossRepairs(1));
    assertTrue(REPEATS.acrossRepairs(3));
    assertTrue(REPEATS.unchangedByRepair(3));
    assertTrue(REPEATS.acrossRepairs(4));
    assertFalse(REPEATS.unchangedByRepair(4));
  }
}
