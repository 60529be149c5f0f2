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
  private final FaultDictionary dictionary;

  Outside(
      Likelihoods likelihoods, FaultDictionary dictionary, ErrorRates rates, Suspects suspects) {
    this.likelihoods = likelihoods;
    this.dictionary = dictionary;
    weightOfRow = new double[dictionary.rows()];
    double sum = 0;
    for (Suspect suspect : suspects.all()) {
      weightOfRow[dictionary.row(suspect.fault())] += suspect.weight();
      sum += suspect.weight();
    }
    for (int row = 0; row < weightOfRow.length; row++) {
      weightOfRow[row] /= sum;
    }
    int size = likelihoods.weighed().size();
    each = new double[size];
    joint = new boolean[size];
    for (int i = 0; i < size; i++) {
      joint[i] = rates.together(likelihoods.weighed().get(i).look());
      each[i] = StrictMath.log(frequency(new boolean[size], i));
    }
  }

  /** Logarithm, without the observations of these indexes. */
  double log(List<Integer> without) {
    double sum = 0;
    boolean[] together = joint.clone();
    boolean any = false;
    for (int i = 0; i < each.length; i++) {
      if (without.contains(i)) {
        together[i] = false;
      } else if (!joint[i]) {
        sum += each[i];
      }
      any |= together[i];
    }
    return any ? sum + StrictMath.log(frequency(together, -1)) : sum;
  }

  /** How often rows show all of these outcomes; half a row more, so that new is not impossible. */
  private double frequency(boolean[] which, int or) {
    double sum = 0;
    for (int row = 0; row < weightOfRow.length; row++) {
      boolean all = true;
      for (int i = 0; i < which.length && all; i++) {
        all = (!which[i] && i != or) || shows(i, row);
      }
      sum += all ? weightOfRow[row] : 0;
    }
    double smooth = UNHEARD / weightOfRow.length;
    return (sum + smooth) / (1 + smooth);
  }

  private boolean shows(int i, int row) {
    String seen = likelihoods.weighed().get(i).seen();
    return dictionary.outcome(likelihoods.look(i), row).equals(seen);
  }
}
