package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.Hint;
import faultfinch.diagnosis.ShippedDictionaries;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AcrossWordsTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final Lookbook LOOKS = Lookbook.of(ShippedDictionaries.of(TAMARISK).orElseThrow());

  private static List<Hint> hints(String says) {
    Desk desk = new Desk(TAMARISK, LOOKS);
    desk.note(Entry.saw(says));
    return desk.evidence().hints();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.3 ohm between pins 7 and 8 of U20        | true  | U20.A6-U20.A7: bridge",
        "A12 and A13 look alike; 0.2 ohm from one to the other | true | EX1.A12-EX1.A13: bridge",
        "U31 pins 4 and 6 carry the same, and I measure 0.2 ohms between them | true | RN1.2-RN1.3: bridge",
        "D3 and D4 are shorted together             | true  | U2.D3-U2.D4: bridge",
        "no connection between D3 and D4             | false | U2.D3-U2.D4: bridge",
        "200 kohms between D3 and D4                | false | U2.D3-U2.D4: bridge",
      })
  void find_ohmmeterAcrossTwoLines_isWeighedByWhatJoinsThem(
      String says, boolean joined, String fault) {
    List<Hint> hints = hints(says);
    assertEquals(1, hints.size(), hints::toString);
    assertEquals(Hint.How.ACROSS, hints.get(0).how());
    assertEquals(joined, hints.get(0).helped());
    assertTrue(hints.get(0).faults().contains(fault), hints.get(0).faults()::toString);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "5VP to ground 0.3 ohm",
        "U30.Y0/ to K1.1 conducts",
        "0.3 ohm between D3 and ground",
        "D3 and D4 pulse",
        "50 ohms between D3 and D4",
      })
  void find_anythingElse_isNone(String says) {
    assertEquals(List.of(), hints(says));
  }

  @Test
  void find_linesOfTheEntryBefore_areForgotten() {
    Desk desk = new Desk(TAMARISK, LOOKS);
    desk.note(Entry.saw("A12 and A13 look alike"));
    desk.note(Entry.saw("0.2 ohm from one to the other"));
    assertEquals(List.of(), desk.evidence().hints());
  }
}
