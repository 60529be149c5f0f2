package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Whether observations contradict a hypothesis, and a smallest set of them that does. */
final class Contradiction {

  /** Odds against, both of the fit and against the best candidate, from which it counts. */
  static final double ODDS = 20;

  /** Up to so many observations every set is tried, 4,096 of them. */
  private static final int TRIED = 12;

  private final double[] best;
  private final Outside outside;
  private final double[] own;
  private final double[][] rivals;
  private final double[] sums;
  private final double logOdds;

  /**
   * @param best logarithm of the likeliest reading of each weighed observation, and of each repair
   *     made in vain
   * @param own logarithm of each under the hypothesis
   * @param rivals the same under each of its rivals, those with a second fault included
   * @param odds above 1
   */
  Contradiction(double[] best, Outside outside, double[] own, double[][] rivals, double odds) {
    this.best = best;
    this.outside = outside;
    this.own = own;
    this.rivals = rivals;
    logOdds = StrictMath.log(odds);
    sums = new double[rivals.length];
    for (int rival = 0; rival < rivals.length; rival++) {
      for (double each : rivals[rival]) {
        sums[rival] += each;
      }
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
    return own[i] - best[i];
  }

  boolean stands(List<Integer> without) {
    if (fit(without) >= -logOdds) {
      return false;
    }
    double better = logOdds;
    for (int i = 0; i < own.length; i++) {
      better += without.contains(i) ? 0 : own[i];
    }
    for (int rival = 0; rival < sums.length; rival++) {
      double sum = sums[rival];
      for (int i : without) {
        sum -= rivals[rival][i];
      }
      if (sum > better) {
        return true;
      }
    }
    return outside.log(without) > better;
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
    // Taking one out can make another needless, since the best rival changes: until none is.
    int size;
    do {
      size = set.size();
      for (int i : List.copyOf(set)) {
        List<Integer> smaller = new ArrayList<>(set);
        smaller.remove(Integer.valueOf(i));
        if (!stands(smaller)) {
          set = smaller;
        }
      }
    } while (set.size() < size);
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
