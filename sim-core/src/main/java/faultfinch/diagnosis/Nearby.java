package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What to try where the fault is none of the list. Such a fault has its likeness in the list: one
 * that shows much the same and is close by, so that another repair of the same part or at the same
 * net cures it. Repairs in vain are out, but what they should have cured still tells the place.
 */
final class Nearby {
  /** Likenesses that count for less than this share are not gone into. */
  private static final double NOTHING = 1e-4;

  private static final double SURE = 100;

  private final FaultDictionary dictionary;
  private final Suspects suspects;
  private final ErrorRates rates;
  private final PriceList prices;
  private final Whereabouts whereabouts;
  private final Evidence evidence;
  private final Set<RepairAction> possible;

  /**
   * After this evidence; what became of the board before makes some suspects likelier.
   *
   * @param possible repairs that can be made, also those no suspect needs
   */
  Nearby(
      FaultDictionary dictionary,
      Suspects suspects,
      ErrorRates rates,
      PriceList prices,
      Whereabouts whereabouts,
      Evidence evidence,
      Set<RepairAction> possible) {
    this.dictionary = dictionary;
    this.suspects = History.after(evidence.histories(), suspects, rates);
    this.rates = rates;
    this.prices = prices;
    this.whereabouts = whereabouts;
    this.evidence = evidence;
    this.possible = possible;
  }

  /**
   * Repairs that were not made yet in the order to try them in, by chance for price, each with its
   * chance; together they are 1.
   */
  List<Due> repairs() {
    Map<RepairAction, Double> chances = chances(places(likenesses()));
    chances.keySet().removeAll(evidence.missed());
    chances.keySet().removeAll(evidence.done());
    double all = chances.values().stream().mapToDouble(Double::doubleValue).sum();
    return chances.entrySet().stream()
        .map(e -> new Due(e.getKey(), e.getValue() / all))
        .sorted(
            Comparator.comparingDouble((Due d) -> d.belief() / prices.repair(d.action()).total())
                .reversed())
        .toList();
  }

  /** How far each row is the likeness of what is on the bench, 0 to 1; the best one is 1. */
  private double[] likenesses() {
    Likelihoods seen = new Likelihoods(dictionary, rates, evidence.asItIsNow());
    double[] weightOfRow = suspects.weightOfRow(dictionary);
    double[] logs = new double[weightOfRow.length];
    double unlike = rates.unlike();
    Unheard unheard = new Unheard(dictionary, rates);
    for (int i = 0; i < seen.weighed().size(); i++) {
      double share = 0;
      double[] alike = alike(seen, i, weightOfRow, unheard);
      for (int row = 0; row < logs.length; row++) {
        share += alike[row] * weightOfRow[row];
      }
      double other = unlike * Outside.smoothed(share, logs.length);
      for (int row = 0; row < logs.length; row++) {
        logs[row] += StrictMath.log((1 - unlike) * alike[row] + other);
      }
    }
    double best = Arrays.stream(logs).max().orElse(0);
    return Arrays.stream(logs).map(log -> StrictMath.exp(log - best)).toArray();
  }

  /**
   * How far each row shows what was seen, 0 to 1; if none of the list does, how much its outcome
   * has in common with it, or whether it is as odd.
   */
  private static double[] alike(Likelihoods seen, int i, double[] weightOfRow, Unheard unheard) {
    Optional<double[]> factors = unheard.factors(seen.weighed().get(i), weightOfRow);
    if (factors.isPresent()) {
      double best = Arrays.stream(factors.get()).max().orElse(0);
      return Arrays.stream(factors.get()).map(f -> StrictMath.exp(f - best)).toArray();
    }
    double[] alike = new double[weightOfRow.length];
    boolean heard = false;
    for (int row = 0; row < alike.length; row++) {
      alike[row] = seen.shows(i, row) ? 1 : 0;
      heard |= alike[row] > 0 && weightOfRow[row] > 0;
    }
    for (int row = 0; row < alike.length && !heard; row++) {
      alike[row] = seen.differs(i, row) ? 1 : 0;
    }
    return alike;
  }

