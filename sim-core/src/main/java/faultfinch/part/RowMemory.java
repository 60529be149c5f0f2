package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/**
 * A memory of single bits with a row strobed first: in a row phase it takes the row from its
 * address pins, and whether a column can follow, and stores nothing else; in the phases after it
 * drives or stores the one bit at that row and the column now on the same pins, or none. The
 * contract test holds it to that.
 */
public abstract class RowMemory extends Part {

  /** The bits it keeps; the column is the low part of the index. */
  public abstract State bits();

  /** The address pins. */
  public abstract Bus address();

  /** Whether the pins strobe a row. */
  public abstract boolean strobes(long in);

  /** Takes what its pins say of a row, as in a row phase, but strobes none. */
  public abstract void takeRow(Pins pins);

  /** A row is strobed now: what has run out in it is lost, and its clock begins anew. */
  public abstract void strobe(Pins pins, int row);

  /**
   * Notes that a row was strobed at a time, unless it has been since; called after a time without a
   * clock for it.
   */
  public abstract void strobed(Pins pins, int row, long nanoseconds);

  /** Nanoseconds that every cell keeps at least what it holds. */
  public abstract long keeps(Pins pins);

  /** Nanoseconds since power-on at which a row was last strobed, as far as has been noted. */
  public abstract long strobedAt(Pins pins, int row);

  /** Whether a cell without charge reads high. */
  public abstract boolean restsHigh(int cell);

  /** The cell that lies beside a cell, so that writing to it can disturb this one. */
  public abstract int beside(int cell);
}
