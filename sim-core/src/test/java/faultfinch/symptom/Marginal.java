package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Supply;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.machine.Surroundings;
import java.util.Arrays;
import java.util.Set;

/** Tamarisk on bricks of other volts, in other air, switched on and looked at. */
final class Marginal {
  static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final long AT_THE_PROMPT = 200_000_000;

  private Marginal() {}

  /** The board with a smooth brick of so many millivolts with nothing drawn. */
  static Board onBrick(int millivolts) {
    Board b = TAMARISK;
    Supply s = b.supply();
    Supply other =
        new Supply(
            millivolts,
            s.ohms(),
            s.jackNet(),
            s.jack(),
            s.railNet(),
            s.regulator(),
            s.groundNet(),
            s.others(),
            s.poles());
    return new Board(
        b.name(),
        b.title(),
        b.maker(),
        b.about(),
        b.hertz(),
        b.crystal(),
        b.phaseNanoseconds(),
        b.width(),
        b.height(),
        b.parts(),
        b.nets(),
        other,
        b.firmware(),
        b.milestones(),
        b.exercise(),
        b.rightDisplay(),
        b.worthTakingOut());
  }

  static Setup setup(Board board, long seed, Surroundings around, String... faults) {
    return new Setup(
        board,
        Arrays.stream(faults).map(f -> FaultKinds.parse(f, board)).toList(),
        Set.of(),
        seed,
        0,
        around);
  }

  static Machine run(Setup setup, Machine.Kind kind) {
    Machine machine = new Machine(setup, kind);
    machine.runTo(AT_THE_PROMPT);
    return machine;
  }

  static boolean reached(Machine machine, String milestone) {
    return machine.milestones().containsKey(milestone);
  }

  /** Whether the banner stands there with all its memory. */
  static boolean allWell(Machine machine) {
    return Screen.look(machine).rows().contains("256 pages passed");
  }
}
