package faultfinch.judging;

import faultfinch.diagnosis.Due;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.Step;
import faultfinch.fault.RepairAction;
import java.util.List;
import java.util.function.Function;

/**
 * Repairs close to what fits best, a few of them, where the list is no guide; see {@link
 * faultfinch.diagnosis.Diagnosis#nearby}.
 *
 * @param nearby what to try after all that was seen and tried, first things first
 */
record CloseBy(Function<Evidence, List<Due>> nearby) implements Practice {
  private static final int TRIES = 12;

  @Override
  public void go(Visit visit) {
    for (int i = 0; i < TRIES; i++) {
      List<Due> left = nearby.apply(visit.evidence());
      if (left.isEmpty()) {
        return;
      }
      Due best = left.get(0);
      List<RepairAction> due = Advised.kept(left.stream());
      visit.believes(best.action(), new Decision(new Step.Act(best.action()), due, best.belief()));
      if (visit.repair(best.action())) {
        return;
      }
    }
  }
}
