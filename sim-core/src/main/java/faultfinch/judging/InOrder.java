package faultfinch.judging;

import faultfinch.fault.RepairAction;
import java.util.List;

/** Makes repairs in an order that is fixed beforehand, and looks at nothing. */
record InOrder(List<RepairAction> order) implements Practice {
  InOrder {
    order = List.copyOf(order);
  }

  @Override
  public void go(Visit visit) {
    for (RepairAction action : order) {
      if (!visit.made().contains(action) && visit.repair(action)) {
        return;
      }
    }
  }
}
