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
    Trial trial = new Trial("screen with U1 out", "screen", Set.of("U1"), Set.of(), "normal", run);
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
    // In U3, not run: dark, which of two outcomes is taken for normal in 0.01 x 0.2; but in 3 of
    // 100
    // the part out cures it all the same.
    double notRun = 0.01 * 0.2 + 0.03 * (0.99 - 0.01 * 0.2);
    // In U1 the board works. If there is a second fault it may be any of the list, none of which
    // was run.
    double inU1 = 0.55 * 0.99 + 0.45 * notRun;
    assertEquals(notRun / inU1, belief.of("in U3") / belief.of("in U1"), EXACT);
  }

  @Test
  void partOut_whatOnlyLeadsToIt_isAsIfItWereOutToo() {
    int row = alike().dictionary().row("in U1");
    Map<Integer, String> run = Map.of(row, "dark");
    Observation works = Observation.bench("screen with U1 out", "normal");
    Trial idle =
        new Trial("screen with U1 out", "screen", Set.of("U1"), Set.of("in U2"), "normal", run);
    Belief belief = alike().diagnosis().belief(Evidence.of(works).tried(List.of(idle)));
    // As likely before as that of the part itself, and as well explained.
    assertEquals(belief.of("in U1"), belief.of("in U2"), EXACT);
  }
}
