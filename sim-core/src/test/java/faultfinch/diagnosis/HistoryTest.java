package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class HistoryTest {
  private static final double EXACT = 1e-12;

  private static Belief after(History... histories) {
    Evidence told =
        new Evidence(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(histories));
    return new Toy()
        .look("screen", 1)
        .fault("inside", "U1", 3, "screen", "dark")
        .fault(Suspect.of("seat", "U1", 1, Toy.reseat("U1")), "screen", "dark")
        .diagnosis()
        .belief(told);
  }

  @Test
  void history_makesFaultsSoManyTimesAsLikely_andLeavesTheUnknownAsItWas() {
    // Seats count six times after somebody was inside: 3 to 6.
    Belief opened = after(History.OPENED);
    assertEquals(0.97 * 3 / 9, opened.of("inside"), EXACT);
    assertEquals(0.97 * 6 / 9, opened.of("seat"), EXACT);
    assertEquals(0.03, opened.outside(), EXACT);
  }

  @Test
  void histories_multiply() {
    // Six times, and five times after a fall: 3 to 30.
    assertEquals(10, ratio(after(History.OPENED, History.DROPPED)), EXACT, "seat to inside");
    assertEquals(1.0 / 3, ratio(after()), EXACT, "seat to inside");
  }

  private static double ratio(Belief belief) {
    return belief.of("seat") / belief.of("inside");
  }
}
