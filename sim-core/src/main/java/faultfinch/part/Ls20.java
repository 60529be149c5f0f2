package faultfinch.part;

import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/** Two four-input NAND gates. */
public final class Ls20 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  1A   ->|1      14|--  VCC
  1B   ->|2      13|<-  2D
  NC1  --|3      12|<-  2C
  1C   ->|4      11|--  NC2
  1D   ->|5      10|<-  2B
  1Y   <-|6       9|<-  2A
  GND  --|7       8|->  2Y
         +---------+
  LS; input 1A 1B 1C 1D 2A 2B 2C 2D; unconnected NC; supply VCC; ground GND;
  1Y drives LS gate; 2Y drives LS gate; 1Y follows 1A 1B 1C 1D; 2Y follows 2A 2B 2C 2D
  Not modelled: delay.""");

  private static final long[][] GATES = new long[2][];

  static {
    for (int i = 0; i < 2; i++) {
      String n = String.valueOf(i + 1);
      GATES[i] =
          new long[] {
            PINOUT.pin(n + "A"),
            PINOUT.pin(n + "B"),
            PINOUT.pin(n + "C"),
            PINOUT.pin(n + "D"),
            PINOUT.pin(n + "Y")
          };
    }
  }

  @Override
  public void settle(Pins pins) {
    for (long[] gate : GATES) {
      pins.drive(
          gate[4],
          pins.low(gate[0]) || pins.low(gate[1]) || pins.low(gate[2]) || pins.low(gate[3]));
    }
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
