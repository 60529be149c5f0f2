package faultfinch.attempt;

import faultfinch.board.Board;
import java.util.List;
import java.util.Optional;

/**
 * What lies on the bench with the board; nothing on it tells the answer.
 *
 * @param number place in the order of the cases, from 1; 0 for an author's own
 * @param board for drawing
 * @param complaint the owner's own words
 * @param questions the owner can be asked, as written behind {@code ask:}
 * @param goal what this case is there to teach
 * @param tools words of the kinds of move allowed; empty for all
 * @param budgetMinutes of the bench clock
 * @param twinFree whether readings of the healthy twin cost nothing
 */
public record JobCard(
    int number,
    String title,
    Board board,
    String complaint,
    List<String> questions,
    String goal,
    Optional<List<String>> tools,
    int budgetMinutes,
    Shown shown,
    boolean twinFree) {

  /** What the trainer shows besides the bench itself. */
  public record Shown(boolean guided, boolean prices, boolean suspects, boolean marks) {}

  public JobCard {
    questions = List.copyOf(questions);
    tools = tools.map(List::copyOf);
  }
}
