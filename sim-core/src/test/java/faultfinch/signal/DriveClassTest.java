package faultfinch.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Volts behind ohms of every class, low and high, as the level model states them. */
class DriveClassTest {

  @ParameterizedTest
  @CsvSource({
    "LS gate, 200, 25, 3400, 100",
    "LS buffer, 200, 10, 3400, 30",
    "NMOS LSI, 100, 150, 3800, 1200",
    "MOS memory, 100, 80, 3800, 400",
    "analogue, 50, 600, 2500, 600",
    "amplifier, 100, 100, 10500, 100"
  })
  void named_classOfARoleLine_hasItsFigures(
      String words, int lowMv, int lowOhms, int highMv, int highOhms) {
    DriveClass c = DriveClass.named(words);
    assertEquals(lowMv, c.millivolts(false));
    assertEquals(lowOhms, c.ohms(false));
    assertEquals(highMv, c.millivolts(true));
    assertEquals(highOhms, c.ohms(true));
  }

  @Test
  void named_unknownClass_isRefused() {
    String says =
        assertThrows(IllegalArgumentException.class, () -> DriveClass.named("ECL gate"))
            .getMessage();
    assertEquals(
        "found drive class 'ECL gate', right would be LS gate, LS buffer, NMOS LSI, MOS memory,"
            + " analogue, tape head or amplifier",
        says);
  }
}
