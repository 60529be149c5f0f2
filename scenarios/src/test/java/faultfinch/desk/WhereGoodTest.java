package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.BoardReader;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.Sight;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which place is meant is told by what a good board shows there. */
class WhereGoodTest {
  private static Desk noted(String says) {
    Map<String, List<String>> shown = new LinkedHashMap<>();
    shown.put("screen", List.of("normal", "dark"));
    shown.put("meter U1.A0", List.of("2.4 V", "1.6 V"));
    shown.put("meter U4.A0", List.of("1.2 V", "1.6 V"));
    shown.put("meter U28.PA0", List.of("0.2 V", "5 V"));
    shown.put("meter U28.PA1", List.of("3.4 V", "5 V"));
    shown.put("probe U1.A0 at the pin", List.of("pulsing", "low"));
    Desk desk = new Desk(BoardReader.shipped("tamarisk"), new TestLookbook(shown, Map.of()));
    desk.note(Entry.saw(says));
    return desk;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.6 V on A0                                       | meter U1.A0   | 1.6 V",
        "1.6 V on A0, good board 1.2 V                     | meter U4.A0   | 1.6 V",
        "1.6 V on A0 (should be 1.2)                       | meter U4.A0   | 1.6 V",
        "A0 of the memories 1.6 V instead of 1.2 V         | meter U4.A0   | 1.6 V",
        "one scanning output sits at 5 V, should be 0.2 V  | meter U28.PA0 | 5 V",
        "one scanning output sits at 5 V. The good board has 3.4 there. | meter U28.PA1 | 5 V",
      })
  void figure_besideThatOfAGoodBoard_isWhereThatOneHasIt(String says, String look, String shown) {
    List<Observation> seen = noted(says).evidence().seen();
    assertEquals(1, seen.size(), says);
    assertEquals(
        List.of(new Sight(List.of(look), List.of(shown))), seen.get(0).reach().sights(), says);
  }

  @Test
  void figure_thatNoGoodBoardHasThere_staysWhereItIsSaidToBe() {
    List<Observation> seen = noted("U1.A0 1.6 V, good board 0.7 V").evidence().seen();
    assertEquals("meter U1.A0", seen.get(0).reach().sights().get(0).looks().get(0));
  }

  @Test
  void figure_ofNoPlaceAndNoGoodBoard_isKept() {
    assertEquals(List.of(), noted("one scanning output sits at 5 V").evidence().seen());
  }
}
