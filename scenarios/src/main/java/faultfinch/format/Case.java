package faultfinch.format;

import faultfinch.bench.Intake;
import faultfinch.board.Board;
import faultfinch.fault.Fault;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A job as its author wrote it, checked against its board.
 *
 * @param seed of everything chance decides on this job
 * @param minutes the budget on the bench clock
 * @param faults what is wrong; none if the board is healthy
 * @param intake complaint and what the owner answers
 * @param shows what the complaint says, as features by symptom
 * @param tools words of the kinds of move allowed; empty for all
 */
public record Case(
    Label label,
    Board board,
    int seed,
    int minutes,
    List<Fault> faults,
    Intake intake,
    Map<String, String> shows,
    Optional<List<String>> tools,
    Coach coach,
    List<GuideLine> guide,
    Lesson lesson) {

  /**
   * What a list of cases shows.
   *
   * @param name short, for a command line
   * @param number place in the order of the cases, from 1; 0 for an author's own
   * @param board name of the board
   */
  public record Label(String name, int number, String title, String board) {}

  /**
   * What it is there for.
   *
   * @param goal what it teaches, without the answer
   * @param notes for the debrief
   */
  public record Lesson(String goal, String notes) {}

  public Case {
    faults = List.copyOf(faults);
    shows = Collections.unmodifiableMap(new LinkedHashMap<>(shows));
    tools = tools.map(List::copyOf);
    guide = List.copyOf(guide);
  }
}
