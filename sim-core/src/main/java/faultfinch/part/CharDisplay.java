package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/**
 * Sixteen character cells in one module. A cell takes the data pins while CS/ and WE/ are low; EN
 * low darkens the glass and keeps the cells, RES/ low blanks them.
 */
public final class CharDisplay extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  D0   ->|1      18|--  VCC
  D1   ->|2      17|<-  WE/
  D2   ->|3      16|<-  CS/
  D3   ->|4      15|<-  A3
  D4   ->|5      14|<-  A2
  D5   ->|6      13|<-  A1
  D6   ->|7      12|<-  A0
  D7   ->|8      11|<-  RES/
  GND  --|9      10|<-  EN
         +---------+
  NMOS; register A; data D; select CS/; write WE/; input EN RES/; supply VCC; ground GND
  Not modelled: scanning of the glass, brightness.""");

  /** The sixteen character codes; bit 7 lights the dot under a cell. */
  public static final State CELLS = PINOUT.cells("cells", 8, 16);

  /** 1 while the glass is lit. */
  public static final State LIT = PINOUT.state("lit", 1);

  /** 1 since RES/ blanked the cells, until one is written. */
  private static final State CLEARED = PINOUT.state("cleared", 1);

  private static final int BLANK = ' ';
  private static final Bus A = PINOUT.bus("A");
  private static final Bus D = PINOUT.bus("D");
  private static final long CS = PINOUT.pin("CS/");
  private static final long WE = PINOUT.pin("WE/");
  private static final long EN = PINOUT.pin("EN");
  private static final long RES = PINOUT.pin("RES/");

  @Override
  public void commit(Pins pins, Phase phase) {
    long lit = pins.high(EN) ? 1 : 0;
    if (pins.state(LIT) != lit) {
      pins.hold(LIT, lit);
    }
    if (pins.low(RES)) {
      if (pins.state(CLEARED) == 0) {
        for (int i = 0; i < CELLS.count(); i++) {
          pins.hold(CELLS, i, BLANK);
        }
        pins.hold(CLEARED, 1);
      }
    } else if (pins.low(CS) && pins.low(WE)) {
      pins.hold(CELLS, pins.read(A), pins.read(D));
      if (pins.state(CLEARED) != 0) {
        pins.hold(CLEARED, 0);
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
    for (int i = 0; i < CELLS.count(); i++) {
      pins.hold(CELLS, i, (int) chance.draw(i) & 0xFF);
    }
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
