package faultfinch.judging;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What following jobs has shown.
 *
 * @param seed of the draw
 * @param jobs followed
 * @param silent share of the faults that nobody would notice; none of them is a job
 * @param advisor of jobs without a mistake, taken at their word
 * @param reference innocent chips if all looks that need no pull were made for nothing first
 * @param practices the usual ones by name
 * @param ratio price of the advisor to that of the cheapest practice
 * @param over innocent chips of the advisor beyond the reference
 * @param dearest faults, the one of which not knowing it adds most to the mean price first
 * @param weighing the advisor as it weighs, if that was asked for
 */
public record Judged(
    long seed,
    int jobs,
    double silent,
    Costs advisor,
    Hits hits,
    Costs reference,
    Map<Practised, Costs> practices,
    Estimate ratio,
    Estimate over,
    List<Dear> dearest,
    Optional<Weighing> weighing) {

  /** The usual practices. */
  public enum Practised {
    BOARD_ORDER,
    MOST_FAILING_FIRST,
    SYMPTOM_FIRST,
    PROBE_FIRST
  }

  /**
   * The advisor as it weighs what is seen and told.
   *
   * @param jobs followed in each case
   * @param right of jobs without a mistake
   * @param matched where people and instruments err as often as it assumes
   * @param perturbed where boards fail otherwise than it assumes
   * @param wrongReadings where one reading in twenty is wrong
   */
  public record Weighing(
      int jobs, Case right, Case matched, Perturbed perturbed, WrongReadings wrongReadings) {}

  /** One case. */
  public record Case(Costs costs, Hits hits) {}

  /**
   * Boards that fail otherwise.
   *
   * @param outside share of the jobs with a fault the advisor does not know
   * @param inside hits of jobs with a fault it knows
   * @param outsideHits of the others
   * @param ratio of the price to the matched case
   */
  public record Perturbed(
      Case all, double outside, Hits inside, Hits outsideHits, Estimate ratio) {}

  /**
   * One reading in twenty wrong, and the advisor assumes so.
   *
   * @param right the same jobs without a mistake, the advisor assuming the same
   * @param ratio of the prices
   * @param firstKept share of jobs where the due repair heads the list, to that without a mistake
   */
  public record WrongReadings(Case wrong, Case right, Estimate ratio, double firstKept) {}
}
