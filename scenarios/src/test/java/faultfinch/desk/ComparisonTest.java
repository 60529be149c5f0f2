package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pictures drawn on paper, and what a technician would say of each. */
class ComparisonTest {
  private static final String START = "'Good morning | 64 pages | > #' in white";
  private static final String TYPED = "'Good morning | 64 pages | > hello | Hello! | > #' in white";

  private static boolean holds(String word, String outcome, String healthy) {
    return Comparison.named(word)
        .orElseThrow()
        .holds(outcome, new Comparison.Normal(healthy, START));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '^',
      value = {
        // Columns 1, 3, 5 ... wrong; then 0, 2, 4 ... wrong.
        "every-second-column; 'Gxox xoxnxnx | 6x xaxex' in white; true",
        "every-second-column; 'xoxd mxrxixg | x4 pxgxs' in white; true",
        "every-second-column; 'Good morning | 64 pages' in white; false",
        "every-second-column; 'xxxx xxxxxxx | xx xxxxx' in white; false",
        "every-second-column; no picture; false",
        // A lit blank before the row moves it by one.
        "every-second-column; '#Gxox xoxnxnx#' in white; true",
        "misshapen; '#### ####### | ## #####' in white; true",
        "misshapen; 'G### ####### | ## #####' in white; true",
        "misshapen; 'Good morning | 64 pages | > #' in white; false",
        "misshapen; '############ | ############ | ############' in white; true",
        "filled; '############ | ############ | ############' in white; true",
        "filled; '#### ####### | ## ##### | ###' in white; false",
        "repeated; 'Good morning | 64 pages | Good morning' in white; true",
        "repeated; 'Good morning | #### | ####' in white; false",
        "started; 'Good morning | 64 pages | >' in green; true",
        "started; 'Good morning | 32 pages | > #' in white; true",
        "started; 'Good | # pages are bad' in white; false",
        "started; '#### ####### | ## #####' in white; false",
        // One row spoilt, and the prompt is reached.
        "started; 'Good morning | 64 ## | > #' in white; true",
        "started; 'Good ####### | 64 pages | > #' in white; false",
        "started; no picture; false",
        "legible; 'Good xxxxxx' in white; true",
        // An l has lost the one column it has.
        "legible; '#  # ####### | ## #####' in white; true",
        "legible; '#### ####### ## | ## #####' in white; false",
        "legible; '####### #### | ## #####' in white; false",
        "legible; no picture; false",
        "lower; 'Good morning | 32 pages | > #' in white; true",
        "higher; 'Good morning | 32 pages | > #' in white; false",
      })
  void holds_ofAPicture_asOnPaper(String word, String outcome, boolean holds) {
    assertEquals(holds, holds(word, outcome, START));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '^',
      value = {
        "echo-none; 'Good morning | 64 pages | > #' in white; true",
        "echo-none; no picture; true",
        "echo-none; 'Good morning | 64 pages | >   !  #' in white; true",
        "echo-part; 'Good morning | 64 pages | >   !  #' in white; false",
        "echo-none; 'Good morning | 64 pages | > hllo#' in white; false",
        "echo-part; 'Good morning | 64 pages | > hllo#' in white; true",
        "echo-part; 'Good morning | 64 pages | > hello#' in white; false",
        "echo-part; 'Good morning | 64 pages | > #' in white; false",
        "echo-whole; 'Good morning | 64 pages | > hello | What? | > #' in white; true",
        "echo-whole; '#### ####### | ## ##### | # ##### | ##### | # #' in white; true",
        "echo-whole; '#### ####### | ## ##### | # #' in white; false",
        "echo-whole; 'Good morning | 64 pages | > helo | What? | > #' in white; false",
      })
  void holds_ofWhatIsTyped_asOnPaper(String word, String outcome, boolean holds) {
    assertEquals(holds, holds(word, outcome, TYPED));
  }

  @ParameterizedTest
  @CsvSource({
    "loud and clear long 523 Hz, true",
    "loud and clear long chord of 311 and 523 Hz, false",
    "silent, false",
  })
  void fewerNotes_thanAChordOfTwo_isOne(String outcome, boolean holds) {
    assertEquals(
        holds, holds("fewer-notes", outcome, "loud and clear long chord of 311 and 523 Hz"));
  }
}
