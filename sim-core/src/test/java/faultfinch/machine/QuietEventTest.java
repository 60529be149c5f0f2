package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Boards on which a timer's output moves by itself between two accesses, and what moved is seen.
 * Both machines must see it in the same cycle.
 */
@Tag("sweep")
class QuietEventTest {
  private static final long RUN = 60_000_000;

  /** The output can be read through a buffer, and is, one cycle after it moved. */
  @Test
  void timerOutput_readThroughABuffer_isReadAsItIsThen() {
    assertAgrees(52);
  }

  /** Three timers; the output of one, and only in fetch cycles, pulls the interrupt line low. */
  @Test
  void timerOutput_gatedOntoAnInterrupt_interrupts() {
    assertAgrees(107);
  }

  private static void assertAgrees(long seed) {
    Setup setup = Setup.healthy(GeneratedBoards.board(seed), seed);
    assertEquals(Optional.empty(), Agreement.ofRuns(setup, RUN).difference());
  }
}
