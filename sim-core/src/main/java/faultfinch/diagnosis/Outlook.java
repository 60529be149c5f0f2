package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What somebody who follows the advice believes as a job goes on, and does next. It never changes:
 * each look and each repair in vain makes another one.
 */
public sealed interface Outlook permits TakenAtWord, Weighed {

  /** Whether nothing is left: the fault is none of the list. */
  boolean isEmpty();

  /** The next step; there must be something left. */
  Choice choose(Planner planner);

  /** After a look. */
  Outlook seen(String look, String outcome);

  /** After a repair that did not help. */
  Outlook missed(RepairAction action);

  /** Repairs that may be due, likeliest first; those as likely in the order of the list. */
  List<Due> due();

  /** Chance that a repair helps, 0 to 1. */
  double cureChance(RepairAction action);

  /** Belief that the fault is none of the list, 0 to 1. */
  double outside();

  /** Of somebody who takes what is seen and told at its word, and knows of one fault only. */
  static Outlook atItsWord(
      FaultDictionary dictionary, Suspects suspects, PriceList prices, Evidence evidence) {
    return new TakenAtWord(Field.strict(dictionary, suspects, prices, evidence));
  }

  /** Of somebody who weighs what is seen and told as the desk does. */
  static Outlook weighed(
      FaultDictionary dictionary,
      Suspects suspects,
      ErrorRates rates,
      PriceList prices,
      Evidence evidence) {
    return Weighed.of(new Weighed.Terms(dictionary, suspects, rates, prices), evidence);
  }

  /** Sums by action, likeliest first. */
  static List<Due> ranked(List<Due> parts) {
    Map<RepairAction, Double> sums = new LinkedHashMap<>();
    parts.forEach(d -> sums.merge(d.action(), d.belief(), Double::sum));
    return sums.entrySet().stream()
        .map(e -> new Due(e.getKey(), e.getValue()))
        .sorted(Comparator.comparingDouble(Due::belief).reversed())
        .toList();
  }
}
