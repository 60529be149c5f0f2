package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/** Eight latches: Q follows D while LE is high and holds when it falls; OE/ high lets go of Q. */
public final class Ls373 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  OE/  ->|1      20|--  VCC
  Q0   <-|2      19|->  Q7
  D0   ->|3      18|<-  D7
  D1   ->|4      17|<-  D6
  Q1   <-|5      16|->  Q6
  Q2   <-|6      15|->  Q5
  D2   ->|7      14|<-  D5
  D3   ->|8      13|<-  D4
  Q3   <-|9      12|->  Q4
  GND  --|10     11|<-  LE
         +---------+
  LS; input D; latch LE; enable OE/ of Q; supply VCC; ground GND;
  Q drives LS buffer; each Q follows D, LE OE/
  Not modelled: delay, D changing as LE falls.""");

  private static final State HELD = PINOUT.state("held", 8);
  private static final Bus D = PINOUT.bus("D");
  private static final Bus Q = PINOUT.bus("Q");
  private static final long LE = PINOUT.pin("LE");
  private static final long OE = PINOUT.pin("OE/");

  @Override
  public void settle(Pins pins) {
    if (pins.low(OE)) {
      pins.drive(Q, pins.high(LE) ? pins.read(D) : (int) pins.state(HELD));
    }
  }

  @Override
  public void commit(Pins pins, Phase phase) {
    if (pins.high(LE)) {
      pins.hold(HELD, pins.read(D));
    }
  }

  @Override
  public boolean commitsEveryPhase() {
    return true;
  }

  @Override
  public boolean standsStill() {
    return true;
  }

  @Override
  public void powerOn(Pins pins, PowerOn chance) {
    pins.hold(HELD, chance.draw(0) & 0xFF);
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
