package faultfinch.diagnosis;

import faultfinch.fault.Fault;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * One run for faults that do the same on every pin. Whether they do is told by the wiring, not by
 * the group alone: a cut on the way of the supply may leave another way, so that a board which is
 * not supplied as the first one is run by itself.
 */
final class Twins {
  private Twins() {}

  /**
   * The rows of a group of faults.
   *
   * @param setup of a board with one fault
   * @param run plays it
   */
  static List<Row> rows(List<Fault> alike, Function<Fault, Setup> setup, Function<Fault, Row> run) {
    Fault first = alike.get(0);
    List<Row> rows = new ArrayList<>(List.of(run.apply(first)));
    if (alike.size() > 1) {
      Machine leader = standing(setup.apply(first));
      for (Fault fault : alike.subList(1, alike.size())) {
        boolean same = standing(setup.apply(fault)).doublesFor(leader);
        rows.add(same ? rows.get(0) : run.apply(fault));
      }
    }
    return List.copyOf(rows);
  }

  /** Switched on and not played. */
  private static Machine standing(Setup setup) {
    return new Machine(setup, Machine.Kind.PLAIN);
  }
}
