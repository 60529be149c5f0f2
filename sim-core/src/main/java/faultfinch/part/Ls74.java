package faultfinch.part;

import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/** Two D flip-flops: Q takes D where the clock rises; PR/ and CLR/ overrule it. */
public final class Ls74 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
           +----v----+
  1CLR/  ->|1      14|--  VCC
  1D     ->|2      13|<-  2CLR/
  1CLK   ->|3      12|<-  2D
  1PR/   ->|4      11|<-  2CLK
  1Q     <-|5      10|<-  2PR/
  1Q/    <-|6       9|->  2Q
  GND    --|7       8|->  2Q/
           +---------+
  LS; input 1D 2D 1CLR/ 1PR/ 2CLR/ 2PR/; clock 1CLK 2CLK rises; supply VCC; ground GND;
  1Q drives LS gate; 1Q/ drives LS gate; 2Q drives LS gate; 2Q/ drives LS gate;
  1Q follows 1PR/ 1CLR/; 1Q/ follows 1PR/ 1CLR/; 2Q follows 2PR/ 2CLR/; 2Q/ follows 2PR/ 2CLR/
  Not modelled: set-up and hold times, the state after PR/ and CLR/ rise together.""");

  private static final State[] STORED = {PINOUT.state("q1", 1), PINOUT.state("q2", 1)};
  private static final long[][] HALVES = new long[2][];

  static {
    for (int i = 0; i < 2; i++) {
      String n = String.valueOf(i + 1);
      HALVES[i] =
          new long[] {
            PINOUT.pin(n + "D"),
            PINOUT.pin(n + "CLK"),
            PINOUT.pin(n + "PR/"),
            PINOUT.pin(n + "CLR/"),
            PINOUT.pin(n + "Q"),
            PINOUT.pin(n + "Q/")
          };
    }
  }

  @Override
  public void settle(Pins pins) {
    for (int i = 0; i < 2; i++) {
      long[] half = HALVES[i];
      boolean set = pins.low(half[2]);
      boolean clear = pins.low(half[3]);
      boolean stored = pins.state(STORED[i]) != 0;
      pins.drive(half[4], set || (stored && !clear));
      pins.drive(half[5], clear || (!stored && !set));
    }
  }

  @Override
  public void commit(Pins pins, Phase phase) {
    for (int i = 0; i < 2; i++) {
      long[] half = HALVES[i];
      boolean stored = pins.state(STORED[i]) != 0;
      boolean next = stored;
      if (pins.low(half[2])) {
        next = true;
      } else if (pins.low(half[3])) {
        next = false;
      } else if ((pins.rose() & half[1]) != 0) {
        next = pins.high(half[0]);
      }
      if (next != stored) {
        pins.hold(STORED[i], next ? 1 : 0);
      }
    }
  }

  @Override
  public boolean commitsEveryPhase() {
    return true;
  }

  @Override
  public boolean standsStill() {
    return true;
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
