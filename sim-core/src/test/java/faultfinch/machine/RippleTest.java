package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import faultfinch.part.Oscillator;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Pinout;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A falling edge passes from counter to counter within one phase. */
class RippleTest {

  /** Both halves of U1 in a row: one counter of eight bits. */
  private static final Board BOARD =
      new Board(
          "ripple",
          "Ripple",
          "Nobody",
          "",
          1_000_000,
          "X1",
          List.of(100, 100, 100, 100, 100, 100),
          10,
          10,
          List.of(
              placed("J1", PartCatalog.JACK),
              placed("VR1", PartCatalog.REGULATOR_7805),
              placed("X1", PartCatalog.OSCILLATOR),
              placed("U1", PartCatalog.LS_393)),
          List.of(
              net("CLK", "X1.OUT", "U1.1CP/"),
              net("Q3", "U1.1Q3", "U1.2CP/"),
              net("IN", "J1.+", "VR1.IN"),
              net("GND", "J1.-", "VR1.GND", "X1.GND", "U1.GND", "U1.1MR", "U1.2MR"),
              net("5V", "VR1.OUT", "X1.VCC", "U1.VCC")),
          new Supply(9_000, 1_000, "IN", "J1", "5V", "VR1", "GND"),
          List.of(),
          List.of(),
          List.of(),
          "",
          List.of());

  private static PlacedPart placed(String ref, PartCatalog type) {
    return new PlacedPart(ref, type, "", 0, 0, 0, false, "", "");
  }

  private static Net net(String name, String... pads) {
    List<Pad> all = Stream.of(pads).map(p -> p.split("\\.")).map(p -> new Pad(p[0], p[1])).toList();
    List<Net.Segment> segments = new ArrayList<>();
    for (int i = 1; i < all.size(); i++) {
      segments.add(new Net.Segment(all.get(i - 1), all.get(i)));
    }
    return new Net(name, all, segments);
  }

  @Test
  void counters_inARow_countEveryFallOfTheClock() {
    Circuit c = Wiring.compile(BOARD, List.of(), Set.of(), Set.of(), 1, true);
    Store store = new Store(c.wordCount, c.cellCount);
    Levels levels = new Levels(c, store, 600);
    PlainCycle plain = new PlainCycle(c, levels, store);
    int clock = c.index("X1");
    int counter = c.index("U1");
    plain.tick();
    int start = count(levels, c, counter);
    for (int falls = 1; falls <= 300; falls++) {
      for (long level : new long[] {1, 0}) {
        levels.pins[clock].hold(Oscillator.TURN, level);
        plain.tick();
      }
      assertEquals((start + falls) & 0xFF, count(levels, c, counter));
    }
  }

  private static int count(Levels levels, Circuit c, int part) {
    Pinout pinout = c.parts[part].pinout();
    return pinout.bus("1Q").of(levels.bits[part]) | pinout.bus("2Q").of(levels.bits[part]) << 4;
  }
}
