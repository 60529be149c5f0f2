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
  private static final int NEVER = -1;

  private final Likelihoods likelihoods;
  private final Suspects suspects;
  private final FaultDictionary dictionary;
  private final List<Integer> done;
  private final List<Beside> besides = new ArrayList<>();
  private final int[] groups;
  private final Repeats repeats;
  private final double meddles;
  private final double leaves;
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
    done = suspects.numbers(evidence.done());
    fails = StrictMath.log(rates.repairFails());
    works = StrictMath.log(1 - rates.repairFails());
    double[] weightOfRow = suspects.weightOfRow(dictionary);
    Unheard unheard = new Unheard(dictionary, rates);
    groups = new int[likelihoods.weighed().size()];
    List<String> names = new ArrayList<>();
    for (int i = 0; i < groups.length; i++) {
      Beside beside = new Beside(likelihoods, i, weightOfRow, unheard, rates);
      besides.add(beside);
      if (!names.contains(beside.group())) {
        names.add(beside.group());
      }
      groups[i] = names.indexOf(beside.group());
    }
    repeats = new Repeats(likelihoods.weighed());
    meddles = StrictMath.log(rates.meddles());
    leaves = StrictMath.log(1 - rates.meddles());
    afterCure = new double[done.size()][];
  }

  /** The repairs done that surely cure a hypothesis, by their number from 0, rising. */
  int[] curing(Suspects.Hypothesis h) {
    int[] numbers = new int[done.size()];
    int n = 0;
    for (int i = 0; i < done.size(); i++) {
      if (h.cures().contains(done.get(i))) {
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
    List<Integer> rows = new ArrayList<>(besides.size());
    for (int i = 0; i < besides.size(); i++) {
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
    return besides.get(i).apart(row);
  }

  /**
   * Logarithm of what was seen up to a repair of this number if a fault that is still there has
   * another beside, which now and then meddles with what it shows.
   */
  private double stillBesides(Suspects.Hypothesis h, int row, int last) {
    double apart = 0;
    double meddling = 0;
    int[] spoiltAfter = new int[groups.length];
    Arrays.fill(spoiltAfter, NEVER);
    for (int i = 0; i < besides.size(); i++) {
      int after = likelihoods.after(i);
      if (after <= last) {
        int now = row(i, h, row);
        double own = besides.get(i).apart(now);
        double any = besides.get(i).meddled(now);
        boolean spoils = any > own;
        if (repeats.seenAgain(i)) {
          Beside before = besides.get(repeats.last(i));
          int then = row(repeats.last(i), h, row);
          own = Math.min(0, own - before.apart(then));
          any = Math.min(0, any - before.meddled(then));
        } else if (spoils && spoiltAfter[groups[i]] == after) {
          any = 0;
        }
        spoiltAfter[groups[i]] = spoils ? after : spoiltAfter[groups[i]];
        apart += own;
        meddling += any;
      }
    }
    return either(apart, leaves, meddling, meddles);
  }

  /** If the other fault leaves alone what the one shows, or meddles with it; logarithms. */
  static double either(double apart, double leaves, double meddled, double meddles) {
    return apart == meddled ? apart : plus(apart + leaves, meddled + meddles);
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
    for (int i = 0; i < besides.size(); i++) {
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
        for (int i = 0; i < besides.size(); i++) {
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
    for (int i = 0; i < besides.size(); i++) {
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
    if (!leads(row, done.size())) {
      return Double.NEGATIVE_INFINITY;
    }
    return sum + stillBesides(h, row, done.size());
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
    return sum + stillBesides(h, row(h), number);
  }

  /**
   * What may be left after the repair of this number, by hypothesis: weight times likelihood of all
   * that was seen after it; the last two are what a later repair cured, and all together.
   */
  double[] left(int number) {
    if (afterCure[number] == null) {
      List<Suspects.Hypothesis> all = suspects.hypotheses();
      double prior = suspects.prior();
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
