package faultfinch.part;

import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/** Four two-way switches: each Y shows its A while S is low and its B while S is high. */
public final class Ls157 extends Part {

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
  LS; input S 1A 1B 2A 2B 3A 3B 4A 4B; enable G/; supply VCC; ground GND;
  1Y drives LS gate; 2Y drives LS gate; 3Y drives LS gate; 4Y drives LS gate;
  1Y follows 1A 1B S G/; 2Y follows 2A 2B S G/; 3Y follows 3A 3B S G/; 4Y follows 4A 4B S G/
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
    boolean enabled = pins.low(G);
    int shown = pins.high(S) ? 1 : 0;
    for (long[] lane : LANES) {
      pins.drive(lane[2], enabled && pins.high(lane[shown]));
    }
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
