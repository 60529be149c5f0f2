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
}
