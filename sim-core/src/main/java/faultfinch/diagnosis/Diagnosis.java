package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** All that can be asked about one kind of board: belief, verdict, next step, best route. */
public final class Diagnosis {
  private final FaultDictionary dictionary;
  private final Suspects suspects;
  private final ErrorRates rates;
  private final PriceList prices;
  private final PricePlanner planner;

  /**
   * With a planner of one's own, or of other effort.
   *
   * @throws IllegalArgumentException if the dictionary lacks a suspect
   */
  public Diagnosis(
      FaultDictionary dictionary,
      Suspects suspects,
      ErrorRates rates,
      PriceList prices,
      PricePlanner planner) {
    suspects.all().forEach(s -> dictionary.row(s.fault()));
    this.dictionary = dictionary;
    this.suspects = suspects;
    this.rates = rates;
    this.prices = prices;
    this.planner = planner;
  }

  /** With the figures and the effort that are shipped. */
  public static Diagnosis of(FaultDictionary dictionary, Suspects suspects, PriceList prices) {
    return new Diagnosis(dictionary, suspects, ErrorRates.shipped(), prices, new PricePlanner());
  }

  /** The same for real boards, of which the fault list holds less. */
  public static Diagnosis atTheDesk(
      FaultDictionary dictionary, Suspects suspects, PriceList prices) {
    return new Diagnosis(dictionary, suspects, ErrorRates.desk(), prices, new PricePlanner());
  }

  /** All faults that can be the one, with their cures. */
  public Suspects suspects() {
    return suspects;
  }

  /** How much of what can be wrong the looks show, by tier. */
  public List<Coverage> coverage() {
    return Coverage.of(dictionary, suspects, rates);
  }

  /** Share of the faults that change anything at all; see {@link Coverage#excited}. */
  public OptionalDouble excited() {
    return Coverage.excited(dictionary, suspects);
  }

  /** How likely each fault is now. */
  public Belief belief(Evidence evidence) {
    return new Belief(dictionary, suspects, rates, evidence);
  }

  /** What was seen, held against one fault at the usual odds. */
  public Verdict weigh(String fault, Evidence evidence) {
    return weigh(fault, evidence, Contradiction.ODDS);
  }

  /**
   * What was seen, held against one fault.
   *
   * @param odds against it from which it is contradicted, above 1
   */
  public Verdict weigh(String fault, Evidence evidence, double odds) {
    return new Weigher(dictionary, suspects, rates, prices).weigh(fault, evidence, odds);
  }

  /** What was seen, held against anything that was run, at the usual odds. */
  public Verdict weigh(
      String hypothesis,
      List<Map<String, String>> stages,
      Predicate<RepairAction> cures,
      Evidence evidence) {
    return weigh(hypothesis, stages, cures, evidence, Contradiction.ODDS);
  }

  /**
   * What was seen, held against anything that was run, such as two faults at once.
   *
   * @param stages outcome by look, before the first repair and after each
   * @param cures whether a repair would have cured all of it
   */
  public Verdict weigh(
      String hypothesis,
      List<Map<String, String>> stages,
      Predicate<RepairAction> cures,
      Evidence evidence,
      double odds) {
    return new Weigher(dictionary, suspects, rates, prices)
        .weigh(hypothesis, stages, cures, evidence, odds);
  }

  /** Pairs worth a run after this evidence, and what they count once they were run. */
  public PairSearch pairs(Evidence evidence) {
    return new PairSearch(dictionary, suspects, rates, evidence);
  }

  /**
   * The next steps.
   *
   * @param most proposals, 1 or more
   */
  public Advice next(Evidence evidence, int most) {
    return next(evidence, belief(evidence), most);
  }

  /**
   * The same for whoever knows the belief already.
   *
   * @param belief after this evidence
   */
  public Advice next(Evidence evidence, Belief belief, int most) {
    return next(evidence, belief, most, Whereabouts.UNKNOWN);
  }

  /** The same, with one proposal for each net of the board, and counting its custom parts. */
  public Advice next(Evidence evidence, Belief belief, int most, Whereabouts whereabouts) {
    Field field = Field.of(dictionary, suspects, prices, evidence, belief.weights());
    return new Advisor(planner, whereabouts).advise(field, belief.outside(), most);
  }

  /**
   * What to try where the fault is none of the list: repairs that were not made yet, at and near
   * what in the list shows most of what was seen, by chance for price.
   *
   * @param possible repairs that can be made, also those that no fault of the list needs
   */
  public List<Due> nearby(Evidence evidence, Whereabouts whereabouts, Set<RepairAction> possible) {
    return new Nearby(dictionary, suspects, rates, prices, whereabouts, evidence, possible)
        .repairs();
  }

  /**
   * The best way to a fault for somebody who does not know it, after evidence that agrees with it.
   * Where an action cures it half of the time, this time it does not.
   */
  public Route route(String fault, Evidence evidence) {
    Suspect truth = suspects.of(fault);
    return route(
        look -> dictionary.outcome(dictionary.look(look).orElseThrow(), dictionary.row(fault)),
        action -> truth.cures().getOrDefault(action, 0) == 100,
        evidence);
  }

  /**
   * The same for any board, such as one with two faults.
   *
   * @param shows what a look shows
   * @param cures whether a repair cures it
   */
  public Route route(
      UnaryOperator<String> shows, Predicate<RepairAction> cures, Evidence evidence) {
    return Route.of(planner, Field.strict(dictionary, suspects, prices, evidence), shows, cures);
  }
}
