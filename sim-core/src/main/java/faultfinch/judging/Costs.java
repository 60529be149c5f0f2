package faultfinch.judging;

import java.util.Map;

/**
 * What jobs cost that one way, the retest included.
 *
 * @param innocent chips a job taken out in vain
 * @param minutes95 what 95 in 100 jobs stay under
 * @param price in minutes, with each pull and the damage to be expected
 */
public record Costs(
    Estimate innocent, Estimate minutes, Estimate minutes95, Estimate price, Estimate looks) {
  private static final double MOST = 0.95;

  static Costs of(Map<Job, Bill> bills) {
    return new Costs(
        Estimate.mean(bills, Bill::innocent),
        Estimate.mean(bills, b -> b.price().minutes()),
        Estimate.quantile(bills, b -> b.price().minutes(), MOST),
        Estimate.mean(bills, b -> b.price().total()),
        Estimate.mean(bills, Bill::looks));
  }
}
