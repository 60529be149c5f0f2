package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ResemblanceTest {

  /** Signs in common, of places at which not both are blank; lines that end early are blank. */
  @ParameterizedTest
  @CsvSource({
    "'ab | cd', 'ab | ce', 0.75",
    "'ab', 'ab', 1",
    "'', '', 1",
    "'   ', '', 1",
    "'ab', '', 0",
    "'abc | de', 'ab | de', 0.8",
    "'a b', 'a c', 0.5",
    "'ab | cd', 'cd | ab', 0",
    "'ab', 'ab | cd', 0.5"
  })
  void of_texts_isTheShareOfSignsInCommon(String one, String other, double share) {
    assertEquals(share, Resemblance.of(one, other), 1e-12);
    assertEquals(share, Resemblance.of(other, one), 1e-12);
  }
}
