package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SpellingTest {

  /** R is a P wherever it stands. */
  @Test
  void alike_withOtherLettersThroughout_isSo() {
    assertTrue(Spelling.alike("STAIPS PEAD", "STAIRS READ"));
    assertTrue(Spelling.alike("", ""));
  }

  /** The first R is a P and the second one is not; one is too short. */
  @Test
  void alike_withAWrongLetterHere_isNotSo() {
    assertFalse(Spelling.alike("STAIPS READ", "STAIRS READ"));
    assertFalse(Spelling.alike("STAIRS REA", "STAIRS READ"));
  }
}
