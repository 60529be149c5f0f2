package faultfinch.diagnosis;

import faultfinch.bench.Price;

/**
 * A step and why it was taken.
 *
 * @param expectedPrice of this step and all to come until the board is cured, in minutes
 * @param method how it was found; only the exact one gives the least price, others an estimate
 */
public record Choice(Step step, Price price, double expectedPrice, Method method) {

  /** The ways to find a step. */
  public enum Method {
    EXACT,
    ROLLOUT,
    GAIN_PER_PRICE
  }
}
