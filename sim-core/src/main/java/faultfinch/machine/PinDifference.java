package faultfinch.machine;

import faultfinch.board.Pad;
import faultfinch.signal.Level;

/**
 * A pin that is not, in one settled phase, as it is on the other board.
 *
 * @param expected the level of its net on the healthy board
 * @param had the level it has
 * @param bit whether the part behind it reads another bit, and reads this pin at all
 * @param one the bit it reads
 */
public record PinDifference(
    Pad pad, Level expected, int expectedMv, Level had, int hadMv, boolean bit, boolean one) {

  /** Whether the net stands at another level. */
  public boolean level() {
    return expected != had;
  }
}
