package faultfinch.part;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.signal.Phase;
import org.junit.jupiter.api.Test;

/** Dots by hand: eight in the order D7 to D0, over two cycles of four. */
class DotShifterTest {
  private static final Phase[] NEW_DOT = {Phase.C_ROW, Phase.C_COL, Phase.V_ROW, Phase.V_COL};
  private final BenchPins bench = new BenchPins(new DotShifter());

  @Test
  void dots_loadedWord_comeLeftFirstFourACycleThenStop() {
    bench.high("DE");
    clock(0xC9, true);
    assertEquals("1100", cycle());
    clock(0xFF, false);
    assertEquals("1001", cycle());
    clock(0xFF, false);
    assertEquals("0000", cycle());
  }

  @Test
  void dot_inTheRestOfAHalf_stays() {
    bench.high("DE");
    clock(0x50, true);
    assertEquals('H', at(Phase.C_COL));
    assertEquals('H', at(Phase.C_END));
    assertEquals('H', at(Phase.V_COL));
    assertEquals('H', at(Phase.V_LATCH));
  }

  @Test
  void dots_inverseOrCursor_turnOverAndBothTogetherDoNot() {
    bench.high("DE", "INV");
    clock(0xC9, true);
    assertEquals("0011", cycle());
    bench.high("CUR");
    assertEquals("1100", cycle());
    bench.low("INV");
    assertEquals("0011", cycle());
  }

  @Test
  void dots_notToBeShown_areDarkWhateverElseIs() {
    bench.high("INV", "CUR");
    clock(0xFF, true);
    assertEquals("0000", cycle());
    bench.low("CUR");
    assertEquals("0000", cycle());
  }

  private void clock(int word, boolean load) {
    bench.bus("D", word).set("LD/", !load).low("CK");
    bench.commit(Phase.V_COL);
    bench.high("CK");
    bench.commit(Phase.V_LATCH);
  }

  private String cycle() {
    StringBuilder dots = new StringBuilder();
    for (Phase phase : NEW_DOT) {
      dots.append(at(phase) == 'H' ? '1' : '0');
    }
    return dots.toString();
  }

  private char at(Phase phase) {
    bench.phase(phase);
    return bench.out("DOT");
  }
}
