package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/** One of ten low: the output of the number on D, C, B, A pulls low, none for ten and above. */
public final class Ls145 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  Y0/  <-|1      16|--  VCC
  Y1/  <-|2      15|<-  A
  Y2/  <-|3      14|<-  B
  Y3/  <-|4      13|<-  C
  Y4/  <-|5      12|<-  D
  Y5/  <-|6      11|->  Y9/
  Y6/  <-|7      10|->  Y8/
  GND  --|8       9|->  Y7/
         +---------+
  LS; input A B C D; supply VCC; ground GND; Y drives LS buffer open collector; Y follows A B C D
  Not modelled: delay, outputs above 5 V.""");

  private static final Bus Y = PINOUT.bus("Y");
  private static final long[] WEIGHTS = {
    PINOUT.pin("A"), PINOUT.pin("B"), PINOUT.pin("C"), PINOUT.pin("D")
  };

  @Override
  public void settle(Pins pins) {
    int number = 0;
    for (int i = 0; i < WEIGHTS.length; i++) {
      number |= pins.high(WEIGHTS[i]) ? 1 << i : 0;
    }
    pins.drive(Y, ~(1 << number));
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
