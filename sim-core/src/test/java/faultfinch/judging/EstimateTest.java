package faultfinch.judging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Figures of stratified draws, worked out on paper. */
class EstimateTest {

  private static Map<Job, Double> results(Object... kindShareValue) {
    Map<Job, Double> results = new LinkedHashMap<>();
    Job any = Small.job(Small.U2);
    for (int i = 0; i < kindShareValue.length; i += 3) {
      String kind = (String) kindShareValue[i];
      double share = (Double) kindShareValue[i + 1];
      results.put(
          new Job(any.truth(), any.complaint(), kind, share, i), (Double) kindShareValue[i + 2]);
    }
    return results;
  }

  /**
   * Two kinds of share 0.5 each, with 1 and 3, and with 10 and 10: mean 0.5 x 2 + 0.5 x 10 = 6. The
   * first has a variance of 2, of its mean 1, times 0.5 squared; the second none. So the standard
   * deviation is 0.5, and 1.96 of it 0.98.
   */
  @Test
  void mean_ofTwoKinds_hasTheSpreadWithinThem() {
    Estimate mean =
        Estimate.mean(
            results("a", 0.25, 1.0, "a", 0.25, 3.0, "b", 0.25, 10.0, "b", 0.25, 10.0), v -> v);
    assertEquals(6, mean.at(), 1e-12);
    assertEquals(6 - 0.98, mean.low(), 1e-12);
    assertEquals(6 + 0.98, mean.high(), 1e-12);
  }

  /** Half of the jobs of a draw: their shares count for the whole. */
  @Test
  void mean_ofSomeJobs_countsThemAsAll() {
    assertEquals(2, Estimate.mean(results("a", 0.1, 1.0, "b", 0.3, 7.0 / 3), v -> v).at(), 1e-12);
  }

  /**
   * Kinds of one job each: mean 2; 0.5 squared times 1 and 0.5 squared times 1 are 0.5, whose root
   * is 0.7071.
   */
  @Test
  void mean_ofKindsWithOneJobEach_hasTheSpreadOfAll() {
    Estimate mean = Estimate.mean(results("a", 0.5, 1.0, "b", 0.5, 3.0), v -> v);
    assertEquals(2 + 1.96 * Math.sqrt(0.5), mean.high(), 1e-12);
  }

  @Test
  void mean_ofNoJob_isNoNumber() {
    assertTrue(Double.isNaN(Estimate.mean(results(), v -> v).at()));
  }

  /** Always twice as much: the ratio is 2 however the jobs differ. */
  @Test
  void ratio_ofValuesInStep_isExact() {
    Map<Job, double[]> pairs = new LinkedHashMap<>();
    results("a", 0.5, 1.0, "a", 0.5, 9.0).forEach((j, v) -> pairs.put(j, new double[] {2 * v, v}));
    Estimate ratio = Estimate.ratio(pairs);
    assertEquals(2, ratio.at(), 1e-12);
    assertEquals(2, ratio.high(), 1e-12);
  }

  /** 3 ± 0.3 by 2 ± 0.2: each a tenth, together the root of two of it. */
  @Test
  void quotient_ofTwoDraws_addsTheirSpreads() {
    Estimate quotient = Estimate.quotient(new Estimate(3, 2.7, 3.3), new Estimate(2, 1.8, 2.2));
    assertEquals(1.5, quotient.at(), 1e-12);
    assertEquals(1.5 * (1 + 0.1 * Math.sqrt(2)), quotient.high(), 1e-12);
  }

  /** By share, not by number: 8 stays under what nine tenths of the jobs stay under. */
  @Test
  void quantile_goesByShare() {
    Map<Job, Double> values =
        results("a", 0.5, 1.0, "a", 0.3, 5.0, "a", 0.15, 8.0, "a", 0.05, 99.0);
    assertEquals(8, Estimate.quantile(values, v -> v, 0.9).at());
    assertEquals(1, Estimate.quantile(values, v -> v, 0.5).at());
  }
}
