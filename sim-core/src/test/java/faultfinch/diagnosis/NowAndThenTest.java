package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class NowAndThenTest {
  private static final double EXACT = 1e-12;

  /** One that starts three times of eight and is dark else; one that is always dark. */
  private static Toy two() {
    return new Toy()
        .look("screen", 1)
        .look(StartRows.LOOK, 5)
        .fault("wavers", "C3", 1, StartRows.LOOK, "starts 3 of 8 times, else dark")
        .fault("dark", "U1", 1, "screen", "dark");
  }

  /** Half a start more on either side: 3.5 of 9. */
  private static final double STARTS = 3.5 / 9;

  @Test
  void screen_seenOnce_isThatOfEitherSortOfStart() {
    Belief belief = two().diagnosis().belief(Evidence.of(Observation.bench("screen", "dark")));
    // A healthy start is taken for dark in 0.01 x 0.2 of cases, a failed one in 0.99.
    double wavers = STARTS * 0.01 * 0.2 + (1 - STARTS) * 0.99;
    assertEquals(wavers / 0.99, belief.of("wavers") / belief.of("dark"), EXACT);
  }

  @Test
  void screen_seenSoManyTimesOfSoMany_isCountedByTheStarts() {
    Observation.Reach oneOfFive =
        new Observation.Reach(
            List.of(new Sight(List.of("screen"), List.of("normal"))), true, new Tally(1, 5));
    Observation seen =
        new Observation(
            "screen", "normal", Observation.Source.BENCH, Observation.Doubt.SURE, oneOfFive, 0);
    Belief belief = two().diagnosis().belief(Evidence.of(seen));
    double normal = STARTS * 0.99 + (1 - STARTS) * 0.01;
    double wavers = 5 * normal * Math.pow(1 - normal, 4);
    // Always dark: 0.002 each time; or, one in twenty, it comes and goes at any rate.
    double dark = 0.95 * 5 * 0.002 * Math.pow(0.998, 4) + 0.05 / 6;
    assertEquals(wavers / dark, belief.of("wavers") / belief.of("dark"), 1e-9);
  }
}
