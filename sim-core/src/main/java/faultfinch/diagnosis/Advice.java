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
 * @param forecast what the job comes to if it is gone on with as planned
 * @param atLeast minutes below which no plan can be; see {@link LowerBound}
 * @param groups what no look parts, the likeliest first, at most three
 */
public record Advice(
    Choice best,
    List<Proposal> proposals,
    int classes,
    double outside,
    Forecast forecast,
    double atLeast,
    List<Group> groups) {

  public Advice {
    proposals = List.copyOf(proposals);
    groups = List.copyOf(groups);
  }

  /** By how much the choice can be dearer than the best one, at most, in minutes. */
  public double gap() {
    return Math.max(0, best.expectedPrice() - atLeast);
  }

  /**
   * Causes that no look parts though more than one repair may be due: what is left is to try.
   *
   * @param chance that it is one of them, 0 to 1
   * @param order to try the repairs in, each with the chance that it is the one that cures
   */
  public record Group(double chance, List<Share> order) {

    public Group {
      order = List.copyOf(order);
    }
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
