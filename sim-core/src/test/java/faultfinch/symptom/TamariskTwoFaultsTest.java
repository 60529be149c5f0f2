package faultfinch.symptom;

import static faultfinch.symptom.TamariskRun.NAME;
import static faultfinch.symptom.TamariskRun.light;
import static faultfinch.symptom.TamariskRun.reached;
import static faultfinch.symptom.TamariskRun.toThePrompt;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.machine.Machine;
import org.junit.jupiter.api.Test;

/**
 * Two faults at once: without the picture side's regulator there is no picture, so the cure of
 * another fault changes nothing that an owner could see or hear. A reading on the board changes,
 * and only both cures bring the banner.
 */
class TamariskTwoFaultsTest {
  private static final String NO_PICTURE_RAIL = "VR2: dead";
  private static final String PAGE_BIT = "U29.Q0: drives high";
  private static final String INTERRUPT = "U21.IRQ/: clamps to ground through 1";

  /** With only one of the two cured there is no banner. */
  @EachMachine
  void pageBitAndPictureRail_firstCure_changesAProbeReadingOnly(Machine.Kind kind) {
    Machine both = toThePrompt(kind, PAGE_BIT, NO_PICTURE_RAIL);
    Machine pageBitCured = toThePrompt(kind, NO_PICTURE_RAIL);
    assertEquals(both.milestones(), pageBitCured.milestones());
    assertEquals("high", light(both, "U17.3B"));
    assertEquals("low", light(pageBitCured, "U17.3B"));
    assertFalse(Screen.look(both).synced() || Screen.look(pageBitCured).synced());
    assertTrue(Screen.look(toThePrompt(kind, PAGE_BIT)).dark());
    assertTrue(Screen.look(toThePrompt(kind)).rows().contains(NAME));
  }

  /** The same with a milestone: the timer's first tick. */
  @EachMachine
  void interruptAndPictureRail_firstCure_changesAMilestoneOnly(Machine.Kind kind) {
    Machine both = toThePrompt(kind, INTERRUPT, NO_PICTURE_RAIL);
    Machine cured = toThePrompt(kind, NO_PICTURE_RAIL);
    assertFalse(reached(both, "M_TICK"));
    assertTrue(reached(cured, "M_TICK"));
    assertFalse(Screen.look(both).synced() || Screen.look(cured).synced());
  }

  /** All that an owner can tell, keys included. */
  @Test
  void pageBitAndPictureRail_ownersFeatures_areTheSameAfterTheFirstCure() {
    assertEquals(
        Watching.of(TamariskRun.setup(PAGE_BIT, NO_PICTURE_RAIL)).symptoms().features(),
        Watching.of(TamariskRun.setup(NO_PICTURE_RAIL)).symptoms().features());
  }
}
