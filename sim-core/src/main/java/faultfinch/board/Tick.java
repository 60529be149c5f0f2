package faultfinch.board;

import java.util.List;

/**
 * A question on what a board is like that whoever has it on the table can answer.
 *
 * @param asks the question
 * @param answers that can be given
 * @param concerns duties of parts that work otherwise on a board with another answer
 */
public record Tick(String name, String asks, List<String> answers, List<String> concerns) {
  public Tick {
    answers = List.copyOf(answers);
    concerns = List.copyOf(concerns);
  }
}
