package faultfinch.part;

import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/**
 * Four two-way switches that can let go: each Y shows its A while S is low, its B while S is high,
 * and nothing while G/ is high.
 */
public final class Ls257 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  S    ->|1      16|--  VCC
  1A   ->|2      15|<-  G/
  1B   ->|3      14|<-  4A
  1Y   <-|4      13|<-  4B
  2A   ->|5      12|->  4Y
  2B   ->|6      11|<-  3A
  2Y   <-|7      10|<-  3B
  GND  --|8       9|->  3Y
         +---------+
  LS; input S 1A 1B 2A 2B 3A 3B 4A 4B; enable G/ of 1Y 2Y 3Y 4Y; supply VCC; ground GND;
  1Y drives LS buffer; 2Y drives LS buffer; 3Y drives LS buffer; 4Y drives LS buffer;
  1Y follows 1A 1B S; 2Y follows 2A 2B S; 3Y follows 3A 3B S; 4Y follows 4A 4B S
  Not modelled: delay, the glitch while S changes between two high inputs.""");

  private static final long S = PINOUT.pin("S");
  private static final long G = PINOUT.pin("G/");
  private static final long[][] LANES = new long[4][];

  static {
    for (int i = 0; i < 4; i++) {
      String n = String.valueOf(i + 1);
      LANES[i] = new long[] {PINOUT.pin(n + "A"), PINOUT.pin(n + "B"), PINOUT.pin(n + "Y")};
    }
  }

  @Override
  public void settle(Pins pins) {
    if (pins.low(G)) {
      int shown = pins.high(S) ? 1 : 0;
      for (long[] lane : LANES) {
        pins.drive(lane[2], pins.high(lane[shown]));
      }
    }
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
