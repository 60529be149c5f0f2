package faultfinch.part;

import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/** A crystal in a can with its amplifier; the machine turns its level to find the clock rates. */
public final class Oscillator extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
        +-------+
  NC  --|1     8|--  VCC
  GND --|4     5|->  OUT
        +-------+
  LS; unconnected NC; supply VCC; ground GND; OUT drives LS gate
  Not modelled: drift with temperature, start-up time.""");

  /** The level it puts out at this moment. */
  public static final State TURN = PINOUT.state("turn", 1);

  private static final long OUT = PINOUT.pin("OUT");

  @Override
  public void settle(Pins pins) {
    pins.drive(OUT, pins.state(TURN) != 0);
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
