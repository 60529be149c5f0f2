package faultfinch.judging;

import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.Sight;
import faultfinch.diagnosis.Tally;
import java.util.ArrayList;
import java.util.List;

/**
 * With what a board comes to the bench.
 *
 * @param told what the owner says of it, in the order he looked
 * @param retest of a board of which the owner says nothing wrong: what may have failed in the
 *     retest, look by look; else empty
 */
public record Complaint(List<Told> told, List<Sight> retest) {

  /** One thing the owner says. */
  public record Told(String look, String outcome) {}

  public Complaint {
    told = List.copyOf(told);
    retest = List.copyOf(retest);
  }

  /** The same as evidence. */
  public Evidence evidence() {
    List<Observation> seen = new ArrayList<>();
    told.forEach(t -> seen.add(Observation.told(t.look(), t.outcome())));
    if (!retest.isEmpty()) {
      seen.add(
          new Observation(
              "retest all",
              "not passed",
              Observation.Source.BENCH,
              Observation.Doubt.SURE,
              new Observation.Reach(retest, false, Tally.ONCE),
              0));
    }
    return new Evidence(seen, List.of());
  }
}
