package faultfinch.diagnosis;

import faultfinch.bench.Price;
import faultfinch.fault.RepairAction;

/** What looks and repairs cost. A repair's price holds the check whether it helped. */
public interface PriceList {

  /** Price of a look, by its text. */
  Price look(String look);

  /** Price of a repair, its check included. */
  Price repair(RepairAction action);
}
