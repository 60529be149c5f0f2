package faultfinch.cli;

import faultfinch.diagnosis.RowSource;
import faultfinch.fault.Fault;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** What faults that are not in a dictionary show: run here and now, again after each cure. */
final class Reruns {
  private static final long THE_BOARD = 1;

  private Reruns() {}

  /** Outcome by look, before the first repair and after each. */
  static List<Map<String, String>> of(List<Fault> faults, List<RepairAction> done, RowSource rows) {
    List<Map<String, String>> stages = new ArrayList<>();
    List<Fault> left = faults;
    stages.add(rows.row(left, THE_BOARD).shows());
    for (RepairAction action : done) {
      List<Fault> now = left.stream().filter(f -> !action.cures(f)).toList();
      Map<String, String> before = stages.get(stages.size() - 1);
      stages.add(now.size() == left.size() ? before : rows.row(now, THE_BOARD).shows());
      left = now;
    }
    return stages;
  }

  /** Repairs that cure all of some faults. */
  static Predicate<RepairAction> curing(List<Fault> faults) {
    return action -> faults.stream().allMatch(action::cures);
  }
}
