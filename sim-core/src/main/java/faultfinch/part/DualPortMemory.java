package faultfinch.part;

import faultfinch.signal.State;

/**
 * A memory that the processor reaches by registers, one for each cell, while others read it by pins
 * of their own. A write stores exactly what the data pins read in the cell that the register pins A
 * name, and nothing else; the contract test holds it to that.
 */
public interface DualPortMemory {

  /** The cells; what one holds is no wider than the data pins. */
  State array();
}
