package faultfinch.diagnosis;

import faultfinch.fault.Fault;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

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
   * The same, look by look, for those who ask for a few: what a look shows, or nothing for one that
   * is not known. Not for several threads at once.
   */
  default UnaryOperator<String> shown(List<Fault> faults, long boardSeed) {
    Map<String, String> shows = row(faults, boardSeed).shows();
    return look -> shows.getOrDefault(look, "");
  }

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
