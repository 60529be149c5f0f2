package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/** Eight two-way buffers: DIR high sends A to B, low sends B to A, G/ high parts the two sides. */
public final class Ls245 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  DIR  ->|1      20|--  VCC
  A1   <>|2      19|<-  G/
  A2   <>|3      18|<>  B1
  A3   <>|4      17|<>  B2
  A4   <>|5      16|<>  B3
  A5   <>|6      15|<>  B4
  A6   <>|7      14|<>  B5
  A7   <>|8      13|<>  B6
  A8   <>|9      12|<>  B7
  GND  --|10     11|<>  B8
         +---------+
  LS; direction DIR; data A B; enable G/ DIR of A B; supply VCC; ground GND;
  A drives LS buffer; B drives LS buffer; each A follows B, G/ DIR; each B follows A, G/ DIR
  Not modelled: delay, input hysteresis, both sides driving while DIR turns round.""");

  private static final Bus A = PINOUT.bus("A");
  private static final Bus B = PINOUT.bus("B");
  private static final long G = PINOUT.pin("G/");
  private static final long DIR = PINOUT.pin("DIR");

  @Override
  public void settle(Pins pins) {
    if (pins.high(G)) {
      return;
    }
    if (pins.high(DIR)) {
      pins.drive(B, pins.read(A));
    } else {
      pins.drive(A, pins.read(B));
    }
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
