package faultfinch.judging;

import java.util.Map;
import java.util.function.Predicate;

/**
 * How good the belief is as the first repair is made, each a share of the jobs.
 *
 * @param first the repair that is due heads the list
 * @param topThree it is among the first three
 * @param sureAndWrong the repair made was given nine chances in ten or more and did not help
 */
public record Hits(Estimate first, Estimate topThree, Estimate sureAndWrong) {
  private static final double SURE = 0.9;
  private static final int TOP = 3;

  static Hits of(Map<Job, Bill> bills) {
    return new Hits(
        share(bills, f -> f.place() == 1),
        share(bills, f -> f.place() >= 1 && f.place() <= TOP),
        share(bills, f -> f.belief() >= SURE && !f.helped()));
  }

  private static Estimate share(Map<Job, Bill> bills, Predicate<Bill.FirstAct> which) {
    return Estimate.mean(bills, b -> b.first().filter(which).isPresent() ? 1 : 0);
  }
}
