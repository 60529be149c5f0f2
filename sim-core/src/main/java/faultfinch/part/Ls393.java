package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/** Two four-bit counters: each counts up where its CP/ falls; MR high holds it at zero. */
public final class Ls393 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
          +----v----+
  1CP/  ->|1      14|--  VCC
  1MR   ->|2      13|<-  2CP/
  1Q0   <-|3      12|<-  2MR
  1Q1   <-|4      11|->  2Q0
  1Q2   <-|5      10|->  2Q1
  1Q3   <-|6       9|->  2Q2
  GND   --|7       8|->  2Q3
          +---------+
  LS; clock 1CP/ 2CP/ falls; input 1MR 2MR; supply VCC; ground GND;
  1Q drives LS gate; 2Q drives LS gate; 1Q follows 1MR; 2Q follows 2MR
  Not modelled: delay, the ripple from stage to stage within one counter.""");

  private static final State[] COUNT = {PINOUT.state("count-1", 4), PINOUT.state("count-2", 4)};
  private static final Bus[] Q = {PINOUT.bus("1Q"), PINOUT.bus("2Q")};
  private static final long[] CP = {PINOUT.pin("1CP/"), PINOUT.pin("2CP/")};
  private static final long[] MR = {PINOUT.pin("1MR"), PINOUT.pin("2MR")};

  @Override
  public void settle(Pins pins) {
    for (int i = 0; i < 2; i++) {
      pins.drive(Q[i], pins.high(MR[i]) ? 0 : (int) pins.state(COUNT[i]));
    }
  }

  @Override
  public void commit(Pins pins, Phase phase) {
    for (int i = 0; i < 2; i++) {
      if (pins.high(MR[i])) {
        pins.hold(COUNT[i], 0);
      } else if ((pins.fell() & CP[i]) != 0) {
        pins.hold(COUNT[i], (pins.state(COUNT[i]) + 1) & 0xF);
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
  public void powerOn(Pins pins, PowerOn chance) {
    pins.hold(COUNT[0], chance.draw(0) & 0xF);
    pins.hold(COUNT[1], chance.draw(1) & 0xF);
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
