package faultfinch.diagnosis;

import faultfinch.fault.Fault;
import java.util.List;

/** Where a signature comes from: what each look shows on a board with given faults. */
@FunctionalInterface
public interface RowSource {

  /**
   * What a run shows. Every call knows the same looks; equal calls give equal rows; several threads
   * may call at once.
   *
   * @param faults none for a healthy board
   * @param boardSeed which of many boards of the kind it is
   */
  Row row(List<Fault> faults, long boardSeed);

  /**
   * The rows of single faults of which one run can stand for all, in their order. They are those
   * that each by itself would have; a source that knows a shorter way takes it here.
   *
   * @param alike one group of {@link faultfinch.fault.FaultUniverse#groups}
   */
  default List<Row> rows(List<Fault> alike, long boardSeed) {
    return alike.stream().map(fault -> row(List.of(fault), boardSeed)).toList();
  }
}