  /** By the least repair: all that one cures is cured by the same others too. */
  private Map<RepairAction, Double> places(double[] likenesses) {
    Map<RepairAction, Double> sums = new LinkedHashMap<>();
    double all = 0;
    for (Suspect suspect : suspects.all()) {
      double weight = suspect.weight() * likenesses[dictionary.row(suspect.fault())];
      sums.merge(suspect.repair(), weight, Double::sum);
      all += weight;
    }
    double least = all * NOTHING;
    sums.values().removeIf(weight -> weight < least);
    return sums;
  }

  /** Chance in per cent of all that cures what a least repair cures, by that repair. */
  private Map<RepairAction, Map<RepairAction, Integer>> cures() {
    Map<RepairAction, Map<RepairAction, Integer>> cures = new HashMap<>();
    suspects.all().forEach(s -> cures.putIfAbsent(s.repair(), s.cures()));
    return cures;
  }

  private Map<RepairAction, Double> chances(Map<RepairAction, Double> places) {
    Map<RepairAction, Double> usual = usual();
    Map<RepairAction, Map<RepairAction, Integer>> cures = cures();
    Map<RepairAction, Double> chances = new LinkedHashMap<>();
    places.forEach(
        (place, weight) -> {
          cures
              .get(place)
              .forEach(
                  (action, chance) -> chances.merge(action, weight * chance / SURE, Double::sum));
          Map<RepairAction, Double> part = new LinkedHashMap<>();
          Map<RepairAction, Double> net = new LinkedHashMap<>();
          usual.forEach(
              (action, often) -> {
                if (whereabouts.samePart(action, place)) {
                  part.put(action, often);
                } else if (whereabouts.sameNet(action, place)) {
                  net.put(action, often);
                }
              });
          spread(weight * rates.samePart(), part, chances);
          spread(weight * rates.sameNet(), net, chances);
        });
    double all = places.values().stream().mapToDouble(Double::doubleValue).sum();
    told()
        .forEach(
            (part, share) -> {
              Map<RepairAction, Double> at = new LinkedHashMap<>(usual);
              at.keySet().removeIf(action -> !whereabouts.at(action, part));
              spread(all * share, at, chances);
            });
    return chances;
  }

  /** Parts that looks by hand name themselves, with their shares of 1. */
  private Map<String, Double> told() {
    Map<String, Double> told = new LinkedHashMap<>();
    for (Observation observation : evidence.asItIsNow().seen()) {
      List<String> outcomes = observation.reach().sights().get(0).outcomes();
      OptionalInt look = dictionary.look(observation.look());
      if (look.isPresent() && outcomes.size() == 1) {
        String usual = dictionary.outcomes(look.getAsInt()).get(FaultDictionary.HEALTHY);
        whereabouts
            .otherwise(observation.look(), usual, outcomes.get(0))
            .forEach((part, times) -> told.merge(part, (double) times, Double::sum));
      }
    }
    double all = told.values().stream().mapToDouble(Double::doubleValue).sum();
    told.replaceAll((part, times) -> times / all);
    return told;
  }

  /**
   * How often each repair is due among all faults; one that none of the list needs, as its like.
   */
  private Map<RepairAction, Double> usual() {
    Map<RepairAction, Double> usual = new LinkedHashMap<>();
    suspects.all().forEach(s -> usual.merge(s.repair(), s.weight(), Double::sum));
    Map<RepairAction.Kind, Double> ofKind =
        usual.entrySet().stream()
            .collect(
                Collectors.groupingBy(
                    e -> e.getKey().kind(), Collectors.averagingDouble(Map.Entry::getValue)));
    possible.stream()
        .filter(r -> ofKind.containsKey(r.kind()))
        .forEach(r -> usual.putIfAbsent(r, ofKind.get(r.kind())));
    return usual;
  }

  private static void spread(
      double weight, Map<RepairAction, Double> over, Map<RepairAction, Double> chances) {
    double all = over.values().stream().mapToDouble(Double::doubleValue).sum();
    over.forEach((action, often) -> chances.merge(action, weight * often / all, Double::sum));
  }
}
