package faultfinch.diagnosis;

import faultfinch.bench.Price;
import java.util.List;
import java.util.Optional;

/**
 * What to do next, and why.
 *
 * @param best the step of least expected price
 * @param proposals best first, then by what they tell for what they waste
 * @param classes groups of candidates that looks can still tell apart
 * @param outside belief that the fault is none of the list
 */
public record Advice(Choice best, List<Proposal> proposals, int classes, double outside) {

  public Advice {
    proposals = List.copyOf(proposals);
  }

  /**
   * One possible step.
   *
   * @param bits it is expected to tell about which repair is due
   * @param expectedPrice of this and all to come in minutes, where it was worked out
   * @param outcomes likeliest first
   */
  public record Proposal(
      Step step, Price price, double bits, Optional<Double> expectedPrice, List<Branch> outcomes) {

    public Proposal {
      outcomes = List.copyOf(outcomes);
    }
  }

  /**
   * What one outcome would mean.
   *
   * @param chance 0 to 1
   * @param classes groups of candidates that would be left
   * @param repairs the likeliest then, at most three, with how likely each would be due
   */
  public record Branch(String outcome, double chance, int classes, List<Share> repairs) {

    public Branch {
      repairs = List.copyOf(repairs);
    }
  }
}
