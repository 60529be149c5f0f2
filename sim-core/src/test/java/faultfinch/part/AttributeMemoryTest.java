package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.signal.Phase;
import org.junit.jupiter.api.Test;

class AttributeMemoryTest {
  private final BenchPins bench = new BenchPins(new AttributeMemory());

  @Test
  void word_writtenByTheProcessor_isReadBackAndShownAfterTheClock() {
    store(0x123, 0xD); // red, blue, inverse
    assertEquals(0xD, load(0x123));
    bench.bus("VA", 0x123).high("DEI");
    assertEquals("Z", String.valueOf(bench.out("D0")));
    clock();
    assertEquals(5, bench.outBus("INK"));
    assertEquals('H', bench.out("INV"));
    assertEquals('H', bench.out("DEO"));
    assertEquals('L', bench.out("CURO"));
  }

  @Test
  void shown_addressMovesWithoutAClock_stays() {
    store(1, 2);
    store(2, 4);
    bench.bus("VA", 1).high("CURI");
    clock();
    bench.bus("VA", 2).low("CURI");
    bench.commit(Phase.V_LATCH);
    assertEquals(2, bench.outBus("INK"));
    assertEquals('H', bench.out("CURO"));
    clock();
    assertEquals(4, bench.outBus("INK"));
    assertEquals('L', bench.out("CURO"));
  }

  @Test
  void shown_attributesOff_isPlainWhite() {
    store(7, 0x9);
    bench.bus("VA", 7).high("AOFF");
    clock();
    assertEquals(7, bench.outBus("INK"));
    assertEquals('L', bench.out("INV"));
  }

  @Test
  void write_withOneSelectMissing_changesNothing() {
    store(3, 0x6);
    access(3, 0x9, false, false);
    assertEquals(0x6, load(3));
  }

  private void clock() {
    bench.low("CK");
    bench.commit(Phase.V_COL);
    bench.high("CK");
    bench.commit(Phase.V_LATCH);
  }

  private void store(int at, int value) {
    access(at, value, true, false);
  }

  private int load(int at) {
    access(at, 0, true, true);
    bench.high("CS", "PHI2", "RW").low("CS/");
    int seen = bench.outBus("D");
    bench.high("CS/");
    return seen;
  }

  private void access(int at, int value, boolean selected, boolean reads) {
    bench.bus("A", at).bus("D", value).set("CS", selected).low("CS/", "PHI2").set("RW", reads);
    bench.before(bench.in());
    bench.high("PHI2");
    bench.commit(Phase.C_END);
    bench.low("PHI2").high("CS/");
  }
}
