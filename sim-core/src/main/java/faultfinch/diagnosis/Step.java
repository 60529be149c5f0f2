package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;

/** One thing to do next on a board. */
public sealed interface Step {

  /** In words. */
  String text();

  /** Look at something. */
  record Observe(String look) implements Step {
    @Override
    public String text() {
      return look;
    }
  }

  /** Repair something and check whether it helped. */
  record Act(RepairAction action) implements Step {
    @Override
    public String text() {
      return action.text();
    }
  }
}
