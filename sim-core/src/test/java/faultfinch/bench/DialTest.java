package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** The steps of the instruments' dials. */
class DialTest {

  @Test
  void volts_belowTwo_stepByATenth() {
    assertEquals("0.8 V", Dial.volts(899).feature());
    assertEquals("0.9 V", Dial.volts(900).feature());
    assertEquals("1.9 V", Dial.volts(1999).feature());
  }

  @Test
  void volts_aboveTwo_stepByTwoTenths() {
    assertEquals("3.4 V", Dial.volts(3400).feature());
    assertEquals("3.4 V", Dial.volts(3599).feature());
    assertEquals("3.6 V", Dial.volts(3600).feature());
  }

  @Test
  void volts_withinTheToleranceOfTheSupply_areOneStep() {
    assertEquals(Dial.volts(4750).feature(), Dial.volts(5250).feature());
    assertNotEquals(Dial.volts(4749).feature(), Dial.volts(4750).feature());
    assertNotEquals(Dial.volts(5251).feature(), Dial.volts(5250).feature());
    assertEquals("4.8 V", Dial.volts(4830).text());
  }

  @Test
  void current_underAndAtAnEdge_fallsInDifferentSteps() {
    assertEquals("550 to 600 mA", Dial.current(599).feature());
    assertEquals("600 to 650 mA", Dial.current(600).feature());
  }

  @Test
  void frequency_halfOfTheCrystal_showsThreeFigures() {
    assertEquals("1.23 MHz", Dial.frequency(1_228_800).feature());
    assertEquals("688 kHz", Dial.frequency(687_500).feature());
    assertEquals("43.0 kHz", Dial.frequency(42_969).feature());
    assertEquals("0 Hz", Dial.frequency(0).feature());
  }

  @Test
  void ohms_byDecades_endWithNoWayAtAll() {
    assertEquals("under 10 ohms", Dial.ohms(OptionalInt.of(0)).feature());
    assertEquals("1 k to 10 k", Dial.ohms(OptionalInt.of(4700)).feature());
    assertEquals("over 100 k", Dial.ohms(OptionalInt.empty()).feature());
  }
}
