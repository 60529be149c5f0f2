package faultfinch.part;

import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/** Six inverters. */
public final class Ls04 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  1A   ->|1      14|--  VCC
  1Y   <-|2      13|<-  6A
  2A   ->|3      12|->  6Y
  2Y   <-|4      11|<-  5A
  3A   ->|5      10|->  5Y
  3Y   <-|6       9|<-  4A
  GND  --|7       8|->  4Y
         +---------+
  LS; input 1A 2A 3A 4A 5A 6A; supply VCC; ground GND;
  1Y drives LS gate; 2Y drives LS gate; 3Y drives LS gate; 4Y drives LS gate; 5Y drives LS gate;
  6Y drives LS gate; 1Y follows 1A; 2Y follows 2A; 3Y follows 3A; 4Y follows 4A; 5Y follows 5A;
  6Y follows 6A
  Not modelled: delay.""");

  private static final long[][] GATES = new long[6][];

  static {
    for (int i = 0; i < 6; i++) {
      String n = String.valueOf(i + 1);
      GATES[i] = new long[] {PINOUT.pin(n + "A"), PINOUT.pin(n + "Y")};
    }
  }

  @Override
  public void settle(Pins pins) {
    for (long[] gate : GATES) {
      pins.drive(gate[1], pins.low(gate[0]));
    }
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
