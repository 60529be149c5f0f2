package faultfinch.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.BoardReader;
import faultfinch.fx.Words;
import org.junit.jupiter.api.Test;

class BoardViewModelTest {

  private final BoardViewModel model =
      new BoardViewModel(BoardReader.shipped("sorrel"), Words.of(BoardViewModel.class));

  @Test
  void hand_onAPin_isSaidInASentenceWithItsNet() {
    // Sorrel's U1 stands at 58, 14; pin 4 is three pitches of 2.54 mm below pin 1.
    model.point(58, 14 + 3 * 2.54, 0);
    assertEquals("pin 4 of U1, net IRQ/", model.sentence().get());
    assertEquals("IRQ/", model.net().get());
  }

  @Test
  void hand_onABody_namesThePartAndWhatItDoes() {
    model.point(65, 40, 0);
    assertEquals("U1, processor (6502), in a socket", model.sentence().get());
    assertEquals("", model.net().get());
  }

  @Test
  void sentence_naming_picksThePin() {
    assertTrue(model.find("pin 4 of U1").isPresent());
    assertEquals("pin 4 of U1, net IRQ/", model.sentence().get());
    assertEquals(model.find("U1.IRQ/"), model.find("u1 pin 4"));
  }

  @Test
  void sentence_namingANet_lightsIt() {
    model.find("net D0");
    assertEquals("D0", model.net().get());
  }

  @Test
  void sentence_namingNothing_picksNothing() {
    assertTrue(model.find("the blue one").isEmpty());
  }

  @Test
  void pointer_leaving_goesBackToWhatWasPicked() {
    model.find("pin 4 of U1");
    model.point(65, 40, 0);
    model.leave();
    assertEquals("pin 4 of U1, net IRQ/", model.sentence().get());
  }

  @Test
  void arrow_down_goesToTheNextPinOfTheRow() {
    model.find("pin 4 of U1");
    model.step(0, 1);
    assertEquals("pin 5 of U1 (NC1), not connected", model.sentence().get());
  }
}
