package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/**
 * A memory of single bits with a row strobed first: in a row phase it takes the row from its
 * address pins and stores nothing else, in the phases after it drives or stores the one bit at that
 * row and the column now on the same pins. The contract test holds it to that.
 */
public interface RowMemory extends Part {

  /** The bits it keeps; the column is the low part of the index. */
  State bits();

  /** The address pins. */
  Bus address();

  /** Nanoseconds that no cell of this one forgets in. */
  long surelyKeeps(Pins pins);

  /** Whether the pins strobe a row. */
  boolean strobes(long in);

  /** Whether a cell without charge reads high. */
  boolean restsHigh(int cell);

  /** Notes that a row has been strobed just now; called after a time without a clock for it. */
  void strobed(Pins pins, int row);
}
