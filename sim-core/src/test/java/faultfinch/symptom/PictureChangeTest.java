package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.machine.Machine;
import org.junit.jupiter.api.Test;

/** What a key changes in Tamarisk's picture, in an owner's words. */
class PictureChangeTest {
  private static final long MS = 1_000_000;

  /** K18 is F; it is taken within 60 ms, and the look after it lasts 40. */
  private static String afterF(String... faults) {
    Machine machine =
        TamariskRun.from(Machine.Kind.FAST, TamariskRun.AT_THE_PROMPT, TamariskRun.setup(faults));
    Screen before = Screen.look(machine);
    machine.hold("K18", true);
    machine.runTo((TamariskRun.AT_THE_PROMPT + 110) * MS);
    return PictureChange.between(before, Screen.look(machine));
  }

  @Test
  void keyPressed_healthyBoard_letterAppears() {
    assertEquals("'f' appears", afterF());
  }

  /** Nobody pulls its row. */
  @Test
  void keyPressed_rowDead_pictureUnchanged() {
    assertEquals("picture unchanged", afterF("U30.Y2/: open pin"));
  }

  /** The letter is written on a page that is not shown. */
  @Test
  void keyPressed_wrongPageShown_pictureDarkAsBefore() {
    assertEquals("picture dark as before", afterF("U29.Q0: drives high"));
  }

  @Test
  void keyPressed_withoutSync_noPicture() {
    assertEquals("no picture", afterF("VR2: dead"));
  }
}
