package faultfinch.judging;

import faultfinch.diagnosis.Outlook;
import faultfinch.diagnosis.Planner;
import java.util.function.Function;

/**
 * What was taken for something that the list does not hold may be a fault of the list and a wrong
 * reading. So all that was told, seen and tried is weighed anew with less trust in each, and for a
 * few steps the advice is followed that comes of it.
 *
 * @param outlook of a visit as it stands, doubting what was read and not the list
 */
record SecondThoughts(Function<Visit, Outlook> outlook, Planner planner) implements Practice {
  private static final Advised.Patience PATIENCE = new Advised.Patience(14, 3);

  @Override
  public void go(Visit visit) {
    new Advised(c -> outlook.apply(visit), planner, PATIENCE).go(visit);
  }
}
