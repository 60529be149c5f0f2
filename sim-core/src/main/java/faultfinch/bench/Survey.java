package faultfinch.bench;

import faultfinch.board.Board;
import faultfinch.machine.Setup;
import java.util.SortedMap;

/**
 * What every passive look would show, out of one run: the board starts, the exercise is played, and
 * at declared times eight windows of cycles are watched phase by phase.
 */
public final class Survey {
  private Survey() {}

  /** Gets ready to survey runs of a board; the windows' times come from its healthy run. */
  public static Survey on(Board board) {
    return new Survey();
  }

  /** One survey; to make many of one board use {@link #on} once. */
  public static SortedMap<Look, String> of(Setup setup) {
    return on(setup.board()).features(setup);
  }

  /** Feature of every look of {@link Looks#passive}. */
  public SortedMap<Look, String> features(Setup setup) {
    throw new UnsupportedOperationException("to come");
  }

  /** Reading of every look of {@link Looks#passive}. */
  public SortedMap<Look, Reading> readings(Setup setup) {
    throw new UnsupportedOperationException("to come");
  }
}
