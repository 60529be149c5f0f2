package faultfinch.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.BoardReader;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AskedTest {

  private static final BoardPlan PLAN = new BoardPlan(BoardReader.shipped("sorrel"));

  @Test
  void line_withWordsToType_isSplitBeforeThem() {
    assertEquals(
        new Asked("Is it alive at the processor?", "probe U1.D0"),
        Asked.of("Is it alive at the processor? Type probe U1.D0"));
    assertEquals(new Asked("Switch it on:", "power on"), Asked.of("Switch it on: type power on"));
  }

  @Test
  void line_withoutThem_staysWhole() {
    assertEquals(new Asked("Look around.", ""), Asked.of("Look around."));
  }

  @Test
  void words_namingAPin_pointAtIt() {
    assertEquals(PLAN.find("U1.D0"), new Asked("", "probe U1.D0").spot(PLAN));
  }

  @Test
  void words_aboutTheSupply_pointAtTheBrick() {
    assertEquals(Optional.of(new Spot.OnBrick()), new Asked("", "bench supply").spot(PLAN));
  }

  @Test
  void words_forPower_pointAtTheSwitchAndNotAtTheBoard() {
    Asked asked = new Asked("", "power on");
    assertEquals(Asked.Beside.POWER, asked.beside());
    assertEquals(Optional.empty(), asked.spot(PLAN));
  }
}
