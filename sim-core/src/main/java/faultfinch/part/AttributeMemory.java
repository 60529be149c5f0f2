package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/**
 * What each cell of the picture looks like: 1,024 words of four bits (red, green, blue, inverse)
 * which the processor reads and writes in its half of the cycle.
 *
 * <p>A rise of CK latches the word at VA for the dots that come next, and DE and the cursor with
 * it. While AOFF is high, plain white is latched instead.
 */
public final class AttributeMemory extends BusDevice implements DualPortMemory {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
          +----v----+
  A0    ->|1      40|--  VCC
  A1    ->|2      39|<-  VA0
  A2    ->|3      38|<-  VA1
  A3    ->|4      37|<-  VA2
  A4    ->|5      36|<-  VA3
  A5    ->|6      35|<-  VA4
  A6    ->|7      34|<-  VA5
  A7    ->|8      33|<-  VA6
  A8    ->|9      32|<-  VA7
  A9    ->|10     31|<-  VA8
  D0    <>|11     30|<-  VA9
  D1    <>|12     29|->  INK0
  D2    <>|13     28|->  INK1
  D3    <>|14     27|->  INK2
  CS/   ->|15     26|->  INV
  CS    ->|16     25|->  CURO
  RW    ->|17     24|->  DEO
  PHI2  ->|18     23|<-  CURI
  AOFF  ->|19     22|<-  DEI
  GND   --|20     21|<-  CK
          +---------+
  NMOS; register A; data D; select CS/ CS; direction RW; clock PHI2 falls; clock CK rises;
  input VA AOFF DEI CURI; supply VCC; ground GND; D drives NMOS LSI; INK drives NMOS LSI;
  INV drives NMOS LSI; CURO drives NMOS LSI; DEO drives NMOS LSI;
  enable CS/ CS RW PHI2 of D; D follows A
  Not modelled: both sides asking for the same word at once (they take turns by halves).""");

  /** The words: bit 0 red, 1 green, 2 blue, 3 inverse. */
  public static final State CELLS = PINOUT.cells("cells", 4, 1024);

  /** Bits 0-3 the word shown, 4 DE, 5 the cursor. */
  private static final State SHOWN = PINOUT.state("shown", 6);

  private static final int PLAIN = 7;
  private static final BusAdapter ADAPTER = new BusAdapter(PINOUT, "A", "D");
  private static final Bus VA = PINOUT.bus("VA");
  private static final Bus INK = PINOUT.bus("INK");
  private static final long INV = PINOUT.pin("INV");
  private static final long DEO = PINOUT.pin("DEO");
  private static final long CURO = PINOUT.pin("CURO");
  private static final long DEI = PINOUT.pin("DEI");
  private static final long CURI = PINOUT.pin("CURI");
  private static final long AOFF = PINOUT.pin("AOFF");
  private static final long CK = PINOUT.pin("CK");
  private static final long BUT_CK =
      ~CK & PINOUT.pins().stream().mapToLong(Pin::mask).reduce(0, (a, b) -> a | b);

  @Override
  public BusAdapter adapter() {
    return ADAPTER;
  }

  @Override
  public State array() {
    return CELLS;
  }

  @Override
  public int look(Pins pins, int register) {
    return pins.cell(CELLS, register);
  }

  @Override
  public void write(Pins pins, int register, int value) {
    pins.hold(CELLS, register, value);
  }

  @Override
  public void outputs(Pins pins) {
    int shown = (int) pins.state(SHOWN);
    pins.drive(INK, shown & 7);
    pins.drive(INV, (shown & 0x08) != 0);
    pins.drive(DEO, (shown & 0x10) != 0);
    pins.drive(CURO, (shown & 0x20) != 0);
  }

  @Override
  public void levels(Pins pins) {
    if ((pins.rose() & CK) != 0) {
      int word = pins.high(AOFF) ? PLAIN : pins.cell(CELLS, pins.read(VA));
      int de = pins.high(DEI) ? 0x10 : 0;
      int cursor = pins.high(CURI) ? 0x20 : 0;
      pins.hold(SHOWN, word | de | cursor);
    }
  }

  @Override
  public long restsWhileHigh(Phase phase) {
    return phase == Phase.C_END ? 0 : BUT_CK;
  }

  @Override
  public boolean stepsAlone() {
    return true;
  }

  @Override
  public void powerOn(Pins pins, PowerOn chance) {
    for (int i = 0; i < CELLS.count(); i++) {
      pins.hold(CELLS, i, (int) chance.draw(i) & 0xF);
    }
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
