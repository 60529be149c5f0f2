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
        "two low tones instead of the chord | two low tones | instead of the chord",
        "160 pages rather than 256 | 160 pages | rather than 256",
        "U21.DE 0.1V where I expect 3V | U21.DE 0.1V | where I expect 3V",
        "A4 at EX1 3.8V not 0.1V | A4 at EX1 3.8V | not 0.1V",
        "SO on U1 1.8V where 5 should be | SO on U1 1.8V | where 5 should be",
        "U27 2B about 1.4 where 3.8 belongs | U27 2B about 1.4 | where 3.8 belongs",
        "STB/ on DRV1 busy when it ought to rest high | STB/ on DRV1 busy | when it ought to rest high",
        "U32.D3 shows 0.2V against 1.8 usual | U32.D3 shows 0.2V | against 1.8 usual",
        "A0 at 1.6 V (good one 1.3) | A0 at 1.6 V | (good one 1.3)"
      })
  void whatIsSaidOfAGoodBoard_isParted(String says, String here, String there) {
    assertEquals(new GoodBoard.Apart(here, there), GOOD.apart(says));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "should be 0.2V",
        "normally about 4",
        "reference board 1.8V",
        "0.2 is right",
        "the good board has 0.2 V there",
        "another healthy set reads 3.4"
      })
  void aPieceOfAGoodBoardOnly_leavesNothing(String says) {
    assertEquals(new GoodBoard.Apart("", says), GOOD.apart(says));
  }

  @ParameterizedTest
  @ValueSource(strings = {"5 V is good", "picture good", "sound normal", "U1.A4 not moving"})
  void aPieceOfThisBoard_staysWhole(String says) {
    assertEquals(new GoodBoard.Apart(says, ""), GOOD.apart(says));
  }

  @Test
  void whatWas_isOfBefore() {
    assertTrue(GOOD.isOfBefore("it used to play a chord"));
    assertFalse(GOOD.isOfBefore("it plays a chord"));
  }
}
