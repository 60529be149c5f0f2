package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/** An erasable ROM of 8,192 bytes. */
public final class Eprom2764 extends Memory {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  VPP  ->|1      28|--  VCC
  A12  ->|2      27|<-  PGM/
  A7   ->|3      26|--  NC
  A6   ->|4      25|<-  A8
  A5   ->|5      24|<-  A9
  A4   ->|6      23|<-  A11
  A3   ->|7      22|<-  OE/
  A2   ->|8      21|<-  A10
  A1   ->|9      20|<-  CE/
  A0   ->|10     19|<>  D7
  D0   <>|11     18|<>  D6
  D1   <>|12     17|<>  D5
  D2   <>|13     16|<>  D4
  GND  --|14     15|<>  D3
         +---------+
  MOS memory; register A; data D; input VPP PGM/; enable CE/ OE/ of D; unconnected NC; supply VCC;
  ground GND; D drives MOS memory; D follows A CE/ OE/
  Not modelled: programming, access time of a sound part.""");

  /** The programmed bytes. */
  public static final State CELLS = PINOUT.cells("cells", 8, 8192);

  private static final Bus A = PINOUT.bus("A");
  private static final Bus D = PINOUT.bus("D");
  private static final long CE = PINOUT.pin("CE/");
  private static final long OE = PINOUT.pin("OE/");

  @Override
  public State array() {
    return CELLS;
  }

  @Override
  public void settle(Pins pins) {
    if (pins.low(CE) && pins.low(OE)) {
      pins.drive(D, pins.cell(CELLS, pins.read(A)));
    }
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
