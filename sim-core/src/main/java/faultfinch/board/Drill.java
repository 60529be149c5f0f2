package faultfinch.board;

import java.util.List;
import java.util.Optional;

/**
 * What somebody tries by hand on a board that is ready, step by step: joysticks, a tape.
 *
 * @param name of the drill, one of {@link #NAMES}
 * @param recorder the part whose tape is watched meanwhile, if one is
 */
public record Drill(String name, Optional<String> recorder, List<Step> steps) {
  /** The joysticks and what else is turned by hand. */
  public static final String STICKS = "sticks";

  /** The tape that lies beside the board, and one recorded from it. */
  public static final String TAPE = "tape";

  /** What a drill can be called: each is a move at the bench and has its price. */
  public static final List<String> NAMES = List.of(STICKS, TAPE);

  public Drill {
    steps = List.copyOf(steps);
  }

  /** What is done with the hands, or waited for. */
  public sealed interface Step {}

  /**
   * Keys pressed one after the other.
   *
   * @param refs of the keys; the last ends the line
   */
  public record Line(List<String> refs) implements Step {
    public Line {
      refs = List.copyOf(refs);
    }
  }

  /** Switches pressed and held, potentiometers turned to their first end. */
  public record Hold(List<String> refs) implements Step {
    public Hold {
      refs = List.copyOf(refs);
    }
  }

  /** The same let go. */
  public record Free(List<String> refs) implements Step {
    public Free {
      refs = List.copyOf(refs);
    }
  }

  /** Waiting until the tape has run and stands again, or does not begin to run. */
  public record Await(int mostMilliseconds) implements Step {}
}
