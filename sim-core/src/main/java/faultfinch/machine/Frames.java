package faultfinch.machine;

import faultfinch.board.Board;
import java.util.Optional;

/**
 * Pictures shared between runs: a line of a frame that was played once need not be played again on
 * any board whose picture half is the healthy one's.
 */
public final class Frames {
  /** Nothing is shared; every frame is played. */
  public static final Frames NONE = new Frames(Optional.empty());

  private final Optional<PictureHalf> half;
  private final PictureLines lines = new PictureLines();

  private Frames(Optional<PictureHalf> half) {
    this.half = half;
  }

  /**
   * Frames of a board, learnt from a healthy one.
   *
   * @param nanoseconds after power-on at which its picture stands
   */
  public static Frames of(Board board, long seed, long nanoseconds) {
    Machine machine = new Machine(Setup.healthy(board, seed), Machine.Kind.FAST);
    machine.runTo(nanoseconds);
    if (!(machine.bus() instanceof FastBus bus) || !bus.runsFree()) {
      return NONE;
    }
    machine.rest();
    PlainCycle plain = machine.plain();
    Store store = plain.store.copy();
    Levels levels = new Levels(plain.circuit, store, 1);
    levels.continueFrom(plain.levels);
    return new Frames(PictureHalf.of(new PlainCycle(plain.circuit, levels, store), bus.reach()));
  }

  /** Whether a board draws what the healthy one would, so that it shares lines with others. */
  boolean sharedBy(Machine machine) {
    return machine.bus() instanceof FastBus
        && half.filter(h -> h.same(machine.plain().circuit)).isPresent();
  }

  /** The lead of a board's picture, for a look of one frame or two. */
  public Lead lead(Machine machine) {
    return sharedBy(machine) ? new Lead(machine, half.orElseThrow(), lines) : new Lead(machine);
  }
}
