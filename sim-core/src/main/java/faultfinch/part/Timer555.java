package faultfinch.part;

import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/**
 * The reset timer: OUT is high from power-on until the timing capacitor has charged, and again
 * while TRIG is low and as long after it: a key across the capacitor empties it.
 */
public final class Timer555 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
          +----v----+
  GND   --|1       8|--  VCC
  TRIG  ->|2       7|->  DIS
  OUT   <-|3       6|<-  THR
  RES/  ->|4       5|--  CV
          +---------+
  NMOS; input TRIG THR RES/; terminal CV; supply VCC; ground GND;
  OUT drives LS buffer; DIS drives LS buffer open collector; OUT follows RES/; DIS follows RES/
  Not modelled: discharge through DIS (TRIG low starts anew from 0 V), the control voltage pin.""");

  private static final State DONE = PINOUT.state("done", 1);
  private static final State EMPTY = PINOUT.state("empty", 1);
  private static final State SINCE = PINOUT.state("since", 63);
  private static final long TRIG = PINOUT.pin("TRIG");
  private static final long THR = PINOUT.pin("THR");
  private static final long RES = PINOUT.pin("RES/");
  private static final long OUT = PINOUT.pin("OUT");
  private static final long DIS = PINOUT.pin("DIS");

  @Override
  public void settle(Pins pins) {
    boolean timing = pins.state(DONE) == 0 && pins.high(RES);
    pins.drive(OUT, timing);
    pins.drive(DIS, timing);
  }

  @Override
  public void commit(Pins pins, Phase phase) {
    if (pins.low(TRIG)) {
      if (pins.state(EMPTY) == 0) {
        pins.hold(EMPTY, 1);
        pins.hold(DONE, 0);
      }
    } else if (pins.state(EMPTY) != 0) {
      pins.hold(EMPTY, 0);
      pins.hold(SINCE, pins.nanoseconds());
    } else if (pins.state(DONE) == 0 && pins.high(THR) && pins.nanoseconds() >= ends(pins)) {
      pins.hold(DONE, 1);
    }
  }

  @Override
  public boolean commitsEveryPhase() {
    return true;
  }

  @Override
  public boolean keepsTime() {
    return true;
  }

  @Override
  public long nextChange(Pins pins) {
    if (pins.state(DONE) != 0 || pins.state(EMPTY) != 0) {
      return NEVER;
    }
    long ends = ends(pins);
    long at = ends == NEVER ? NEVER : pins.cycleAfter(ends);
    return at > pins.now() ? at : NEVER;
  }

  private static long ends(Pins pins) {
    long charges = pins.charges(THR);
    return charges == Long.MAX_VALUE ? NEVER : pins.state(SINCE) + charges;
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
