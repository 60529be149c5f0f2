package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A healthy picture of two words in two colours, and what may stand there instead. */
class ShowsTest {
  private static final String HEALTHY = "'Morning glory | #' in red, white";

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '^',
      value = {
        "wrong & same-letters; 'Morning glory | #' in white; true",
        "wrong & same-letters; 'Morning glory | #' in red, white; false",
        "wrong & same-letters; 'Morning gl#ry | #' in white; false",
        "wrong & same-letters; no picture; false",
        // What had the missing colour is gone.
        "wrong & same-letters; 'Morning glory' in white; true",
        "wrong & same-letters; 'Morning glory' in red, white; false",
        "usual-inks; 'Morning gl#ry' in red, white; true",
        "usual-inks; 'Morning glory | #' in white; false",
        "wrong & '.* & other-text; 'Morning gl#ry | #' in red, white; true",
        "wrong & '.* & no-word; 'Morning gl#ry | #' in red, white; false",
        "wrong & '.* & no-word; '## gl#ry | #' in red, white; true",
        "healthy; 'Morning glory | #' in red, white; true",
        "some-word; 'glory' in red; true",
        "some-word; 'gl#ry' in red; false",
        // White is red, green and blue.
        "lacks blue; 'Morning glory | #' in red, white; false",
        "lacks blue; 'Morning glory | #' in red, yellow; true",
        "lacks green; 'Morning glory | #' in red, magenta; true",
        "lacks green; no picture; false",
        "one-ink; 'Morning glory | #' in white, a dark bar rolls down; true",
        "one-ink; 'Morning glory | #' in red, white; false",
      })
  void covers_termsAgainstAHealthyPicture_holdAllTogether(
      String terms, String outcome, boolean covered) {
    assertEquals(covered, Shows.of(terms).covers(outcome, new Comparison.Normal(HEALTHY, HEALTHY)));
  }
}
