package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Rounds drawn on paper: station 9 differs on a healthy board too, for no leads join its ports. */
class StationsTest {
  private static final String PORTS =
      "; Station 09 wrote 00, read F0 at page A1: 006 of 011 differ. ........; lamp pulses 1";
  private static final String WELL =
      "Station 01 wrote 70, read 70 at page C0: 000 of 001 differ. ========; "
          + "Station 02 wrote 39, read 39 at page 00: 000 of 255 differ. ========"
          + PORTS;
  private static final String LINE_5_LOW =
      "Station 01 wrote 70, read 70 at page C0: 000 of 001 differ. ========; "
          + "Station 02 wrote 39, read 19 at page 00: 128 of 255 differ. ==.====="
          + PORTS;

  /** The same on a set that draws other signs and breaks the lines. */
  private static final String SPOILT =
      "station 01 wrote 70, read 70 at page; c0: 000 of 001 differ.      \"\"\"\"\"\"\"\"; "
          + "station 02 wrote 39, read 19 at page; 00: 128 of 255 differ.      \"\"#\"\"\"\"\"";

  private static Stations of(String round) {
    return Stations.of(round, WELL).orElseThrow();
  }

  @Test
  void healthyRound_hasNoLineThatDiffers() {
    assertTrue(of(WELL).isWell());
    assertTrue(of(WELL).allow(0x5A, 0x5A));
    assertFalse(of(WELL).allow(0x5A, 0x1A));
  }

  @Test
  void lineReadLow_isTheGapAndItsWay() {
    assertEquals(new Stations(1 << 5, 1 << 5, 0), of(LINE_5_LOW));
    assertEquals(new Stations(1 << 5, 1 << 5, 0), of(SPOILT));
  }

  @Test
  void bytesOfAnotherPattern_goWithTheLine() {
    Stations low = of(LINE_5_LOW);
    assertTrue(low.allow(0xFF, 0xDF), "5 lost");
    assertTrue(low.allow(0x5A, 0x5A), "5 was not written");
    assertFalse(low.allow(0xFF, 0xFF), "5 came back");
    assertFalse(low.allow(0x00, 0x20), "5 gained");
    assertFalse(low.allow(0xFF, 0xBF), "6 lost");
  }

  @Test
  void roundThatCannotBeRead_tellsOfNoLine() {
    assertTrue(Stations.of("no picture; lamp no pulse", WELL).isEmpty());
  }
}
