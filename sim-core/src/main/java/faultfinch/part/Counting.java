package faultfinch.part;

import faultfinch.signal.Pins;

/**
 * A part that takes one step where its clock pin rises and depends on nothing else that moves by
 * itself, so that many steps can be taken at once. The contract test holds the jump to the steps.
 */
public interface Counting {

  /**
   * Takes steps, as many as asked, or fewer if one of the watched outputs moves: then it stops
   * after the step that moved it.
   *
   * @param steps how many, 0 or more
   * @param watched output pins
   * @return the steps taken
   */
  long advance(Pins pins, long steps, long watched);

  /**
   * The stored words on which the addresses it shows in this and all later steps depend, while its
   * registers stay.
   */
  long[] addressing(Pins pins);

  /** Of its registers what the addresses in this and all later steps depend on. */
  long[] steering(Pins pins);

  /**
   * What is stored of that on which all that it shows in this and all later steps depends, while
   * its registers stay; an interrupt is left out, and what its registers are read as.
   */
  long[] picturing(Pins pins);
}
