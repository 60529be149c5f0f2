package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SearchesTest {
  private final Searches searches = new Searches();

  @Test
  void nothingYet_isDue() {
    assertTrue(searches.due(0));
  }

  /** 20,000 cycles after the first that was in vain, 40,000 after the next. */
  @Test
  void inVain_isDueLaterEachTime() {
    searches.inVain(1_000);
    assertFalse(searches.due(20_999));
    assertTrue(searches.due(21_000));
    searches.inVain(21_000);
    assertFalse(searches.due(60_999));
    assertTrue(searches.due(61_000));
  }

  /** 55,000 played to spare 10: 54,990 are owed, so none until as many later. */
  @Test
  void lostBeforeItWasWorthIt_isPutOffForAsLong() {
    searches.found(1_000, 55_000);
    searches.lost(1_010);
    assertFalse(searches.due(55_999));
    assertTrue(searches.due(56_000));
  }

  /** The second owes what the first did as well: 54,990 and 54,980. */
  @Test
  void lostAgainAtOnce_isPutOffForBoth() {
    searches.found(1_000, 55_000);
    searches.lost(1_010);
    searches.found(60_000, 55_000);
    searches.lost(60_020);
    assertFalse(searches.due(169_989));
    assertTrue(searches.due(169_990));
  }

  @Test
  void lostAfterItWasWorthIt_isDueAtOnce() {
    searches.found(1_000, 55_000);
    searches.lost(56_000);
    assertTrue(searches.due(56_000));
  }

  /** A round of 512 cycles is soon found again: 500 cycles later if it hardly lasted. */
  @Test
  void cheapOne_isDueWhenAFlurryIsOver() {
    searches.found(1_000, 512);
    searches.lost(1_499);
    assertFalse(searches.due(1_998));
    assertTrue(searches.due(1_999));
    searches.found(2_000, 512);
    searches.lost(2_500);
    assertTrue(searches.due(2_500));
  }
}
