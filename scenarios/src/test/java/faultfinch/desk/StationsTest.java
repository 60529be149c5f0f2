package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
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

  /** Bit 0 high in all letters: t is u, n is o, r is s, and so is each blank an exclamation. */
  @Test
  void roundInBadMemory_lettersTellTheLine() {
    String high = "Suauioo!11!wsoue!71-!seae!71!au!qage; C1;!111!og!111!eigges/";
    assertEquals(Optional.of(new Stations(1, 0, 1)), Stations.spoilt(high, WELL));
    String low = "Rt`thnn 00 vrntd 60, rd`d 60 `t p`fd; B0: 000 nf 000 dhffdr.";
    assertEquals(Optional.of(new Stations(1, 1, 0)), Stations.spoilt(low, WELL));
    assertTrue(Stations.of(high, WELL).isEmpty());
  }

  /** Two lines, or none, are no single bit of memory. */
  @Test
  void roundThatIsOtherwiseSpoilt_tellsOfNoLine() {
    assertEquals(Optional.empty(), Stations.spoilt(WELL, WELL));
    String two = "Wwcwkoo 37 wrowg 73/ rgcg 73 cw scgg C3: 333 og 333 fkggur.=";
    assertEquals(Optional.empty(), Stations.spoilt(two, WELL));
    assertEquals(Optional.empty(), Stations.spoilt("no picture", WELL));
  }

  @Test
  void roundThatCannotBeRead_tellsOfNoLine() {
    assertTrue(Stations.of("no picture; lamp no pulse", WELL).isEmpty());
  }
}
