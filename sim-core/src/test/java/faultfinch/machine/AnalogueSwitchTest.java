package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.Pad;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A 4066 joins its terminals through 80 ohms while its control reads high. */
class AnalogueSwitchTest {

  /** A gate that drives high, a switch, ten kilohms to ground and an LS input behind it. */
  private static Board board(String control) {
    Sheet s = new Sheet();
    s.part("OSC", "");
    String four = s.part("4066", "");
    s.on(s.gate("74LS04", "GND"), four + ".1A");
    s.on("OUT", four + ".1B " + s.part("R", "10k") + ".1");
    s.on("GND", "R1.2");
    s.gate("74LS04", "OUT");
    s.on(control, four + ".1C");
    return s.board("switch", 1_000_000, 1000, "U1", new byte[0], List.of());
  }

  private static int out(Board board, Fault... faults) {
    Circuit c = Wiring.compile(board, List.of(faults), Set.of(), Set.of(), 1, true);
    Levels levels = new Levels(c, new Store(c.wordCount, c.cellCount), 1);
    levels.settle();
    Pad pad = new Pad("R1", "1");
    return levels.mv[c.netOf[c.pin(pad.ref(), pad.pin())]];
  }

  @Test
  void terminals_controlHigh_meetThroughEightyOhms() {
    // 3.4 V behind 100 + 80 ohms into 10 kilohms: 3400 x 10000 / 10180.
    assertEquals(3340, out(board("5V")));
  }

  @Test
  void terminals_controlLow_part() {
    // The LS input alone gives 1.4 V behind 10 kilohms into 10 kilohms.
    assertEquals(700, out(board("GND")));
  }

  @Test
  void terminals_controlReadsStuck_obeyThePin() {
    Board board = board("GND");
    assertEquals(3340, out(board, FaultKinds.parse("U1.1C: reads high", board)));
  }

  @Test
  void terminals_partDead_part() {
    Board board = board("5V");
    assertEquals(700, out(board, FaultKinds.parse("U1: dead", board)));
  }

  @Test
  void terminals_thatSwitchThemselvesOff_oscillate() {
    // The control follows the far side inverted: closed it reads low, open it reads high.
    Sheet s = new Sheet();
    s.part("OSC", "");
    String four = s.part("4066", "");
    s.on(s.gate("74LS04", "GND"), four + ".1A");
    s.on("OUT", four + ".1B " + s.part("R", "1k") + ".1");
    s.on("GND", "R1.2");
    s.on(s.gate("74LS04", "OUT"), four + ".1C");
    Board board = s.board("loop", 1_000_000, 1000, "U1", new byte[0], List.of());
    Circuit c = Wiring.compile(board, List.of(), Set.of(), Set.of(), 1, true);
    Levels levels = new Levels(c, new Store(c.wordCount, c.cellCount), 1);
    levels.settle();
    assertEquals(Levels.OSCILLATES, levels.kind[c.netOf[c.pin(four, "1C")]]);
  }
}
