package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.signal.Phase;
import org.junit.jupiter.api.Test;

/** The strobes by phase: a half is row, column, end; only the video half ends in a latch pulse. */
class StrobesTest {

  @Test
  void strobes_enabled_followThePhases() {
    assertEquals("", low(Phase.V_ROW, "RAS/", "PIC"));
    assertEquals("", low(Phase.V_COL, "RAS/", "VCAS/", "MUX", "PIC"));
    assertEquals("", low(Phase.V_LATCH, "RAS/", "VCAS/", "MUX"));
    assertEquals("", low(Phase.C_ROW, "RAS/", "PIC"));
    assertEquals("", low(Phase.C_COL, "RAS/", "CCAS/", "MUX", "PIC"));
    assertEquals("", low(Phase.C_END, "RAS/", "CCAS/", "MUX", "PIC"));
  }

  /** Names the pins that are not as said: low the ones given, high the others. */
  private static String low(Phase phase, String... pins) {
    BenchPins bench = new BenchPins(new Strobes());
    bench.set(Strobes.PINOUT.pin("EN"));
    bench.phase(phase);
    bench.settle();
    StringBuilder wrong = new StringBuilder();
    for (String name : new String[] {"RAS/", "VCAS/", "CCAS/", "MUX", "PIC"}) {
      boolean high = (bench.levels() & Strobes.PINOUT.pin(name)) != 0;
      boolean saidLow = java.util.List.of(pins).contains(name);
      wrong.append(high == saidLow ? name + " " : "");
    }
    return wrong.toString();
  }
}
