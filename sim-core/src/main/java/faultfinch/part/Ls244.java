package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/** Two four-bit buffers that let go of their outputs while their gate is high. */
public final class Ls244 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  1G/  ->|1      20|--  VCC
  1A1  ->|2      19|<-  2G/
  2Y4  <-|3      18|->  1Y1
  1A2  ->|4      17|<-  2A4
  2Y3  <-|5      16|->  1Y2
  1A3  ->|6      15|<-  2A3
  2Y2  <-|7      14|->  1Y3
  1A4  ->|8      13|<-  2A2
  2Y1  <-|9      12|->  1Y4
  GND  --|10     11|<-  2A1
         +---------+
  LS; input 1A 2A; enable 1G/ of 1Y; enable 2G/ of 2Y; supply VCC; ground GND;
  1Y drives LS buffer; 2Y drives LS buffer; each 1Y follows 1A, 1G/; each 2Y follows 2A, 2G/
  Not modelled: delay, input hysteresis.""");

  private static final Bus A1 = PINOUT.bus("1A");
  private static final Bus Y1 = PINOUT.bus("1Y");
  private static final Bus A2 = PINOUT.bus("2A");
  private static final Bus Y2 = PINOUT.bus("2Y");
  private static final long G1 = PINOUT.pin("1G/");
  private static final long G2 = PINOUT.pin("2G/");

  @Override
  public void settle(Pins pins) {
    if (pins.low(G1)) {
      pins.drive(Y1, pins.read(A1));
    }
    if (pins.low(G2)) {
      pins.drive(Y2, pins.read(A2));
    }
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
