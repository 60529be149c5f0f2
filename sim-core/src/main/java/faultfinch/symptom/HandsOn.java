package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.Drill;
import faultfinch.machine.Frames;
import faultfinch.machine.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A look for which somebody works a board that has just become ready, beyond its exercise: all its
 * keys, its joysticks, its tape. What stands on the set in the end tells what came of it.
 */
public interface HandsOn {
  /** What is said of a board that shows nothing to type on. */
  String BLIND = "nothing on the set to type on";

  /** Its name among the looks and the moves. */
  String name();

  /**
   * What stands on the set in the end, or why it was not gone on with.
   *
   * @param machine just switched on; it plays on until the look is over
   * @param frames pictures shared with other runs
   */
  String says(Machine machine, Frames frames);

  /**
   * Parts that did otherwise than they do on a healthy board, as far as what was seen names them.
   *
   * @param usual what a healthy board's set shows in the end
   * @param seen the same of this board
   * @return how much otherwise, 1 or more, by part; empty if it names none
   */
  default Map<String, Integer> otherwise(String usual, String seen) {
    return Map.of();
  }

  /** All that a board offers, keys first. */
  static List<HandsOn> of(Board board) {
    List<HandsOn> all = new ArrayList<>();
    if (EveryKey.offered(board)) {
      all.add(new EveryKey(board));
    }
    if (Screen.of(board).isPresent()) {
      for (Drill drill : board.drills()) {
        all.add(new DrillRun(board, drill));
      }
    }
    return List.copyOf(all);
  }
}
