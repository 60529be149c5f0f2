package faultfinch.judging;

import faultfinch.bench.Price;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.PriceList;
import faultfinch.fault.RepairAction;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A board on the bench: it answers looks and repairs, and the bill grows. */
final class Visit {
  private final Job job;
  private final Readings readings;
  private final PriceList prices;
  private final Map<String, String> seen = new LinkedHashMap<>();
  private final Set<RepairAction> made = new LinkedHashSet<>();
  private Price price = Price.NOTHING;
  private int innocent;
  private int looks;
  private int repairs;
  private boolean cured;
  private Optional<Bill.FirstAct> first = Optional.empty();

  Visit(Job job, Readings readings, PriceList prices) {
    this.job = job;
    this.readings = readings;
    this.prices = prices;
  }

  Job job() {
    return job;
  }

  /** What the owner says. */
  Complaint complaint() {
    return readings.complaint(job);
  }

  /** Makes a look. */
  String look(String look) {
    price = price.plus(prices.look(look));
    looks++;
    return seen.computeIfAbsent(look, l -> readings.shows(job, l));
  }

  /** All that was looked at, with what it showed. */
  Map<String, String> seen() {
    return seen;
  }

  /** All that was told, seen and repaired in vain. */
  Evidence evidence() {
    Evidence evidence = complaint().evidence();
    for (Map.Entry<String, String> look : seen.entrySet()) {
      evidence = evidence.and(Observation.bench(look.getKey(), look.getValue()));
    }
    for (RepairAction action : made) {
      evidence = evidence.andMissed(action);
    }
    return evidence;
  }

  /** Makes a repair; whether it cured. */
  boolean repair(RepairAction action) {
    Price cost = prices.repair(action);
    price = price.plus(cost);
    repairs++;
    made.add(action);
    cured = job.truth().curedBy(action);
    innocent += cured ? 0 : cost.pulls();
    return cured;
  }

  /** Notes what is believed of a repair that is about to be made; only the first counts. */
  void believes(RepairAction action, Decision decision) {
    if (first.isEmpty() && repairs == 0) {
      first =
          Optional.of(
              new Bill.FirstAct(
                  decision.cureChance(), job.truth().curedBy(action), place(decision.due())));
    }
  }

  /** Of several repairs that cost alike and cure it each is the one that is due; 0 if none is. */
  private int place(List<RepairAction> list) {
    double least = prices.repair(job.truth().due(prices)).total();
    for (int i = 0; i < list.size(); i++) {
      RepairAction action = list.get(i);
      if (job.truth().curedBy(action) && prices.repair(action).total() <= least) {
        return i + 1;
      }
    }
    return 0;
  }

  boolean cured() {
    return cured;
  }

  /** Repairs made so far. */
  Set<RepairAction> made() {
    return made;
  }

  /** The bill of a board that is cured. */
  Bill bill(Price retest) {
    if (!cured) {
      throw new IllegalStateException(
          "found '" + job.truth().suspect().fault() + "' not cured, right would be cured");
    }
    return new Bill(price.plus(retest), innocent, looks, repairs, first);
  }
}
