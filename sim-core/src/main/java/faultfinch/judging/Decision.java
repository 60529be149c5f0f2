package faultfinch.judging;

import faultfinch.diagnosis.Step;
import faultfinch.fault.RepairAction;
import java.util.List;

/**
 * What is done at one point of the way.
 *
 * @param due repairs that may be due, likeliest first; empty at a look
 * @param cureChance what a repair is given of helping; 0 at a look
 */
record Decision(Step step, List<RepairAction> due, double cureChance) {
  Decision {
    due = List.copyOf(due);
  }
}
