package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * How well each row of a dictionary explains each observation, as natural logarithms. By StrictMath
 * and in the order of the entries, so that every computer gets the same bits.
 */
final class Likelihoods {
  private final List<Observation> weighed = new ArrayList<>();
  private final List<Observation> notWeighed = new ArrayList<>();
  private final List<double[]> byRow = new ArrayList<>();
  private final List<Integer> looks = new ArrayList<>();
  private final FaultDictionary dictionary;
  private final ErrorRates rates;

  Likelihoods(FaultDictionary dictionary, ErrorRates rates, List<Observation> seen) {
    this.dictionary = dictionary;
    this.rates = rates;
    for (Observation observation : seen) {
      OptionalInt look = dictionary.look(observation.look());
      if (look.isEmpty()) {
        notWeighed.add(observation);
      } else {
        weighed.add(observation);
        looks.add(look.getAsInt());
        byRow.add(column(observation, look.getAsInt()));
      }
    }
  }

  private double[] column(Observation observation, int look) {
    List<String> outcomes = dictionary.outcomes(look);
    double[] byOutcome = new double[outcomes.size()];
    for (int i = 0; i < byOutcome.length; i++) {
      byOutcome[i] = log(observation, outcomes.get(i), outcomes.size());
    }
    double[] column = new double[dictionary.rows()];
    for (int row = 0; row < column.length; row++) {
      column[row] = byOutcome[dictionary.cell(look, row)];
    }
    return column;
  }

  private double log(Observation observation, String shown, int outcomes) {
    return StrictMath.log(rates.likelihood(observation, shown, outcomes));
  }

  /** The observations the dictionary can express, in order. */
  List<Observation> weighed() {
    return weighed;
  }

  List<Observation> notWeighed() {
    return notWeighed;
  }

  /** Index of the look of the i-th weighed observation. */
  int look(int i) {
    return looks.get(i);
  }

  /** Of the i-th weighed observation under a row. */
  double of(int i, int row) {
    return byRow.get(i)[row];
  }

  /** Of every weighed observation under what a board is said to show; looks it lacks count 0. */
  double[] under(Map<String, String> shows) {
    double[] each = new double[weighed.size()];
    for (int i = 0; i < each.length; i++) {
      String shown = shows.get(weighed.get(i).look());
      if (shown != null) {
        each[i] = log(weighed.get(i), shown, dictionary.outcomes(looks.get(i)).size());
      }
    }
    return each;
  }

  /** Of the likeliest reading of the i-th weighed observation. */
  double best(int i) {
    return StrictMath.log(rates.right(weighed.get(i)));
  }

  /** Of all weighed observations under a row. */
  double sum(int row) {
    double sum = 0;
    for (int i = 0; i < weighed.size(); i++) {
      sum += of(i, row);
    }
    return sum;
  }
}
