package faultfinch.part;

import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/** Three three-input NAND gates. */
public final class Ls10 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  1A   ->|1      14|--  VCC
  1B   ->|2      13|<-  1C
  2A   ->|3      12|->  1Y
  2B   ->|4      11|<-  3C
  2C   ->|5      10|<-  3B
  2Y   <-|6       9|<-  3A
  GND  --|7       8|->  3Y
         +---------+
  LS; input 1A 1B 1C 2A 2B 2C 3A 3B 3C; supply VCC; ground GND;
  1Y drives LS gate; 2Y drives LS gate; 3Y drives LS gate;
  1Y follows 1A 1B 1C; 2Y follows 2A 2B 2C; 3Y follows 3A 3B 3C
  Not modelled: delay.""");

  private static final long[][] GATES = new long[3][];

  static {
    for (int i = 0; i < 3; i++) {
      String n = String.valueOf(i + 1);
      GATES[i] =
          new long[] {
            PINOUT.pin(n + "A"), PINOUT.pin(n + "B"), PINOUT.pin(n + "C"), PINOUT.pin(n + "Y")
          };
    }
  }

  @Override
  public void settle(Pins pins) {
    for (long[] gate : GATES) {
      pins.drive(gate[3], pins.low(gate[0]) || pins.low(gate[1]) || pins.low(gate[2]));
    }
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
