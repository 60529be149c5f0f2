package faultfinch.judging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * A figure of the population and between what it lies 95 times in 100.
 *
 * @param at the estimate
 */
public record Estimate(double at, double low, double high) {

  /** Of a normal distribution, 95 in 100 lie within so many standard deviations. */
  private static final double WIDE = 1.96;

  /**
   * Mean over a stratified draw, or over some jobs of one: the spread that counts is the one within
   * the kinds. Not a number of no job at all.
   *
   * @param results with the job of each
   */
  static <R> Estimate mean(Map<Job, R> results, ToDoubleFunction<R> of) {
    double all = results.keySet().stream().mapToDouble(Job::share).sum();
    double mean = 0;
    Map<String, List<double[]>> kinds = new LinkedHashMap<>();
    for (Map.Entry<Job, R> e : results.entrySet()) {
      double value = of.applyAsDouble(e.getValue());
      double share = e.getKey().share() / all;
      mean += share * value;
      kinds
          .computeIfAbsent(e.getKey().kind(), k -> new ArrayList<>())
          .add(new double[] {value, share});
    }
    if (results.isEmpty()) {
      return new Estimate(Double.NaN, Double.NaN, Double.NaN);
    }
    double variance = 0;
    for (List<double[]> kind : kinds.values()) {
      variance += variance(kind, mean);
    }
    double reach = WIDE * StrictMath.sqrt(variance);
    return new Estimate(mean, mean - reach, mean + reach);
  }

  /**
   * What one kind adds to the variance of the mean: its share squared, of the mean of the kind. A
   * kind with one job tells nothing of its spread; it is taken to be as far off as from all.
   */
  private static double variance(List<double[]> kind, double ofAll) {
    int n = kind.size();
    double mean = kind.stream().mapToDouble(v -> v[0]).sum() / n;
    double squares = kind.stream().mapToDouble(v -> (v[0] - mean) * (v[0] - mean)).sum();
    double share = kind.stream().mapToDouble(v -> v[1]).sum();
    double off = kind.get(0)[0] - ofAll;
    return share * share * (n < 2 ? off * off : squares / (n - 1) / n);
  }

  /**
   * Ratio of two means over the same jobs.
   *
   * @param results each with what stands above and what stands below
   */
  static Estimate ratio(Map<Job, double[]> results) {
    double above = mean(results, r -> r[0]).at;
    double below = mean(results, r -> r[1]).at;
    double ratio = above / below;
    Estimate rest = mean(results, r -> r[0] - ratio * r[1]);
    double reach = (rest.high - rest.at) / below;
    return new Estimate(ratio, ratio - reach, ratio + reach);
  }

  /** Ratio of two means of different draws. */
  static Estimate quotient(Estimate above, Estimate below) {
    double ratio = above.at / below.at;
    double one = (above.high - above.at) / above.at;
    double other = (below.high - below.at) / below.at;
    double reach = ratio * StrictMath.sqrt(one * one + other * other);
    return new Estimate(ratio, ratio - reach, ratio + reach);
  }

  /** What a share of the population stays under; its ends by how far the rank may be off. */
  static <R> Estimate quantile(Map<Job, R> results, ToDoubleFunction<R> of, double share) {
    List<double[]> rising = new ArrayList<>();
    results.forEach(
        (job, result) -> rising.add(new double[] {of.applyAsDouble(result), job.share()}));
    rising.sort(Comparator.comparingDouble(v -> v[0]));
    double reach = WIDE * StrictMath.sqrt(share * (1 - share) / rising.size());
    return new Estimate(at(rising, share), at(rising, share - reach), at(rising, share + reach));
  }

  private static double at(List<double[]> rising, double share) {
    double sum = 0;
    for (double[] value : rising) {
      sum += value[1];
      if (sum >= share) {
        return value[0];
      }
    }
    return rising.get(rising.size() - 1)[0];
  }
}
