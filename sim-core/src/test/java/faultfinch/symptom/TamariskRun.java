package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Pad;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.HandedOver;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.part.Dram4164;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * A Tamarisk with faults on either machine. The firmware is at its prompt 143 ms after power-on,
 * its timer ticks at 150, its first frame ends at 155. From power-on to before the video controller
 * is programmed the plain machine is spared: it goes on from where the fast one stands then.
 */
final class TamariskRun {
  static final Board BOARD = BoardReader.shipped("tamarisk");
  static final String NAME = "Tamarisk      Marrow Lane Works";
  static final String ALL = "256 pages passed";
  static final int AT_THE_PROMPT = 165;
  private static final int BEFORE_VIDEO = 136;
  private static final long MS = 1_000_000;

  private TamariskRun() {}

  static Setup setup(String... faults) {
    List<Fault> parsed = Arrays.stream(faults).map(f -> FaultKinds.parse(f, BOARD)).toList();
    return Setup.healthy(BOARD, 1).with(parsed);
  }

  /** At the prompt, if there is one. */
  static Machine toThePrompt(Machine.Kind kind, String... faults) {
    return to(AT_THE_PROMPT, BEFORE_VIDEO, kind, setup(faults));
  }

  /** Played by the machine asked for from power-on. */
  static Machine from(Machine.Kind kind, int milliseconds, Setup setup) {
    Machine machine = new Machine(setup, kind);
    machine.runTo(milliseconds * MS);
    return machine;
  }

  /** Played by the machine asked for from a moment on. */
  static Machine to(int milliseconds, int from, Machine.Kind kind, Setup setup) {
    Machine machine = HandedOver.to(kind, from(Machine.Kind.FAST, from, setup));
    machine.runTo(milliseconds * MS);
    return machine;
  }

  /** Presses these keys at the prompt and looks at them long enough to be taken. */
  static Machine pressed(Machine.Kind kind, Setup setup, Set<String> keys) {
    Machine fast = from(Machine.Kind.FAST, AT_THE_PROMPT, setup);
    keys.forEach(k -> fast.hold(k, true));
    Machine machine = HandedOver.to(kind, fast);
    machine.runTo((AT_THE_PROMPT + 70) * MS);
    return machine;
  }

  static boolean reached(Machine machine, String milestone) {
    return machine.milestones().containsKey(milestone);
  }

  /** A byte of memory as its chips hold it; the row is the high half of the address. */
  static int memory(Machine machine, int address) {
    int value = 0;
    for (int bit = 0; bit < 8; bit++) {
      value |= machine.cell("U" + (4 + bit), Dram4164.CELLS, address) << bit;
    }
    return value;
  }

  /**
   * What a probe would show at a pin over two thousand cycles: low, mid, high, pulsing between low
   * and high, or none where nothing drives.
   */
  static String light(Machine machine, String pin) {
    int[] seen = new int[3];
    int point = machine.point(pad(pin), false);
    machine.play(
        2000,
        (phase, at) -> {
          int mv = machine.millivolts(point);
          if (!machine.floating(point)) {
            seen[mv < 800 ? 0 : mv > 2000 ? 2 : 1]++;
          }
        });
    if (seen[0] > 0 && seen[2] > 0) {
      return "pulsing";
    }
    return seen[1] > 0 ? "mid" : seen[2] > 0 ? "high" : seen[0] > 0 ? "low" : "none";
  }

  static int millivolts(Machine machine, String pin) {
    machine.rest();
    return machine.millivolts(pad(pin), false);
  }

  private static Pad pad(String pin) {
    return new Pad(pin.substring(0, pin.indexOf('.')), pin.substring(pin.indexOf('.') + 1));
  }
}
