package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/** A static RAM of 2,048 bytes; it stores whatever its data pins read while CE/ and WE/ are low. */
public final class Sram6116 extends Memory {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  A7   ->|1      24|--  VCC
  A6   ->|2      23|<-  A8
  A5   ->|3      22|<-  A9
  A4   ->|4      21|<-  WE/
  A3   ->|5      20|<-  OE/
  A2   ->|6      19|<-  A10
  A1   ->|7      18|<-  CE/
  A0   ->|8      17|<>  D7
  D0   <>|9      16|<>  D6
  D1   <>|10     15|<>  D5
  D2   <>|11     14|<>  D4
  GND  --|12     13|<>  D3
         +---------+
  MOS memory; register A; data D; write WE/; enable CE/ OE/ WE/ of D; supply VCC; ground GND;
  D drives MOS memory; D follows A
  Not modelled: access time of a sound part, half-written cells when the address moves in a write.""");

  /** The stored bytes. */
  public static final State CELLS = PINOUT.cells("cells", 8, 2048);

  private static final Bus A = PINOUT.bus("A");
  private static final Bus D = PINOUT.bus("D");
  private static final long CE = PINOUT.pin("CE/");
  private static final long OE = PINOUT.pin("OE/");
  private static final long WE = PINOUT.pin("WE/");

  @Override
  public State array() {
    return CELLS;
  }

  @Override
  public void settle(Pins pins) {
    if (pins.low(CE) && pins.low(OE) && pins.high(WE)) {
      pins.drive(D, pins.cell(CELLS, pins.read(A)));
    }
  }

  @Override
  public void commit(Pins pins, Phase phase) {
    if (pins.low(CE) && pins.low(WE)) {
      pins.hold(CELLS, pins.read(A), pins.read(D));
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
