package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class HintedTest {
  private static final double EXACT = 1e-12;

  /** Inside U1, at a contact of U1, inside U2; weights 1, 1 and 2. */
  private static Toy three() {
    return new Toy()
        .look("screen", 1)
        .fault("inside", "U1", 1, "screen", "dark")
        .fault(Suspect.of("contact", "U1", 1, Toy.reseat("U1")), "screen", "dark")
        .fault("other", "U2", 2, "screen", "dark");
  }

  private static Belief after(Hint... hints) {
    Evidence hinted =
        new Evidence(List.of(), List.of(), List.of(), List.of(), List.of(hints), List.of());
    return three().diagnosis().belief(hinted);
  }

  @Test
  void press_helped_pointsAtTheContactsOfThatPart() {
    Belief belief = after(new Hint(Hint.How.PRESS, "U1", true));
    // 1 x 0.01 inside, 1 x 0.25 at a contact, 2 x 0.004 elsewhere.
    assertEquals(25, belief.of("contact") / belief.of("inside"), EXACT);
    assertEquals(0.008 / 0.25, belief.of("other") / belief.of("contact"), EXACT);
    // What is not in the list has it as often as the list: 0.268 of 4 by weight.
    double outside = 0.03 * 0.268 / 4;
    double listed = 0.97 * 0.268 / 4;
    assertEquals(outside / (outside + listed), belief.outside(), EXACT);
  }

  @Test
  void piggyback_inVain_hardlyClearsAnything() {
    Belief belief = after(new Hint(Hint.How.PIGGYBACK, "U1", false));
    // 1 - 0.3 inside, 1 - 0.003 elsewhere.
    assertEquals(0.7 / (2 * 0.997), belief.of("inside") / belief.of("other"), EXACT);
  }

  @Test
  void across_conducts_pointsAtWhatJoinsTheLines() {
    Belief belief = after(new Hint(Hint.How.ACROSS, "D3, D4", true, Set.of("other")));
    // a millionth each elsewhere, 2 x 0.98 where they are joined.
    assertEquals(1_960_000, belief.of("other") / belief.of("inside"), 1e-3);
    assertEquals(1, belief.of("contact") / belief.of("inside"), EXACT);
  }

  @Test
  void across_doesNotConduct_clearsWhatWouldJoinTheLines() {
    Belief belief = after(new Hint(Hint.How.ACROSS, "D3, D4", false, Set.of("other")));
    // 1 - 0.000001 elsewhere, 2 x (1 - 0.98) where they would be joined.
    assertEquals(0.04 / 0.999999, belief.of("other") / belief.of("inside"), EXACT);
  }
}
