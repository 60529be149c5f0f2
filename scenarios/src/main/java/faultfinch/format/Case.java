package faultfinch.format;

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
 * @param file the document it was read from; it identifies the case in a journal
 * @param number place in the order of the cases, from 1; 0 for an author's own
 * @param minutes the budget, in minutes of the bench clock
 * @param faults what is wrong; none if the board is healthy
 * @param answers what the owner says when asked, by question
 * @param shows features that tell that the complaint is true, by look
 * @param tools words of the kinds of move allowed; empty for all
 */
public record Case(
    Source file,
    int number,
    String title,
    Board board,
    long seed,
    int minutes,
    List<Fault> faults,
    String complaint,
    Map<String, String> answers,
    Map<String, String> shows,
    Optional<List<String>> tools,
    Coach coach,
    List<GuideLine> guide,
    String goal,
    String notes) {

  /** Name and text of a case's file. */
  public record Source(String name, String text) {}

  public Case {
    faults = List.copyOf(faults);
    answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    shows = Collections.unmodifiableMap(new LinkedHashMap<>(shows));
    tools = tools.map(List::copyOf);
    guide = List.copyOf(guide);
  }
}
