package faultfinch.diagnosis;

import java.util.Optional;

/**
 * One observation as it is if a fault has another beside: what the fault shows itself, and else
 * what the list shows as often. Logarithms, by row.
 */
final class Beside {
  private final Likelihoods likelihoods;
  private final int i;
  private final double usual;
  private final double unheard;
  private final Optional<double[]> forms;
  private final String group;

  /**
   * Of the i-th weighed observation.
   *
   * @param weightOfRow together 1
   */
  Beside(Likelihoods likelihoods, int i, double[] weightOfRow, Unheard spoilt, ErrorRates rates) {
    this.likelihoods = likelihoods;
    this.i = i;
    double sum = 0;
    for (int row = 0; row < weightOfRow.length; row++) {
      sum += weightOfRow[row] * StrictMath.exp(likelihoods.of(i, row));
    }
    usual = StrictMath.log(sum);
    unheard = StrictMath.log(Outside.smoothed(0, weightOfRow.length));
    Observation seen = likelihoods.weighed().get(i);
    forms = spoilt.factors(seen, weightOfRow);
    String look = seen.looks().get(0);
    String[] words = look.split(" ", 3);
    group = rates.together(look) ? "" : words[Math.min(1, words.length - 1)];
  }

  /** If each of the two shows what it shows alone. */
  double apart(int row) {
    return likelihoods.differs(i, row) ? likelihoods.of(i, row) : usual;
  }

  /** If what no row shows may be what the other one makes of what this one shows; never less. */
  double meddled(int row) {
    return forms.isPresent() && likelihoods.differs(i, row)
        ? Math.max(likelihoods.of(i, row), unheard + forms.get()[row])
        : apart(row);
  }

  /** What is meddled with together has one name: what a person takes in at once, one pin. */
  String group() {
    return group;
  }
}
