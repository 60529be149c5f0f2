package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Setup;
import java.util.Arrays;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A meter on Tamarisk's supply with nothing plugged in. J1 leads through F1 and C1 to VR1 and VR2,
 * which take their own current through 2,000 ohms each; C2, C27 lie behind them. A part shows 50
 * times the ohms it is worth at 5 V.
 */
class UnpoweredTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");

  private static String shows(String look, String... faults) {
    Setup setup =
        new Setup(
            TAMARISK,
            Arrays.stream(faults).map(f -> FaultKinds.parse(f, TAMARISK)).toList(),
            Set.of(),
            0,
            0);
    return Unpowered.of(setup, Look.parse(look)).feature();
  }

  /** Two regulators of 2,000 ohms side by side: 1,000 and the fuse. */
  @Test
  void ohms_healthyFeed_isTheRegulatorsOwnCurrent() {
    assertEquals("1 k to 10 k", shows("ohms J1.+"));
  }

  /**
   * The tone generator is all there is behind VR3: 5 V at 75 mA are 67 ohms, fifty times that
   * 3,333. Behind VR1 are parts for 1,042 mA: 240 ohms.
   */
  @Test
  void ohms_healthyRails_areThoseOfTheirParts() {
    assertEquals("1 k to 10 k", shows("ohms VR3.OUT"));
    assertEquals("100 ohms to 1 k", shows("ohms VR1.OUT"));
  }

  @Test
  void ohms_capacitorOfARailShort_isShortOnThatRailAlone() {
    assertEquals("under 10 ohms", shows("ohms VR1.OUT", "C2: short"));
    assertEquals("100 ohms to 1 k", shows("ohms VR2.OUT", "C2: short"));
    assertEquals("1 k to 10 k", shows("ohms J1.+", "C2: short"));
    assertEquals("under 10 ohms", shows("ohms VR2.OUT", "C27: short"));
  }

  /** 470 ohms beside 3,333 are 412; beside the 240 of many parts, 159, they are not seen. */
  @Test
  void ohms_capacitorOfARailLeaks_isSeenWhereFewPartsAre() {
    assertEquals("100 ohms to 1 k", shows("ohms VR3.OUT", "C28: leaks through 470 ohms"));
    assertEquals("100 ohms to 1 k", shows("ohms VR1.OUT", "C2: leaks through 470 ohms"));
  }

  @Test
  void fuse_openOrWhole_beepsWhereItIsWhole() {
    assertEquals("conducts", shows("continuity F1.1-F1.2"));
    assertEquals("open", shows("continuity F1.1-F1.2", "F1: open"));
    assertEquals("over 100 k", shows("ohms J1.+", "F1: open"));
    assertEquals("open", shows("continuity F2.1-F2.2", "F2: open"));
  }
}
