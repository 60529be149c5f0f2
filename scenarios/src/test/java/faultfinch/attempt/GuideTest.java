package faultfinch.attempt;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.format.GuideLine;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class GuideTest {
  private final Guide guide =
      new Guide(
          List.of(
              new GuideLine("look", List.of("look: screen")),
              new GuideLine("probe", List.of("look: probe U1.D0 at the pin")),
              new GuideLine("cure", List.of("reseat: U9")),
              new GuideLine("look again", List.of("look: screen"))));

  @Test
  void act_asked_bringsTheNextLine() {
    guide.did("look: screen");
    assertEquals(Optional.of("probe"), guide.asks());
  }

  @Test
  void act_notAsked_leavesTheLine() {
    guide.did("look: lamp");
    assertEquals(Optional.of("look"), guide.asks());
  }

  @Test
  void look_madeEarly_isNotAskedAgain() {
    guide.did("look: probe U1.D0 at the pin");
    guide.did("look: screen");
    assertEquals(Optional.of("cure"), guide.asks());
  }

  /** The last look is there to see whether the cure helped. */
  @Test
  void lookAfterACure_madeBeforeIt_isStillAsked() {
    guide.did("look: screen");
    guide.did("look: screen");
    guide.did("look: probe U1.D0 at the pin");
    guide.did("reseat: U9");
    assertEquals(Optional.of("look again"), guide.asks());
    guide.did("look: screen");
    assertEquals(Optional.empty(), guide.asks());
  }
}
