package faultfinch.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Setup;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class StartsTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final Starts STARTS = new Starts(TAMARISK);

  private static String of(String fault) {
    return STARTS.of(
        new Setup(TAMARISK, List.of(FaultKinds.parse(fault, TAMARISK)), Set.of(), 1, 0));
  }

  @Test
  void reset_tooShort_startsNowAndThen() {
    // Without its capacitor reset is over at once, and a processor wakes as if reset one time in
    // two.
    Starts.Said said = Starts.said(of("C3: open")).orElseThrow();
    assertTrue(said.chance() > 1.0 / 9 && said.chance() < 8.0 / 9, said.toString());
    assertEquals("no picture", said.otherwise());
  }

  @Test
  void board_thatIsReset_doesTheSameEachTime() {
    assertEquals(Starts.ALIKE, STARTS.of(Setup.healthy(TAMARISK, 1)));
    assertEquals(Starts.ALIKE, of("U24.A0: open pin"));
    // Held in reset for good it never starts, which is the same each time.
    assertEquals(Starts.ALIKE, of("C3: short"));
  }

  @Test
  void said_countsHalfAStartMoreOnEitherSide() {
    assertEquals(
        new Starts.Said(3.5 / 9, "dark"), Starts.said("starts 3 of 8 times, else dark").get());
    assertEquals(new Starts.Said(8.5 / 9, ""), Starts.said("starts 8 of 8 times").get());
    assertTrue(Starts.said(Starts.ALIKE).isEmpty());
  }
}
