package faultfinch.judging;

import faultfinch.bench.Price;
import faultfinch.diagnosis.Belief;
import faultfinch.diagnosis.Diagnosis;
import faultfinch.diagnosis.Due;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.PriceList;
import faultfinch.diagnosis.Step;
import faultfinch.diagnosis.Whereabouts;
import faultfinch.fault.RepairAction;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * One board followed as a technician would who keeps its job at the desk: each look is entered,
 * each repair is done and checked, what the check shows is entered as seen after it, and the next
 * step is that of the answer. Where the answer is that it is none of the list, what is close to
 * what fits best is repaired, a few times: what it changes tells more. It ends when the retest is
 * passed, or when the desk knows no further.
 */
final class DeskJob {
  /** From this belief on that it is none of the list the job is given up. */
  private static final double NONE_OF_THE_LIST = 0.9;

  private static final int LAST_TRIES = 12;
  private static final int MOST_STEPS = 80;

  private final Diagnosis diagnosis;
  private final Signs signs;
  private final PriceList prices;
  private final Price retest;
  private final Whereabouts whereabouts;

  /** What came of it. */
  record Ended(boolean passed, Price price, int innocent, int steps) {}

  /** A board on the bench. */
  interface Sick {
    /** What a look shows now, as the dictionary names it. */
    String shows(String look);

    /** Makes a repair; whether it cured anything. */
    boolean repair(RepairAction action);
  }

  DeskJob(
      Diagnosis diagnosis, Signs signs, PriceList prices, Price retest, Whereabouts whereabouts) {
    this.diagnosis = diagnosis;
    this.signs = signs;
    this.prices = prices;
    this.retest = retest;
    this.whereabouts = whereabouts;
  }

  Ended follow(Sick board) {
    UnaryOperator<String> shows = board::shows;
    Optional<Complaint> complaint = signs.complaint(shows);
    if (complaint.isEmpty()) {
      return new Ended(true, retest, 0, 0);
    }
    Evidence evidence = complaint.get().evidence();
    Price price = Price.NOTHING;
    int innocent = 0;
    int tries = 0;
    for (int step = 1; step <= MOST_STEPS; step++) {
      Belief belief = diagnosis.belief(evidence);
      boolean lost = belief.outside() >= NONE_OF_THE_LIST;
      List<Due> nearby =
          lost
              ? diagnosis.nearby(evidence, whereabouts, diagnosis.suspects().repairs())
              : List.of();
      if (lost && (tries++ == LAST_TRIES || nearby.isEmpty())) {
        return new Ended(false, price, innocent, step);
      }
      Step next =
          lost
              ? new Step.Act(nearby.get(0).action())
              : diagnosis.next(evidence, belief, 1, whereabouts).best().step();
      if (next instanceof Step.Observe look) {
        price = price.plus(prices.look(look.look()));
        evidence = evidence.and(seen(look.look(), shows, evidence));
      } else {
        RepairAction action = ((Step.Act) next).action();
        Price cost = prices.repair(action);
        price = price.plus(cost);
        innocent += board.repair(action) ? 0 : cost.pulls();
        evidence = evidence.andDone(action);
        for (String look : signs.check()) {
          evidence = evidence.and(seen(look, shows, evidence));
        }
        if (signs.check().stream().noneMatch(look -> signs.isWrong(look, shows))) {
          price = price.plus(retest);
          Optional<String> failed =
              signs.retest().stream().filter(look -> signs.isWrong(look, shows)).findFirst();
          if (failed.isEmpty()) {
            return new Ended(true, price, innocent, step);
          }
          evidence = evidence.and(seen(failed.get(), shows, evidence));
        }
      }
    }
    return new Ended(false, price, innocent, MOST_STEPS);
  }

  private static Observation seen(String look, UnaryOperator<String> shows, Evidence evidence) {
    return Observation.bench(look, shows.apply(look)).afterRepairs(evidence.done().size());
  }
}
