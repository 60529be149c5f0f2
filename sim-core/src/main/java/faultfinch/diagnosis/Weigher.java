package faultfinch.diagnosis;

import faultfinch.bench.Price;
import faultfinch.diagnosis.Verdict.Deciding;
import faultfinch.diagnosis.Verdict.Finding;
import faultfinch.diagnosis.Verdict.Mismatch;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** Weighs a hypothesis against what was seen. */
public final class Weigher {
  /** More than the roundings of a sum can make, in bits. */
  private static final double ROUNDING = 1e-9;

  private static final int NOT_ASKED = -1;
  private static final int SHOWN_BY_NONE = -2;

  private static final double NOTHING = 1e-9;
  private static final int EXPECTED_SHOWN = 3;

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

  /** Weighs one fault of the dictionary; a repair done that surely cures it has cured it. */
  public Verdict weigh(String fault, Evidence evidence, double odds) {
    int row = dictionary.row(fault);
    List<String> alike =
        dictionary.faults().stream()
            .filter(f -> dictionary.row(f) == row && !f.equals(fault))
            .toList();
    Map<String, String> shows =
        suspects.contains(fault)
            ? Trial.shows(dictionary, suspects.of(fault), evidence.trials())
            : dictionary.shows(row);
    Map<String, String> healthy = Trial.healthy(dictionary, evidence.trials());
    List<Map<String, String>> stages = new ArrayList<>(List.of(shows));
    Map<String, String> now = shows;
    for (RepairAction action : evidence.done()) {
      now = suspects.contains(fault) && suspects.of(fault).surelyCuredBy(action) ? healthy : now;
      stages.add(now);
    }
    Predicate<RepairAction> cures =
        action -> suspects.contains(fault) && suspects.of(fault).surelyCuredBy(action);
    return weigh(fault, stages, cures, evidence, alike, odds);
  }

  /**
   * Weighs anything that was run, such as two faults at once.
   *
   * @param stages outcome by look, before the first repair and after each; looks they lack are not
   *     held against it
   * @param cures whether a repair would have cured all of it
   */
  public Verdict weigh(
      String hypothesis,
      List<Map<String, String>> stages,
      Predicate<RepairAction> cures,
      Evidence evidence,
      double odds) {
    return weigh(hypothesis, stages, cures, evidence, List.of(), odds);
  }

