package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The text forms of looks and moves. */
class MoveTest {
  private static final Board SORREL = BoardReader.shipped("sorrel");

  @Test
  void parse_textOfEveryPassiveLook_isThatLook() {
    List<Look> looks = Looks.passive(SORREL);
    assertEquals(looks.size(), new HashSet<>(looks).size());
    for (Look look : looks) {
      assertEquals(look, Look.parse(look.text()));
      assertEquals(Move.look(look), Move.parse("look: " + look.text()));
    }
  }

  @Test
  void passive_sorrel_offersPinAndPadOfEveryChipPinToTheProbe() {
    List<Look> looks = Looks.passive(SORREL);
    assertTrue(looks.contains(Look.parse("probe U9.D0 at the pin")));
    assertTrue(looks.contains(Look.parse("probe U9.D0 at the pad")));
    assertTrue(looks.contains(Look.parse("meter C1.+")));
    assertTrue(looks.contains(Look.parse("continuity J1.--C1.-")));
    assertTrue(looks.contains(Look.parse("key K1")));
  }

  @Test
  void parse_moveWithoutPlace_keepsItEmpty() {
    assertEquals(new Move(Moves.POWER_ON, ""), Move.parse("power on"));
    assertEquals("power on", Move.parse("power on").text());
  }

  @Test
  void parse_unknownInstrument_namesThoseThereAre() {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> Move.parse("look: sniff U3"));
    assertTrue(refused.getMessage().contains("probe"), refused.getMessage());
  }
}
