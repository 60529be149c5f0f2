package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/**
 * Eight latches written one at a time: while G/ is low the addressed Q follows D, and holds when G/
 * rises; CLR/ low clears the others.
 */
public final class Ls259 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  A0   ->|1      16|--  VCC
  A1   ->|2      15|<-  CLR/
  A2   ->|3      14|<-  G/
  Q0   <-|4      13|<-  D
  Q1   <-|5      12|->  Q7
  Q2   <-|6      11|->  Q6
  Q3   <-|7      10|->  Q5
  GND  --|8       9|->  Q4
         +---------+
  LS; input A0 A1 A2 D CLR/; latch G/; supply VCC; ground GND; Q drives LS gate;
  Q follows A D G/ CLR/
  Not modelled: delay, what an address that moves while G/ is low writes on its way.""");

  private static final State HELD = PINOUT.state("held", 8);
  private static final Bus A = PINOUT.bus("A");
  private static final Bus Q = PINOUT.bus("Q");
  private static final long D = PINOUT.pin("D");
  private static final long G = PINOUT.pin("G/");
  private static final long CLR = PINOUT.pin("CLR/");

  @Override
  public void settle(Pins pins) {
    pins.drive(Q, now(pins));
  }

  @Override
  public void commit(Pins pins, Phase phase) {
    pins.hold(HELD, now(pins));
  }

  private static int now(Pins pins) {
    int held = pins.high(CLR) ? (int) pins.state(HELD) : 0;
    if (pins.high(G)) {
      return held;
    }
    int bit = 1 << pins.read(A);
    return pins.high(D) ? held | bit : held & ~bit;
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
  public void powerOn(Pins pins, PowerOn chance) {
    pins.hold(HELD, chance.draw(0) & 0xFF);
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
