package faultfinch.diagnosis;

import java.util.List;

/**
 * How likely the observations are if the fault is none of the list: as often as the list shows such
 * an outcome. What a person takes in at once counts once, together.
 */
final class Outside {
  private static final double UNHEARD = 0.5;

  private final double[] weightOfRow;
  private final double[] each;
  private final boolean[] joint;
  private final Likelihoods likelihoods;

  Outside(
      Likelihoods likelihoods, FaultDictionary dictionary, ErrorRates rates, Suspects suspects) {
    this.likelihoods = likelihoods;
    weightOfRow = suspects.weightOfRow(dictionary);
    int size = likelihoods.weighed().size();
    each = new double[size];
    joint = new boolean[size];
    for (int i = 0; i < size; i++) {
      joint[i] = rates.together(likelihoods.weighed().get(i).looks().get(0));
      each[i] = StrictMath.log(frequency(new boolean[size], i));
    }
  }

  /** Logarithm, without the observations of these indexes. */
  double log(List<Integer> without) {
    double sum = 0;
    int last = 0;
    for (int i = 0; i < each.length; i++) {
      sum += without.contains(i) || joint[i] ? 0 : each[i];
      last = Math.max(last, likelihoods.after(i));
    }
    for (int after = 0; after <= last; after++) {
      boolean[] together = new boolean[each.length];
      boolean any = false;
      for (int i = 0; i < each.length; i++) {
        together[i] = joint[i] && likelihoods.after(i) == after && !without.contains(i);
        any |= together[i];
      }
      sum += any ? StrictMath.log(frequency(together, -1)) : 0;
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
    double smooth = UNHEARD / weightOfRow.length;
    return (sum + smooth) / (1 + smooth);
  }
}