  private Verdict weigh(
      String hypothesis,
      List<Map<String, String>> stages,
      Predicate<RepairAction> cures,
      Evidence evidence,
      List<String> alike,
      double odds) {
    Likelihoods likelihoods = new Likelihoods(dictionary, rates, evidence);
    Outside outside = new Outside(likelihoods, dictionary, rates, suspects);
    List<RepairAction> missed = evidence.missed();
    int size = likelihoods.weighed().size();
    double[] own = new double[size + missed.size()];
    double[] best = new double[own.length];
    for (int i = 0; i < size; i++) {
      own[i] = likelihoods.under(i, stages.get(likelihoods.after(i)));
      best[i] = likelihoods.best(i);
    }
    for (int i = 0; i < missed.size(); i++) {
      own[size + i] = cures.test(missed.get(i)) ? StrictMath.log(rates.repairFails()) : 0;
    }
    Joint joint = new Joint(likelihoods, dictionary, suspects, rates, evidence);
    Contradiction contradiction =
        new Contradiction(best, outside, own, rivals(joint, likelihoods, missed), odds);
    List<Integer> against = new ArrayList<>();
    for (int i = 0; i < own.length; i++) {
      if (own[i] != 0 && contradiction.misfit(i) < -NOTHING) {
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
        mismatches(against, likelihoods, stages, missed),
        mismatches(set, likelihoods, stages, missed),
        likelihoods.notWeighed(),
        alike,
        deciding(stages.get(stages.size() - 1), evidence));
  }

  /**
   * Faults that no observation tells apart.
   *
   * @param rows by observation
   * @param curedBy number of the first repair done that cured it, from 0
   * @param inVain by repair made in vain, whether it would have cured it
   */
  private record Rival(List<Integer> rows, int curedBy, List<Boolean> inVain) {}

  /** Every fault of the list by what each observation is under it, alone and with another. */
  private double[][] rivals(Joint joint, Likelihoods likelihoods, List<RepairAction> missed) {
    List<Integer> actions = suspects.numbers(missed);
    Set<Rival> kinds = new LinkedHashSet<>();
    for (Suspects.Hypothesis h : suspects.hypotheses()) {
      int[] curing = joint.curing(h);
      int first = curing.length == 0 ? Integer.MAX_VALUE : curing[0];
      kinds.add(
          new Rival(joint.rows(h), first, actions.stream().map(h.cures()::contains).toList()));
    }
    int size = likelihoods.weighed().size();
    double[][] rivals = new double[2 * kinds.size()][size + missed.size()];
    int rival = 0;
    for (Rival kind : kinds) {
      for (int i = 0; i < missed.size(); i++) {
        double log = kind.inVain.get(i) ? StrictMath.log(rates.repairFails()) : 0;
        rivals[rival][size + i] = log;
        rivals[rival + 1][size + i] = log;
      }
      for (int i = 0; i < size; i++) {
        int row = likelihoods.after(i) > kind.curedBy ? FaultDictionary.HEALTHY : kind.rows.get(i);
        rivals[rival][i] = joint.alone(i, row);
        rivals[rival + 1][i] = joint.besides(i, row);
      }
      rival += 2;
    }
    return rivals;
  }

  /** Observations first, then repairs made in vain. */
  private static List<Mismatch> mismatches(
      List<Integer> which,
      Likelihoods likelihoods,
      List<Map<String, String>> stages,
      List<RepairAction> missed) {
    int size = likelihoods.weighed().size();
    List<Mismatch> mismatches = new ArrayList<>();
    for (int i : which) {
      if (i < size) {
        Observation seen = likelihoods.weighed().get(i);
        mismatches.add(new Mismatch(seen, expected(seen, stages.get(seen.after()))));
      } else {
        String repair = missed.get(i - size).text();
        mismatches.add(new Mismatch(Observation.bench(repair, Route.NOT_CURED), Route.CURED));
      }
    }
    return mismatches;
  }

  /** What a board shows at the looks of an observation, each outcome once. */
  private static String expected(Observation observation, Map<String, String> shows) {
    return observation.looks().stream()
        .filter(shows::containsKey)
        .map(shows::get)
        .distinct()
        .limit(EXPECTED_SHOWN)
        .collect(Collectors.joining(" / "));
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
    Set<String> done = new LinkedHashSet<>(evidence.looksMade());
    List<String> looks = dictionary.looks();
    Optional<Deciding> best = Optional.empty();
    double bestScore = 0;
    for (int look = 0; look < looks.size(); look++) {
      String shown = shows.get(looks.get(look));
      if (shown == null || done.contains(looks.get(look))) {
        continue;
      }
      Price price = prices.look(looks.get(look));
      Optional<Integer> cell = dictionary.cellOf(look, shown);
      double worth = Math.max(price.total(), NOTHING);
      if (bits(about(look, cell, rest, sum)) / worth < bestScore - ROUNDING / worth) {
        continue;
      }
      double[] byCell = new double[dictionary.outcomes(look).size()];
      for (int row = 0; row < rest.length; row++) {
        byCell[dictionary.cell(look, row)] += rest[row];
      }
      double bits = bits(cell.map(c -> byCell[c]).orElse(0.0) / sum);
      double score = bits / worth;
      if (bits > NOTHING && score > bestScore) {
        bestScore = score;
        best =
            Optional.of(
                new Deciding(looks.get(look), price, bits, shown, likeliest(look, byCell, shown)));
      }
    }
    return best;
  }

  /**
   * In what share of the rest a look shows an outcome, but for roundings: summed from the rows that
   * do not show what the healthy board does.
   */
  private double about(int look, Optional<Integer> cell, double[] rest, double sum) {
    if (cell.isEmpty()) {
      return 0;
    }
    Cells cells = dictionary.cells();
    int column = dictionary.partition(look);
    boolean healthy = cell.get() == FaultDictionary.HEALTHY;
    double some = 0;
    for (int i = cells.from(column); i < cells.to(column); i++) {
      some += healthy || cells.cell(i) == cell.get() ? rest[cells.row(i)] : 0;
    }
    return Math.min(1, Math.max(0, healthy ? sum - some : some) / sum);
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
    boolean[] shown = shown(shows);
    for (int row = 0; row < rest.length; row++) {
      rest[row] = shown[row] ? 0 : rest[row];
    }
    return rest;
  }

  /** The rows that show the same in all these looks. */
  private boolean[] shown(Map<String, String> shows) {
    boolean[] shown = new boolean[dictionary.rows()];
    Arrays.fill(shown, true);
    Cells cells = dictionary.cells();
    List<String> looks = dictionary.looks();
    int[] asked = new int[dictionary.partitions()];
    Arrays.fill(asked, NOT_ASKED);
    for (int look = 0; look < looks.size(); look++) {
      String outcome = shows.get(looks.get(look));
      int column = dictionary.partition(look);
      int cell =
          outcome == null ? asked[column] : dictionary.cellOf(look, outcome).orElse(SHOWN_BY_NONE);
      if (cell == asked[column]) {
        continue;
      }
      asked[column] = cell;
      if (cell == FaultDictionary.HEALTHY) {
        for (int i = cells.from(column); i < cells.to(column); i++) {
          shown[cells.row(i)] = false;
        }
      } else {
        onlyOf(cell, column, shown);
      }
    }
    return shown;
  }

  /** Leaves the rows that show in a column what the healthy board does not. */
  private void onlyOf(int cell, int column, boolean[] shown) {
    Cells cells = dictionary.cells();
    boolean[] same = new boolean[shown.length];
    for (int i = cells.from(column); i < cells.to(column); i++) {
      same[cells.row(i)] = cells.cell(i) == cell;
    }
    for (int row = 0; row < shown.length; row++) {
      shown[row] &= same[row];
    }
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
