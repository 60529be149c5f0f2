package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Pad;
import java.util.List;
import org.junit.jupiter.api.Test;
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

  /** K11 is the key I. */
  @Test
  void keys_thatSomebodyTried_areNoKeyI() {
    Places places = new Places(BoardReader.shipped("tamarisk"), Vocabulary.shipped());
    assertEquals(List.of("K11"), places.find("key I dead", false).refs());
    assertNotEquals(List.of("K11"), places.find("the other keys I tried", false).refs());
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

  /** D0 to D7 are the processor's lines, MD0 to MD7 the memories'; RES/ is of neither. */
  @ParameterizedTest
  @CsvSource({
    "data lines D0 to D2 low, D0 D1 D2",
    "data line D5 low, D5",
    "memory data lines D0 and D1 low, MD0 MD1",
    "reset line and D5 low, RES/ D5",
    "12 v rail missing at the sound chip, 12V"
  })
  void lines_ofAKindByTheirNames_areTheseAlone(String words, String nets) {
    Board tamarisk = BoardReader.shipped("tamarisk");
    Places places = new Places(tamarisk, Vocabulary.shipped());
    List<String> found =
        places.find(words, false).lines().stream()
            .map(line -> tamarisk.netOfPad().get(line.get(0)).name())
            .toList();
    assertEquals(List.of(nets.split(" ")), found);
  }

  /** The memories are U4 to U11, the tone generator U34; VR1, VR2 and VR3 are more than two. */
  @ParameterizedTest
  @CsvSource({
    "memory chips cold, U4 U5 U6 U7 U8 U9 U10 U11",
    "tone chip cold, U34",
    "video chip warm, U21"
  })
  void parts_areCalledByTheLongestName(String words, String refs) {
    Places places = new Places(BoardReader.shipped("tamarisk"), Vocabulary.shipped());
    assertEquals(refs, String.join(" ", places.find(words, true).refs()));
  }

  @Test
  void both_ofThree_areNotAll() {
    Places places = new Places(BoardReader.shipped("tamarisk"), Vocabulary.shipped());
    assertEquals(Place.Quantity.SOME, places.find("both regulators", true).quantity());
    assertEquals(Place.Quantity.EVERY, places.find("all regulators", true).quantity());
  }
}
