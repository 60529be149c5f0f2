package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Whether observations contradict a hypothesis, and a smallest set of them that does. */
final class Contradiction {

  /** Odds against, both of the fit and against the best candidate, from which it counts. */
  static final double ODDS = 20;

  private static final double LOG_ODDS = StrictMath.log(ODDS);

  /** Up to so many observations every set is tried, 4,096 of them. */
  private static final int TRIED = 12;

  private final Likelihoods likelihoods;
  private final Outside outside;
  private final double[] own;
  private final double[] sumOfRow;

  /**
   * @param own logarithm of each weighed observation under the hypothesis
   * @param rows how many rows compete with it
   */
  Contradiction(Likelihoods likelihoods, Outside outside, double[] own, int rows) {
    this.likelihoods = likelihoods;
    this.outside = outside;
    this.own = own;
    sumOfRow = new double[rows];
    for (int row = 0; row < rows; row++) {
      sumOfRow[row] = likelihoods.sum(row);
    }
  }

  /** Logarithm of the fit without the observations of these indexes. */
  double fit(List<Integer> without) {
    double fit = 0;
    for (int i = 0; i < own.length; i++) {
      fit += without.contains(i) ? 0 : misfit(i);
    }
    return fit;
  }

  /** 0 if an observation is the likeliest reading of what the hypothesis predicts, else below. */
  double misfit(int i) {
    return own[i] - likelihoods.best(i);
  }

  boolean stands(List<Integer> without) {
    if (fit(without) >= -LOG_ODDS) {
      return false;
    }
    double rival = LOG_ODDS;
    for (int i = 0; i < own.length; i++) {
      rival += without.contains(i) ? 0 : own[i];
    }
    for (int row = FaultDictionary.HEALTHY + 1; row < sumOfRow.length; row++) {
      double sum = sumOfRow[row];
      for (int i : without) {
        sum -= likelihoods.of(i, row);
      }
      if (sum > rival) {
        return true;
      }
    }
    return outside.log(without) > rival;
  }

  /**
   * The first, in the order of entries, of the smallest sets without which nothing contradicts. Of
   * more than twelve observations, a set found by taking away the worst first, of which each is
   * needed.
   *
   * @param from the observations that speak against the hypothesis
   */
  List<Integer> smallestSet(List<Integer> from) {
    if (from.size() > TRIED) {
      return neededSet(from);
    }
    for (int size = 1; size < from.size(); size++) {
      Optional<List<Integer>> set = first(from, 0, size, new ArrayList<>());
      if (set.isPresent()) {
        return set.get();
      }
    }
    return from;
  }

  private List<Integer> neededSet(List<Integer> from) {
    List<Integer> worst = new ArrayList<>(from);
    worst.sort(Comparator.comparingDouble(this::misfit));
    List<Integer> set = new ArrayList<>();
    for (int i = 0; i < worst.size() && stands(set); i++) {
      set.add(worst.get(i));
    }
    for (int i : List.copyOf(set)) {
      List<Integer> smaller = new ArrayList<>(set);
      smaller.remove(Integer.valueOf(i));
      if (!stands(smaller)) {
        set = smaller;
      }
    }
    return set.stream().sorted().toList();
  }

  private Optional<List<Integer>> first(
      List<Integer> from, int next, int more, List<Integer> chosen) {
    if (more == 0) {
      return stands(chosen) ? Optional.empty() : Optional.of(List.copyOf(chosen));
    }
    for (int i = next; i <= from.size() - more; i++) {
      chosen.add(from.get(i));
      Optional<List<Integer>> set = first(from, i + 1, more - 1, chosen);
      chosen.remove(chosen.size() - 1);
      if (set.isPresent()) {
        return set;
      }
    }
    return Optional.empty();
  }
}
