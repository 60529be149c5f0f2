package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.machine.Machine;
import faultfinch.part.Monitor;
import faultfinch.signal.Pin;
import java.util.Arrays;
import java.util.Optional;

/**
 * What a rippling rail does to a picture: lines drawn while the last stage before the set is short
 * of volts are darker, for its high level falls with its rail, and begin later, for the set finds
 * their sync at a level that has moved. The saw has 100 a second and the frame nearly 50, so that
 * its two bars creep over the glass.
 *
 * <p>Not modelled: hum in the set's own supply, in the colours' low level, in the sound.
 */
final class Bars {
  /** An LS output stands so far below its rail when high: a transistor, a diode, a resistor. */
  private static final int BELOW_RAIL_MV = 1600;

  /** Millivolts that move a line by a dot (judgement). */
  private static final int A_DOT_MV = 100;

  /** A bar darker than this share, in per cent, is seen; judgement. */
  private static final int SEEN_BELOW = 95;

  /** A bar that creeps less than this between two frames seems to stand. */
  private static final double STANDS_NS = 2_000;

  private static final double PERIOD_NS = 10_000_000;
  private static final double MILLISECOND = 1_000_000;

  private final int[] percent;
  private final int[] later;
  private final String moves;

  private Bars(int[] percent, int[] later, String moves) {
    this.percent = percent;
    this.later = later;
    this.moves = moves;
  }

  /** The bars over the frame that a set holds now. */
  static Bars of(Machine machine, String set) {
    int[] percent = new int[Screen.HEIGHT];
    int[] later = new int[Screen.HEIGHT];
    Arrays.fill(percent, 100);
    int[] rail =
        lastStage(machine.board(), set).map(machine.power()::milliseconds).orElse(new int[0]);
    if (rail.length < 2 || machine.processorHertz() == 0) {
      return new Bars(percent, later, "");
    }
    double half = 1e9 / machine.processorHertz() / 2;
    double line = half * machine.word(set, Monitor.LINE_LENGTH).orElse(0L);
    double from = half * machine.word(set, Monitor.FRAME_FROM).orElse(0L);
    int most = rail[0] - BELOW_RAIL_MV;
    for (int y = 0; y < percent.length; y++) {
      double into = (from + y * line) % PERIOD_NS;
      int lacks = rail[0] - rail[(int) (into / MILLISECOND)];
      percent[y] = Math.max(0, 100 * (most - lacks) / most);
      later[y] = lacks / A_DOT_MV;
    }
    return new Bars(
        percent, later, moves(line * machine.word(set, Monitor.FRAME_LINES).orElse(0L)));
  }

  /** The part that drives a colour of the set. */
  private static Optional<String> lastStage(Board board, String set) {
    Net colour = board.netOfPad().get(new Pad(set, "R"));
    return Optional.ofNullable(colour).stream()
        .flatMap(net -> net.pads().stream())
        .filter(pad -> !pad.ref().equals(set) && drives(board, pad))
        .map(Pad::ref)
        .findFirst();
  }

  private static boolean drives(Board board, Pad pad) {
    return board
        .part(pad.ref())
        .map(PlacedPart::type)
        .flatMap(t -> t.part().pinout().find(pad.pin()))
        .filter(Pin::drives)
        .isPresent();
  }

  /** A frame a little shorter than two saws begins earlier in its saw each time: bars go down. */
  private static String moves(double frame) {
    double over = frame % PERIOD_NS;
    double creeps = over > PERIOD_NS / 2 ? over - PERIOD_NS : over;
    if (Math.abs(creeps) < STANDS_NS) {
      return "stands";
    }
    return creeps < 0 ? "rolls down" : "rolls up";
  }

  /** How bright a line is, in per cent of one drawn at full volts. */
  int percent(int line) {
    return percent[line];
  }

  /** Dots by which a line begins later. */
  int later(int line) {
    return later[line];
  }

  /** In words; empty if none can be seen. */
  String says() {
    boolean seen = Arrays.stream(percent).anyMatch(p -> p < SEEN_BELOW);
    return seen ? "a dark bar " + moves : "";
  }
}
