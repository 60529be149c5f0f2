package faultfinch.bench;

import faultfinch.board.Board;
import faultfinch.fault.Fault;
import java.util.List;

/**
 * A board that comes to a bench.
 *
 * @param faults what is truly wrong with it
 * @param seed of everything that chance decides on this job
 */
public record Job(Board board, List<Fault> faults, long seed, Intake intake, Prices prices) {
  public Job {
    faults = List.copyOf(faults);
  }
}
