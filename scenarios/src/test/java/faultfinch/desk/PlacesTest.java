package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.BoardReader;
import faultfinch.board.Pad;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlacesTest {

  /**
   * Sorrel's U8 has CS and CS/, its latch U11 both outputs of each half; Tamarisk's U30 only Y1/.
   */
  @ParameterizedTest
  @CsvSource({
    "sorrel, U8 CS, CS",
    "sorrel, U8 CS/, CS/",
    "sorrel, U11 2Q, 2Q",
    "sorrel, U11 2Q/, 2Q/",
    "tamarisk, U30 Y1, Y1/",
    "tamarisk, Y1 of U30, Y1/"
  })
  void pin_isTheOneThatIsNamed_orTheOnlyOneLikeIt(String board, String words, String pin) {
    Places places = new Places(BoardReader.shipped(board), Vocabulary.shipped());
    String ref = words.replaceAll(".*(U\\d+).*", "$1");
    assertEquals(List.of(List.of(new Pad(ref, pin))), places.find(words, false).lines());
  }

  /** There is no U60, and U4-11 is a pin. */
  @ParameterizedTest
  @CsvSource({
    "U4 to U6 warm, U4 U5 U6",
    "K49 thru K51 dead, K49 K50 K51",
    "C4-C5 cold, C4 C5",
    "U44 to U60 cold, U44",
    "U4-11 low, ''"
  })
  void parts_fromOneToAnother_areAllBetweenThem(String words, String refs) {
    Places places = new Places(BoardReader.shipped("tamarisk"), Vocabulary.shipped());
    assertEquals(refs, String.join(" ", places.find(words, true).refs()));
  }
}
