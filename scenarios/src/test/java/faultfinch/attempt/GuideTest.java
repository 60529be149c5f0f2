package faultfinch.attempt;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.format.GuideLine;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
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
    guide.did("look: screen", true);
    assertEquals(Optional.of("probe"), guide.asks());
  }

  @Test
  void act_notAsked_leavesTheLine() {
    guide.did("look: lamp", true);
    assertEquals(Optional.of("look"), guide.asks());
  }

  @Test
  void look_madeEarly_isNotAskedAgain() {
    guide.did("look: probe U1.D0 at the pin", true);
    guide.did("look: screen", true);
    assertEquals(Optional.of("cure"), guide.asks());
  }

  /** The last look is there to see whether the cure helped. */
  @Test
  void lookAfterACure_madeBeforeIt_isStillAsked() {
    guide.did("look: screen", true);
    guide.did("look: screen", true);
    guide.did("look: probe U1.D0 at the pin", true);
    guide.did("reseat: U9", true);
    assertEquals(Optional.of("look again"), guide.asks());
    guide.did("look: screen", true);
    assertEquals(Optional.empty(), guide.asks());
  }

  /** As the first case has them: numbers are the lines, by what the guide then says. */
  private static Guide lesson() {
    return new Guide(
        List.of(
            new GuideLine("1", List.of("bench supply")),
            new GuideLine("2", List.of("power on")),
            new GuideLine("3", List.of("look: screen")),
            new GuideLine("4", List.of("strip")),
            new GuideLine("5", List.of("look: probe U1.D0 at the pin")),
            new GuideLine("6", List.of("look: probe U9.D0 at the pin")),
            new GuideLine("7", List.of("power off")),
            new GuideLine("8", List.of("wrist strap")),
            new GuideLine("9", List.of("reseat: U9")),
            new GuideLine("10", List.of("power on")),
            new GuideLine("11", List.of("look: screen")),
            new GuideLine("12", List.of("decide: U9: contact"))));
  }

  /** What is asked after each act, with blanks between; acts have commas between. */
  private static String asked(String acts) {
    Guide guide = lesson();
    StringJoiner asked = new StringJoiner(" ");
    boolean powered = false;
    for (String act : acts.split(", ")) {
      powered = act.equals("power on") || powered && !act.equals("power off");
      guide.did(act, powered);
      asked.add(guide.asks().orElse("-"));
    }
    return asked.toString();
  }

  private static final String BEGUN = "bench supply, power on, look: screen, ";
  private static final String U1 = "look: probe U1.D0 at the pin";
  private static final String U9 = "look: probe U9.D0 at the pin";
  private static final String LOOKED = BEGUN + "strip, " + U1 + ", " + U9 + ", ";

  @Test
  void lesson_doneAsAsked_goesThroughAllLines() {
    assertEquals(
        "2 3 4 5 6 7 8 9 10 11 12 -",
        asked(
            LOOKED
                + "power off, wrist strap, reseat: U9, power on, look: screen,"
                + " decide: U9: contact"));
  }

  @Test
  void step_whoseNextIsDoneInstead_isNotAskedAgain() {
    assertEquals("2 3 4 6 7", asked(BEGUN + U1 + ", " + U9));
    assertEquals("3 4", asked("power on, look: screen"));
    assertEquals("2 3 4 5 6 7 8 10", asked(LOOKED + "power off, reseat: U9"));
  }

  @Test
  void stepFarAhead_doneEarly_leavesWhatIsAsked() {
    assertEquals("1 2 3", asked("wrist strap, bench supply, power on"));
    assertEquals(
        "1 2 3 4 5 6 7 9",
        asked(
            "wrist strap, bench supply, power on, look: screen, strip, "
                + U1
                + ", "
                + U9
                + ", power off"));
  }

  /** Both probes tell more than the steps before them; those are given up, the cure is not. */
  @Test
  void twoLaterSteps_done_giveUpWhatCameBefore() {
    assertEquals("2 3 3 7", asked("bench supply, power on, " + U1 + ", " + U9));
  }

  @Test
  void powerTakenBack_isAskedForAgain() {
    assertEquals("2 3 2 3 4", asked("bench supply, power on, power off, power on, look: screen"));
    assertEquals("2 3 4 5 6 7 8 7 8", asked(LOOKED + "power off, power on, power off"));
  }

  /** The board is still on: there is nothing to switch, and it is looked at once more. */
  @Test
  void cureWithThePowerOn_isFollowedToTheEnd() {
    assertEquals(
        "2 3 4 5 6 7 7 12 -", asked(LOOKED + "reseat: U9, look: screen, decide: U9: contact"));
  }

  @Test
  void secondLook_beforeTheCure_isNotTheOneAfterIt() {
    assertEquals("2 3 4 4 4", asked(BEGUN + "look: screen, look: screen"));
  }
}
