package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.BoardReader;
import faultfinch.diagnosis.Share;
import java.util.List;
import org.junit.jupiter.api.Test;

class TrialsTest {
  /** Ten times as likely counts what is on a line of the part; its supply is everybody's. */
  @Test
  void whatIsOnALineOfThePartThatIsOut_isRunBeforeWhatIsNot() {
    Share elsewhere = new Share("U27.1Y: open pin", 0.5);
    Share supply = new Share("U44.VCC: open pin", 0.3);
    Share select = new Share("U44.Y2/: open pin", 0.06);
    Share little = new Share("U1.D0: open pin", 0.02);
    assertEquals(
        List.of(select, elsewhere, supply, little),
        Trials.inTheirOrder(
            List.of(elsewhere, supply, select, little),
            List.of("U34"),
            BoardReader.shipped("tamarisk")));
  }
}
