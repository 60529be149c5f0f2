package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a phrase says of a good board is no look at the one on the bench. */
class GoodBoardTest {
  private static final GoodBoard GOOD = new GoodBoard(Vocabulary.shipped());

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "two low tones instead of the chord | two low tones",
        "160 pages rather than 256 | 160 pages",
        "U21.DE 0.1V where I expect 3V | U21.DE 0.1V",
        "A4 at EX1 3.8V not 0.1V | A4 at EX1 3.8V",
        "SO on U1 1.8V where 5 should be | SO on U1 1.8V",
        "U27 2B about 1.4 where 3.8 belongs | U27 2B about 1.4",
        "STB/ on DRV1 busy when it ought to rest high | STB/ on DRV1 busy",
        "U32.D3 shows 0.2V against 1.8 usual | U32.D3 shows 0.2V"
      })
  void whatIsSaidOfAGoodBoard_goes_andTheRestStays(String says, String rest) {
    assertEquals(rest, GOOD.without(says));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"should be 0.2V", "normally about 4", "reference board 1.8V", "0.2 is right"})
  void aPieceOfAGoodBoardOnly_leavesNothing(String says) {
    assertEquals("", GOOD.without(says));
  }

  @ParameterizedTest
  @ValueSource(strings = {"5 V is good", "picture good", "sound normal", "U1.A4 not moving"})
  void aPieceOfThisBoard_staysWhole(String says) {
    assertEquals(says, GOOD.without(says));
  }

  @Test
  void whatWas_isOfBefore() {
    assertTrue(GOOD.isOfBefore("it used to play a chord"));
    assertFalse(GOOD.isOfBefore("it plays a chord"));
  }
}
