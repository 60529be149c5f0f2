package faultfinch.diagnosis;

import faultfinch.bench.Price;
import faultfinch.diagnosis.Verdict.Deciding;
import faultfinch.diagnosis.Verdict.Finding;
import faultfinch.diagnosis.Verdict.Mismatch;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Weighs a hypothesis against what was seen. */
public final class Weigher {
  private static final double NOTHING = 1e-9;

  private final FaultDictionary dictionary;
  private final Suspects suspects;
  private final ErrorRates rates;
  private final PriceList prices;

  /** For the faults of one board. */
  public Weigher(
      FaultDictionary dictionary, Suspects suspects, ErrorRates rates, PriceList prices) {
    this.dictionary = dictionary;
    this.suspects = suspects;
    this.rates = rates;
    this.prices = prices;
  }

  /** Weighs one fault of the dictionary. */
  public Verdict weigh(String fault, Evidence evidence) {
    int row = dictionary.row(fault);
    List<String> alike =
        dictionary.faults().stream()
            .filter(f -> dictionary.row(f) == row && !f.equals(fault))
            .toList();
    return weigh(fault, dictionary.shows(row), evidence, alike);
  }

  /**
   * Weighs anything that was run, such as two faults at once.
   *
   * @param shows outcome by look; looks it lacks are not held against it
   */
  public Verdict weigh(String hypothesis, Map<String, String> shows, Evidence evidence) {
    return weigh(hypothesis, shows, evidence, List.of());
  }

  private Verdict weigh(
      String hypothesis, Map<String, String> shows, Evidence evidence, List<String> alike) {
    Likelihoods likelihoods = new Likelihoods(dictionary, rates, evidence.seen());
    Outside outside = new Outside(likelihoods, dictionary, rates, suspects);
    Contradiction contradiction =
        new Contradiction(likelihoods, outside, likelihoods.under(shows), dictionary.rows());
    List<Integer> against = new ArrayList<>();
    for (int i = 0; i < likelihoods.weighed().size(); i++) {
      Observation seen = likelihoods.weighed().get(i);
      if (shows.containsKey(seen.look()) && !seen.seen().equals(shows.get(seen.look()))) {
        against.add(i);
      }
    }
    boolean contradicted = contradiction.stands(List.of());
    List<Integer> set = contradicted ? contradiction.smallestSet(against) : List.of();
    Finding finding =
        contradicted
            ? Finding.CONTRADICTED
            : against.isEmpty() ? Finding.PREDICTED : Finding.CANNOT_RULE_OUT;
    return new Verdict(
        hypothesis,
        finding,
        StrictMath.exp(contradiction.fit(List.of())),
        mismatches(against, likelihoods, shows),
        mismatches(set, likelihoods, shows),
        likelihoods.notWeighed(),
        alike,
        deciding(shows, evidence));
  }

  private static List<Mismatch> mismatches(
      List<Integer> which, Likelihoods likelihoods, Map<String, String> shows) {
    return which.stream()
        .map(likelihoods.weighed()::get)
        .map(o -> new Mismatch(o, shows.get(o.look())))
        .toList();
  }

  /**
   * The hypothesis counts as much as all the rest together, or a bold one would never be tested.
   */
  private Optional<Deciding> deciding(Map<String, String> shows, Evidence evidence) {
    double[] rest = restByRow(shows, evidence);
    double sum = 0;
    for (double weight : rest) {
      sum += weight;
    }
    if (!(sum > 0)) {
      return Optional.empty();
    }
    Set<String> done = new LinkedHashSet<>();
    evidence.seen().forEach(o -> done.add(o.look()));
    List<String> looks = dictionary.looks();
    Optional<Deciding> best = Optional.empty();
    double bestScore = 0;
    for (int look = 0; look < looks.size(); look++) {
      String shown = shows.get(looks.get(look));
      if (shown == null || done.contains(looks.get(look))) {
        continue;
      }
      double[] byCell = new double[dictionary.outcomes(look).size()];
      for (int row = 0; row < rest.length; row++) {
        byCell[dictionary.cell(look, row)] += rest[row];
      }
      double same = dictionary.cellOf(look, shown).map(cell -> byCell[cell]).orElse(0.0) / sum;
      double bits = bits(same);
      Price price = prices.look(looks.get(look));
      double score = bits / Math.max(price.total(), NOTHING);
      if (bits > NOTHING && score > bestScore) {
        bestScore = score;
        best =
            Optional.of(
                new Deciding(looks.get(look), price, bits, shown, likeliest(look, byCell, shown)));
      }
    }
    return best;
  }

  private String likeliest(int look, double[] byCell, String not) {
    int best = -1;
    for (int cell = 0; cell < byCell.length; cell++) {
      if (!dictionary.outcomes(look).get(cell).equals(not)
          && (best < 0 || byCell[cell] > byCell[best])) {
        best = cell;
      }
    }
    return dictionary.outcomes(look).get(best);
  }

  /** Belief in each row that is not the hypothesis itself. */
  private double[] restByRow(Map<String, String> shows, Evidence evidence) {
    double[] weights = new Belief(dictionary, suspects, rates, evidence).weights();
    double[] rest = new double[dictionary.rows()];
    for (int i = 0; i < weights.length; i++) {
      Suspect suspect = suspects.all().get(suspects.hypotheses().get(i).suspect());
      rest[dictionary.row(suspect.fault())] += weights[i];
    }
    for (int row = 0; row < rest.length; row++) {
      if (rest[row] > 0 && isShown(row, shows)) {
        rest[row] = 0;
      }
    }
    return rest;
  }

  private boolean isShown(int row, Map<String, String> shows) {
    List<String> looks = dictionary.looks();
    for (int look = 0; look < looks.size(); look++) {
      String shown = shows.get(looks.get(look));
      if (shown != null && !shown.equals(dictionary.outcome(look, row))) {
        return false;
      }
    }
    return true;
  }

  /**
   * What an outcome tells about two equally likely sides, if one side always shows it and the other
   * in the share {@code same} of cases: 1 - H(1/(1+same)) x (1+same)/2.
   */
  private static double bits(double same) {
    double all = (1 + same) / 2;
    double h = xlog2x(all) - xlog2x(same / 2) - xlog2x(0.5);
    return 1 - h;
  }

  private static double xlog2x(double x) {
    return x > 0 ? x * StrictMath.log(x) / StrictMath.log(2) : 0;
  }
}
