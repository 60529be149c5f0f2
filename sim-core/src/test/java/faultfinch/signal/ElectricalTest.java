package faultfinch.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The figures as the level model states them, in mV, ohm, ns and ms. */
class ElectricalTest {

  @ParameterizedTest
  @CsvSource({
    "port.pullup.mv, 5000",
    "port.pullup.ohm, 5000",
    "ls-input.mv, 1400",
    "ls-input.ohm, 10000",
    "threshold.ls, 1300",
    "spread.ls, 50",
    "threshold.nmos, 1500",
    "spread.nmos, 150",
    "spread.cmos, 150",
    "threshold.schmitt.falling, 900",
    "threshold.schmitt.rising, 1700",
    "mid.from, 800",
    "mid.to, 2000",
    "hold.ns, 1000000",
    "dead-ls.ohm, 100",
    "diode.mv, 700",
    "retention.shortest.ms, 150",
    "retention.weak.ms, 1000",
    "retention.median.ms, 20000",
    "retention.defect.from.us, 400",
    "retention.defect.to.us, 1000"
  })
  void figure_known_isAsTheModelStates(String key, int value) {
    assertEquals(value, Electrical.figure(key));
  }

  @Test
  void figure_unknown_namesFileAndKey() {
    String says =
        assertThrows(IllegalArgumentException.class, () -> Electrical.figure("drive.tube.mv"))
            .getMessage();
    assertEquals("electrical.properties has no figure 'drive.tube.mv'", says);
  }

  @Test
  void threshold_cmos_isHalfTheRail() {
    assertEquals(2500, Technology.CMOS.threshold(5000));
    assertEquals(6000, Technology.CMOS.threshold(12_000));
  }

  @Test
  void threshold_others_doNotMoveWithTheRail() {
    assertEquals(1300, Technology.LS.threshold(4500));
    assertEquals(1500, Technology.NMOS.threshold(4500));
    assertEquals(1700, Technology.SCHMITT.threshold(4500));
  }
}
