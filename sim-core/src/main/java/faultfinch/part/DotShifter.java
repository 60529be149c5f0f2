package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/**
 * Sends eight dots out one after the other, four a cycle, left one (D7) first. A rise of CK takes
 * D0-D7 while LD/ is low, else it moves on by four dots.
 *
 * <p>Between two rises of CK, which come in V-latch, the parts of the cycle stand for the dot
 * clock: C-row, C-col with C-end, V-row, V-col with V-latch show one dot each.
 */
public final class DotShifter extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
         +----v----+
  D0   ->|1      20|--  VCC
  D1   ->|2      19|--  NC4
  D2   ->|3      18|--  NC3
  D3   ->|4      17|--  NC2
  D4   ->|5      16|--  NC1
  D5   ->|6      15|<-  LD/
  D6   ->|7      14|<-  CK
  D7   ->|8      13|->  DOT
  INV  ->|9      12|<-  CUR
  GND  --|10     11|<-  DE
         +---------+
  LS; input D LD/ INV CUR DE; clock CK rises; unconnected NC; supply VCC; ground GND;
  DOT drives LS gate; DOT follows INV CUR DE
  Not modelled: the dot clock it makes from CK (the phase stands for it), delay.""");

  private static final int DOTS = 8;
  private static final int A_CYCLE = 4;
  private static final State WORD = PINOUT.state("word", DOTS);
  private static final Bus D = PINOUT.bus("D");
  private static final long INV = PINOUT.pin("INV");
  private static final long CUR = PINOUT.pin("CUR");
  private static final long DE = PINOUT.pin("DE");
  private static final long DOT = PINOUT.pin("DOT");
  private static final long CK = PINOUT.pin("CK");
  private static final long LD = PINOUT.pin("LD/");

  @Override
  public void settle(Pins pins) {
    boolean ink = (pins.state(WORD) >>> (DOTS - 1 - place(pins.phase())) & 1) != 0;
    pins.drive(DOT, pins.high(DE) && (ink ^ pins.high(INV) ^ pins.high(CUR)));
  }

  private static int place(Phase phase) {
    return switch (phase) {
      case C_ROW -> 0;
      case C_COL, C_END -> 1;
      case V_ROW -> 2;
      case V_COL, V_LATCH -> 3;
    };
  }

  @Override
  public void commit(Pins pins, Phase phase) {
    if ((pins.rose() & CK) != 0) {
      long on = pins.state(WORD) << A_CYCLE & 0xFF;
      pins.hold(WORD, pins.low(LD) ? pins.read(D) : on);
    }
  }

  @Override
  public boolean followsPhase() {
    return true;
  }

  @Override
  public void powerOn(Pins pins, PowerOn chance) {
    pins.hold(WORD, chance.draw(0) & 0xFF);
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
