package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.BoardReader;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.ShippedDictionaries;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The good board's picture has four rows, of which the second tells of 256 pages. */
class InShortTest {
  private static final FaultDictionary TAMARISK =
      ShippedDictionaries.of(BoardReader.shipped("tamarisk")).orElseThrow();
  private static final String LOOK = "screen";
  private static final String GOOD = TAMARISK.outcomes(TAMARISK.look(LOOK).orElseThrow()).get(0);

  private static List<String> inShort(String... outcomes) {
    return InShort.of(List.of(outcomes), LOOK, TAMARISK, new Words());
  }

  @Test
  void short_isLeftAsItIs() {
    assertEquals(List.of("no picture", "dark"), inShort("no picture", "dark"));
  }

  @Test
  void goodBoard_isNotToldAgain() {
    assertEquals(List.of("as on a good board"), inShort(GOOD));
  }

  @Test
  void oneRowOff_isToldAlone() {
    assertEquals(
        List.of("as on a good board, but 160 pages passed"), inShort(GOOD.replace("256", "160")));
  }

  @Test
  void rowsAlike_areToldOnce() {
    String row = "x".repeat(100);
    assertEquals(
        List.of("3 times " + row + " | y | in white"),
        inShort("'" + String.join(" | ", row, row, row) + " | y' in white"));
  }

  @Test
  void twoThatWouldReadTheSame_areToldInFull() {
    String one = "'" + "a".repeat(300) + "' in white";
    String other = "'" + "a".repeat(301) + "' in white";
    assertEquals(List.of(one, other), inShort(one, other));
  }

  @Test
  void whatIsNoLook_isLeftAsItIs() {
    String words = "some words that are many more than are left alone in a column of a page";
    assertEquals(List.of(words), InShort.of(List.of(words), "not a look", TAMARISK, new Words()));
  }
}
