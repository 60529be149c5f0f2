package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A cycle of 800 ns with two periods, high for the last quarter of each. */
class ClockWaveTest {
  private static String edges(long from, long to) {
    StringBuilder told = new StringBuilder();
    new ClockWave(800, 2, 0.25)
        .edges(from, to, (at, high) -> told.append(at).append(high ? "+ " : "- "));
    return told.toString().strip();
  }

  @Test
  void edges_ofACycle_areLowFirst() {
    assertEquals("0- 300+ 400- 700+", edges(0, 800));
  }

  @Test
  void edges_ofAPhase_areThoseFromItsStartToBeforeTheNext() {
    assertEquals("300+ 400-", edges(300, 700));
    assertEquals("", edges(401, 700));
  }
}
