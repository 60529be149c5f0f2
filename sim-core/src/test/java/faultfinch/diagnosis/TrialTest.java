package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TrialTest {
  private static final double EXACT = 1e-12;

  /** Three faults of equal weight that show the same. */
  private static Toy alike() {
    return new Toy()
        .look("screen", 1)
        .look("probe 1", 1)
        .fault("in U1", "U1", 1, "screen", "dark")
        .fault("in U2", "U2", 1, "screen", "dark")
        .fault("in U3", "U3", 1, "screen", "dark", "probe 1", "low");
  }

  private static Belief withU1Out(String seen, Map<Integer, String> run) {
    Trial trial = new Trial("screen with U1 out", "screen", Set.of("U1"), "normal", run);
    Observation observation = Observation.bench(trial.look(), seen);
    return alike().diagnosis().belief(Evidence.of(observation).tried(List.of(trial)));
  }

  @Test
  void partOut_boardWorks_theFaultWasInIt_thoughAnotherPartsFaultShowsTheSameOtherwise() {
    // U1 and U2 share a row of the dictionary; with U1 out only the fault of U1 is out with it.
    int row = alike().dictionary().row("in U1");
    assertEquals(row, alike().dictionary().row("in U2"));
    Belief belief = withU1Out("normal", Map.of(row, "dark"));
    assertTrue(belief.of("in U1") > 20 * belief.of("in U2"), belief.faults().toString());
  }

  @Test
  void partOut_rowNotRun_isBelievedToShowWhatItShowsWithThePartIn() {
    Belief belief = withU1Out("normal", Map.of());
    // In U1: 0.99. In U3, not run: shown dark, of two outcomes, so 0.01 x 0.2; in 3 of 100 normal.
    // Alone in both cases, for the second could be any of the list if it is one of two.
    double alone = 0.01 * 0.2 + 0.03 * (0.99 - 0.01 * 0.2);
    double inU1 = 0.99;
    double two = 0.45 * usual(inU1, alone);
    assertEquals(
        (0.55 * alone + 0.45 * alone) / (0.55 * inU1 + two),
        belief.of("in U3") / belief.of("in U1"),
        EXACT);
  }

  /**
   * How often the list has it that a board works with U1 out: none of its rows was run so, and a
   * second fault may be anywhere.
   */
  private static double usual(double inU1, double alone) {
    assertTrue(inU1 > alone);
    return alone;
  }
}
