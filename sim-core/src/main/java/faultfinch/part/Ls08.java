package faultfinch.part;

import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/** Four two-input AND gates. */
public final class Ls08 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  1A   ->|1      14|--  VCC
  1B   ->|2      13|<-  4B
  1Y   <-|3      12|<-  4A
  2A   ->|4      11|->  4Y
  2B   ->|5      10|<-  3B
  2Y   <-|6       9|<-  3A
  GND  --|7       8|->  3Y
         +---------+
  LS; input 1A 1B 2A 2B 3A 3B 4A 4B; supply VCC; ground GND;
  1Y drives LS gate; 2Y drives LS gate; 3Y drives LS gate; 4Y drives LS gate;
  1Y follows 1A 1B; 2Y follows 2A 2B; 3Y follows 3A 3B; 4Y follows 4A 4B
  Not modelled: delay.""");

  private static final long[][] GATES = new long[4][];

  static {
    for (int i = 0; i < 4; i++) {
      String n = String.valueOf(i + 1);
      GATES[i] = new long[] {PINOUT.pin(n + "A"), PINOUT.pin(n + "B"), PINOUT.pin(n + "Y")};
    }
  }

  @Override
  public void settle(Pins pins) {
    for (long[] gate : GATES) {
      pins.drive(gate[2], pins.high(gate[0]) && pins.high(gate[1]));
    }
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
