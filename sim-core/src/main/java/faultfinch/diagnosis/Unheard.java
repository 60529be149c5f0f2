package faultfinch.diagnosis;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Which observations no row of the list shows, and what each may be a spoilt form of: the row whose
 * outcome has most in common with it.
 */
final class Unheard {
  /**
   * From so many signs on an outcome is a text; that words have letters in common tells nothing.
   */
  private static final int TEXT = 20;

  private final FaultDictionary dictionary;
  private final double sharpness;
  private final double unlike;
  private final Map<List<String>, Optional<double[]>> known = new HashMap<>();

  Unheard(FaultDictionary dictionary, ErrorRates rates) {
    this.dictionary = dictionary;
    sharpness = rates.sharpness();
    unlike = rates.likeNone();
  }

  /**
   * By row, how many times as likely as of the mean row an observation is a spoilt form of what it
   * shows, as natural logarithm; minus infinity for rows that are as healthy there. Empty if a row
   * shows what was seen, or if it is not one outcome of one look.
   *
   * @param weightOfRow together 1
   */
  Optional<double[]> factors(Observation seen, double[] weightOfRow) {
    List<Sight> sights = seen.reach().sights();
    if (sights.size() > 1 || sights.get(0).looks().size() + sights.get(0).outcomes().size() > 2) {
      return Optional.empty();
    }
    String look = sights.get(0).looks().get(0);
    String outcome = sights.get(0).outcomes().get(0);
    return known.computeIfAbsent(
        List.of(look, outcome), key -> factors(look, outcome, weightOfRow));
  }

  private Optional<double[]> factors(String look, String outcome, double[] weightOfRow) {
    OptionalInt at = dictionary.look(look);
    if (at.isEmpty()) {
      return Optional.empty();
    }
    Optional<Integer> cell = dictionary.cellOf(at.getAsInt(), outcome);
    if (cell.isPresent() && cell.get() == FaultDictionary.HEALTHY) {
      return Optional.empty();
    }
    double[] weightOfCell = weightOfCell(at.getAsInt(), weightOfRow);
    double odd = Arrays.stream(weightOfCell).skip(1).sum();
    if (cell.isPresent() && weightOfCell[cell.get()] > 0 || !(odd > 0)) {
      return Optional.empty();
    }
    double[] shares = shares(dictionary.outcomes(at.getAsInt()), outcome, weightOfCell);
    double alike = 0;
    for (int i = 0; i < shares.length; i++) {
      alike += weightOfCell[i] * shares[i];
    }
    double[] logs = new double[weightOfRow.length];
    for (int row = 0; row < logs.length; row++) {
      int shown = dictionary.cell(at.getAsInt(), row);
      boolean isOdd = shown != FaultDictionary.HEALTHY;
      double factor = isOdd ? unlike + (1 - unlike) * shares[shown] * odd / alike : 0;
      logs[row] = StrictMath.log(factor);
    }
    return Optional.of(logs);
  }

  private double[] weightOfCell(int look, double[] weightOfRow) {
    double[] weights = new double[dictionary.outcomes(look).size()];
    for (int row = 0; row < weightOfRow.length; row++) {
      weights[dictionary.cell(look, row)] += weightOfRow[row];
    }
    return weights;
  }

  /** How much each odd outcome of the list stands out among them, the most alike with 1. */
  private double[] shares(List<String> outcomes, String outcome, double[] weightOfCell) {
    double[] shares = new double[outcomes.size()];
    double best = 0;
    boolean text = outcome.length() >= TEXT;
    for (int cell = 1; cell < shares.length; cell++) {
      if (weightOfCell[cell] > 0 && text) {
        shares[cell] = Resemblance.of(outcomes.get(cell), outcome);
        best = Math.max(best, shares[cell]);
      }
    }
    for (int cell = 1; cell < shares.length; cell++) {
      boolean listed = weightOfCell[cell] > 0;
      shares[cell] = listed ? StrictMath.exp(sharpness * (shares[cell] - best)) : 0;
    }
    return shares;
  }
}
