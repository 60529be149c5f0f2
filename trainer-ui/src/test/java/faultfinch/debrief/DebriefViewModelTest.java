package faultfinch.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.bench.Move;
import faultfinch.workbench.ScriptedPlay;
import java.util.List;
import org.junit.jupiter.api.Test;

class DebriefViewModelTest {

  @Test
  void debrief_ofASolvedCase_laysYourWayBesideTheBest() {
    ScriptedPlay play = new ScriptedPlay(true);
    play.act(Move.parse("power on"));
    play.act(Move.parse("exchange: U3"));
    play.decide("U9: contact");
    DebriefViewModel model = new DebriefViewModel(play.close());
    assertEquals("The board works", model.headline());
    assertEquals(2, model.yours().size());
    assertEquals(3, model.best().size());
    assertEquals("6 min in all", model.bestTotal());
    // The exchange costs 24.5, more than any other; a move of 2 is 2 / 24.5 as long.
    assertEquals(1, model.yours().get(1).cost());
    assertEquals(2 / 24.5, model.yours().get(0).cost(), 1e-9);
    assertEquals(List.of("U9: contact: the board works again (2 min)"), model.decisions());
  }

  @Test
  void debrief_ofALeftCase_saysSo() {
    assertEquals(
        "The board is still not right",
        new DebriefViewModel(new ScriptedPlay(true).close()).headline());
  }
}
