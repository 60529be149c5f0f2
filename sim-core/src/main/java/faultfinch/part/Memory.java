package faultfinch.part;

import faultfinch.signal.State;

/**
 * A byte-wide memory. When it drives its data pins it drives exactly the one cell it looked up, and
 * when it stores it stores exactly what its data pins read; the contract test holds it to that.
 */
public abstract class Memory extends Part {

  /** The bytes it keeps. */
  public abstract State array();
}
