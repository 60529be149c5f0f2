package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How likely all observations are together if a fault is the only one, and if it is one of two.
 * What was seen after a repair that cures it is held against the healthy board, or against the
 * other fault.
 *
 * <p>Not modelled: two faults that mask each other. Where the first shows nothing of its own, the
 * second counts as often as the list shows such an outcome.
 */
final class Joint {
  private final Likelihoods likelihoods;
  private final Suspects suspects;
  private final FaultDictionary dictionary;
  private final int[] done;
  private final double[] usual;
  private final double fails;
  private final double works;
  private final double[][] afterCure;

  Joint(
      Likelihoods likelihoods,
      FaultDictionary dictionary,
      Suspects suspects,
      ErrorRates rates,
      Evidence evidence) {
    this.likelihoods = likelihoods;
    this.dictionary = dictionary;
    this.suspects = suspects;
    done = evidence.done().stream().mapToInt(suspects.actions()::indexOf).toArray();
    fails = StrictMath.log(rates.repairFails());
    works = StrictMath.log(1 - rates.repairFails());
    double[] weightOfRow = suspects.weightOfRow(dictionary);
    usual = new double[likelihoods.weighed().size()];
    for (int i = 0; i < usual.length; i++) {
      double sum = 0;
      for (int row = 0; row < weightOfRow.length; row++) {
        sum += weightOfRow[row] * StrictMath.exp(likelihoods.of(i, row));
      }
      usual[i] = StrictMath.log(sum);
    }
    afterCure = new double[done.length][];
  }

  /** The repairs done that surely cure a hypothesis, by their number from 0, rising. */
  int[] curing(Suspects.Hypothesis h) {
    int[] numbers = new int[done.length];
    int n = 0;
    for (int i = 0; i < done.length; i++) {
      if (h.cures().contains(done[i])) {
        numbers[n++] = i;
      }
    }
    return Arrays.copyOf(numbers, n);
  }

  int row(Suspects.Hypothesis h) {
    return dictionary.row(suspects.all().get(h.suspect()).fault());
  }

  /** The row of a hypothesis in the i-th observation: parts may be out, and the fault with them. */
  private int row(int i, Suspects.Hypothesis h, int row) {
    return likelihoods.row(i, suspects.all().get(h.suspect()), row);
  }

  /** The rows of a hypothesis in all observations. */
  List<Integer> rows(Suspects.Hypothesis h) {
    List<Integer> rows = new ArrayList<>(usual.length);
    for (int i = 0; i < usual.length; i++) {
      rows.add(row(i, h, row(h)));
    }
    return rows;
  }

  /** Logarithm of the i-th observation if a row is all that is wrong. */
  double alone(int i, int row) {
    return likelihoods.of(i, row);
  }

  /** Logarithm of the i-th observation if there is another fault beside. */
  double besides(int i, int row) {
    return likelihoods.differs(i, row) ? likelihoods.of(i, row) : usual[i];
  }

  /**
   * The only fault, still there.
   *
   * @param from only observations after so many repairs count, and only repairs from there on
   */
  double still(Suspects.Hypothesis h, int from) {
    double sum = 0;
    for (int number : curing(h)) {
      sum += number >= from ? fails : 0;
    }
    int row = row(h);
    for (int i = 0; i < usual.length; i++) {
      sum += likelihoods.after(i) >= from ? alone(i, row(i, h, row)) : 0;
    }
    return sum;
  }

  /** The only fault, cured by one of the repairs done; minus infinity if none cures it. */
  double cured(Suspects.Hypothesis h) {
    return cured(h, 0);
  }

  private double cured(Suspects.Hypothesis h, int from) {
    double sum = Double.NEGATIVE_INFINITY;
    double before = 0;
    int row = row(h);
    for (int number : curing(h)) {
      if (number >= from) {
        double log = before + works;
        for (int i = 0; i < usual.length; i++) {
          int after = likelihoods.after(i);
          if (after >= from) {
            log += alone(i, after > number ? FaultDictionary.HEALTHY : row(i, h, row));
          }
        }
        sum = plus(sum, log);
        before += fails;
      }
    }
    return sum;
  }

  /**
   * Whether a row shows something in a look that was not as on a healthy board, or all was as on
   * one. Of two faults the one that shows itself stands for both, or every pair would be counted at
   * a fault that nothing speaks for.
   *
   * @param last observations after more repairs than this do not count
   */
  private boolean leads(int row, int last) {
    boolean odd = false;
    for (int i = 0; i < usual.length; i++) {
      if (likelihoods.after(i) <= last && likelihoods.isOdd(i)) {
        odd = true;
        if (likelihoods.differs(i, row)) {
          return true;
        }
      }
    }
    return !odd;
  }

  /** One of two faults, itself still there; minus infinity if the other one leads. */
  double stillOfTwo(Suspects.Hypothesis h) {
    double sum = curing(h).length * fails;
    int row = row(h);
    if (!leads(row, done.length)) {
      return Double.NEGATIVE_INFINITY;
    }
    for (int i = 0; i < usual.length; i++) {
      sum += besides(i, row(i, h, row));
    }
    return sum;
  }

  /**
   * One of two faults, cured by the repair of this number while the other stayed: without what was
   * seen after, which is for {@link #left}. Minus infinity if the other one leads.
   */
  double curedOfTwo(Suspects.Hypothesis h, int number) {
    if (!leads(row(h), number)) {
      return Double.NEGATIVE_INFINITY;
    }
    double sum = works;
    for (int earlier : curing(h)) {
      sum += earlier < number ? fails : 0;
    }
    int row = row(h);
    for (int i = 0; i < usual.length; i++) {
      sum += likelihoods.after(i) <= number ? besides(i, row(i, h, row)) : 0;
    }
    return sum;
  }

  /**
   * What may be left after the repair of this number, by hypothesis: weight times likelihood of all
   * that was seen after it; the last two are what a later repair cured, and all together.
   */
  double[] left(int number) {
    if (afterCure[number] == null) {
      List<Suspects.Hypothesis> all = suspects.hypotheses();
      double prior = all.stream().mapToDouble(Suspects.Hypothesis::weight).sum();
      double[] left = new double[all.size() + 2];
      double cured = Double.NEGATIVE_INFINITY;
      double sum = Double.NEGATIVE_INFINITY;
      for (int g = 0; g < all.size(); g++) {
        double weight = StrictMath.log(all.get(g).weight() / prior);
        left[g] = weight + still(all.get(g), number + 1);
        cured = plus(cured, weight + cured(all.get(g), number + 1));
        sum = plus(sum, left[g]);
      }
      left[all.size()] = cured;
      left[all.size() + 1] = plus(sum, cured);
      afterCure[number] = left;
    }
    return afterCure[number];
  }

  /** Logarithm of a sum. */
  static double plus(double a, double b) {
    double more = Math.max(a, b);
    return more == Double.NEGATIVE_INFINITY
        ? more
        : more + StrictMath.log(StrictMath.exp(a - more) + StrictMath.exp(b - more));
  }
}
