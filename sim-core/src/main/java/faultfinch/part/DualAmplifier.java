package faultfinch.part;

import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/**
 * Two operational amplifiers on 12 V: the first works as a filter inside a loop of resistors and
 * capacitors, the second bare, as a comparator.
 *
 * <p>The filter's sound is worked out by who listens. What a net carries from phase to phase is the
 * level its output rests at, which the loop holds equal to the level at IN1.
 */
public final class DualAmplifier extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  OUT1 <-|1       8|--  V+
  INV1 ->|2       7|->  OUT2
  IN1  ->|3       6|<-  INV2
  GND  --|4       5|<-  IN2
         +---------+
  NMOS; level IN INV; supply V+; ground GND; OUT1 drives analogue; OUT2 drives amplifier;
  OUT1 follows IN1; OUT2 follows IN2 INV2
  Not modelled: a rest level of the filter other than 2.5 V or none, a filter whose loop is open at
  rest, offset, slew rate, its own bandwidth, what the output cannot reach.""");

  /** Below this the loop cannot hold the output off the ground. */
  private static final int LIVE_MILLIVOLTS = 1000;

  private static final long OUT1 = PINOUT.pin("OUT1");
  private static final long IN1 = PINOUT.pin("IN1");
  private static final long OUT2 = PINOUT.pin("OUT2");
  private static final long IN2 = PINOUT.pin("IN2");
  private static final long INV2 = PINOUT.pin("INV2");

  @Override
  public void settle(Pins pins) {
    pins.drive(OUT1, pins.millivolts(IN1) >= LIVE_MILLIVOLTS);
    pins.drive(OUT2, pins.millivolts(IN2) > pins.millivolts(INV2));
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
