package faultfinch.attempt;

import faultfinch.bench.Breach;
import faultfinch.bench.Price;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What is told when an attempt is over, what was done right first. Only this carries the answer.
 *
 * @param solved whether the board passed its last retest
 * @param doneRight each one line, best first; never empty
 * @param faults what was wrong, in words
 * @param stillWrong what is still wrong, in words
 * @param route your moves, each with its price and how many repairs were possible after it
 * @param best the route of the planner on this board, or why there is none
 * @param decisions what each decision cost and brought
 * @param toldNothing looks that could tell nothing when they were made
 * @param tooEarly pulls made while a cheaper look could still have told more
 * @param breaches of the rules of the bench, in order
 * @param notReached steps of the firmware that the faulty board never reached
 * @param marks 0 to 100; empty if the case gives none
 * @param jobSheet Markdown
 */
public record Debrief(
    boolean solved,
    List<String> doneRight,
    List<String> faults,
    List<String> stillWrong,
    List<Leg> route,
    Best best,
    List<Decision> decisions,
    List<String> toldNothing,
    List<String> tooEarly,
    List<Breach> breaches,
    List<String> notReached,
    Price spent,
    OptionalInt marks,
    String notes,
    String jobSheet) {

  /** One move of a route. */
  public record Leg(String move, String showed, Price price, OptionalInt field) {}

  /**
   * What the planner would have done.
   *
   * @param price of the whole route
   * @param why it is missing, if it is
   */
  public record Best(List<Leg> route, Price price, Optional<String> why) {
    public Best {
      route = List.copyOf(route);
    }
  }

  public Debrief {
    doneRight = List.copyOf(doneRight);
    faults = List.copyOf(faults);
    stillWrong = List.copyOf(stillWrong);
    route = List.copyOf(route);
    decisions = List.copyOf(decisions);
    toldNothing = List.copyOf(toldNothing);
    tooEarly = List.copyOf(tooEarly);
    breaches = List.copyOf(breaches);
    notReached = List.copyOf(notReached);
  }
}
