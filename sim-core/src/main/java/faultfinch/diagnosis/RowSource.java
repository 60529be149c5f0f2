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
}
