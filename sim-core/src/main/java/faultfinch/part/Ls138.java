package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/** A decoder: one of eight outputs goes low while all three enables agree. */
public final class Ls138 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
          +----v----+
  A     ->|1      16|--  VCC
  B     ->|2      15|->  Y0/
  C     ->|3      14|->  Y1/
  G2A/  ->|4      13|->  Y2/
  G2B/  ->|5      12|->  Y3/
  G1    ->|6      11|->  Y4/
  Y7/   <-|7      10|->  Y5/
  GND   --|8       9|->  Y6/
          +---------+
  LS; input A B C; enable G1 G2A/ G2B/; supply VCC; ground GND;
  Y drives LS gate; Y follows A B C G1 G2A/ G2B/
  Not modelled: delay, glitches while the inputs change.""");

  private static final Bus Y = PINOUT.bus("Y");
  private static final long A = PINOUT.pin("A");
  private static final long B = PINOUT.pin("B");
  private static final long C = PINOUT.pin("C");
  private static final long G1 = PINOUT.pin("G1");
  private static final long G2 = PINOUT.pin("G2A/") | PINOUT.pin("G2B/");

  @Override
  public void settle(Pins pins) {
    boolean enabled = pins.high(G1) && pins.low(G2);
    int line = (pins.high(A) ? 1 : 0) + (pins.high(B) ? 2 : 0) + (pins.high(C) ? 4 : 0);
    pins.drive(Y, enabled ? 0xFF & ~(1 << line) : 0xFF);
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
