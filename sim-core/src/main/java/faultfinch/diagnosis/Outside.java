package faultfinch.diagnosis;

import java.util.List;

/**
 * How likely the observations are if the fault is none of the list: as often as the list shows such
 * an outcome. What a person takes in at once counts once, together.
 */
final class Outside {
  private static final double UNHEARD = 0.5;

  private static final int NO_OTHER = -1;

  private final double[] weightOfRow;
  private final double[] each;
  private final boolean[] joint;
  private final boolean[] wavers;
  private final Repeats repeats;
  private final double[] again;
  private final Likelihoods likelihoods;

  Outside(
      Likelihoods likelihoods, FaultDictionary dictionary, ErrorRates rates, Suspects suspects) {
    this.likelihoods = likelihoods;
    weightOfRow = suspects.weightOfRow(dictionary);
    int size = likelihoods.weighed().size();
    each = new double[size];
    joint = new boolean[size];
    wavers = new boolean[size];
    repeats = new Repeats(likelihoods.weighed());
    again = new double[size];
    for (int i = 0; i < size; i++) {
      Observation seen = likelihoods.weighed().get(i);
      Observation.Reach reach = seen.reach();
      boolean plain =
          reach.tally().equals(Tally.ONCE) && reach.climate() == Observation.Climate.USUAL;
      joint[i] = plain && rates.together(seen.looks().get(0));
      wavers[i] = !plain;
      double usual = plain ? frequency(new boolean[size], i) : average(only(i));
      each[i] = StrictMath.log(usual);
      if (repeats.acrossRepairs(i)) {
        double cured = rates.curedOutside();
        double same = repeats.unchangedByRepair(i) ? 1 - cured : 0;
        double healthy = likelihoods.isOdd(i) ? 0 : cured;
        double error = rates.error(seen);
        again[i] = StrictMath.log((1 - error) * (same + healthy) + error * usual);
      }
    }
  }

  /**
   * Logarithm, without the observations of these indexes. What was looked at before is as it was,
   * unless a repair happened to cure what is not in the list.
   */
  double log(List<Integer> without) {
    double sum = 0;
    int last = 0;
    boolean[] together = new boolean[each.length];
    boolean[] kept = new boolean[each.length];
    boolean some = false;
    for (int i = 0; i < each.length; i++) {
      last = Math.max(last, likelihoods.after(i));
      if (!without.contains(i)) {
        boolean repeated = repeats.acrossRepairs(i) && !without.contains(repeats.beforeRepair(i));
        together[i] = joint[i] && !repeated;
        kept[i] = wavers[i] && !repeated;
        some |= kept[i];
        sum += repeated ? again[i] : joint[i] || kept[i] ? 0 : each[i];
      }
    }
    for (int after = 0; after <= last; after++) {
      boolean[] now = new boolean[each.length];
      boolean any = false;
      for (int i = 0; i < each.length; i++) {
        now[i] = together[i] && likelihoods.after(i) == after;
        any |= now[i];
      }
      sum += any ? StrictMath.log(frequency(now, NO_OTHER)) : 0;
    }
    return some ? sum + StrictMath.log(average(kept)) : sum;
  }

  private boolean[] only(int i) {
    boolean[] only = new boolean[each.length];
    only[i] = true;
    return only;
  }

  /**
   * What the list makes of observations that no row shows or shows not, such as a tally, or what
   * the board did when it was cold: of all of them together, for whatever is well when cold and
   * fails when warm is one thing that waits for warmth and not two accidents.
   */
  private double average(boolean[] which) {
    double sum = 0;
    for (int row = 0; row < weightOfRow.length; row++) {
      double all = weightOfRow[row];
      for (int i = 0; i < which.length; i++) {
        all *= which[i] ? StrictMath.exp(likelihoods.of(i, row)) : 1;
      }
      sum += all;
    }
    return sum;
  }

  /** How often rows show all of these outcomes; half a row more, so that new is not impossible. */
  private double frequency(boolean[] which, int or) {
    double sum = 0;
    for (int row = 0; row < weightOfRow.length; row++) {
      boolean all = true;
      for (int i = 0; i < which.length && all; i++) {
        all = (!which[i] && i != or) || likelihoods.matches(i, row);
      }
      sum += all ? weightOfRow[row] : 0;
    }
    return smoothed(sum, weightOfRow.length);
  }

  /**
   * A share of the list as a frequency.
   *
   * @param rows of the dictionary
   */
  static double smoothed(double share, int rows) {
    double smooth = UNHEARD / rows;
    return (share + smooth) / (1 + smooth);
  }
}
