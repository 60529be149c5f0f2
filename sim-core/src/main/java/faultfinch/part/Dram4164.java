package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/**
 * A dynamic RAM of 65,536 bits. Its address pins carry the row in a row phase and the column after
 * it, which the fall of the column strobe takes: one that is low already when the row is strobed
 * falls no more, so that the row is refreshed but no bit of it read or written. A row that is not
 * strobed in time forgets.
 *
 * <p>A strobed row is refreshed, but what has run out by then is lost: its cells fall to the value
 * they rest at, low in the lower half of the rows, high in the upper.
 */
public final class Dram4164 extends RowMemory {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
          +----v----+
  NC    --|1      16|--  GND
  D     ->|2      15|<-  CAS/
  WE/   ->|3      14|->  Q
  RAS/  ->|4      13|<-  A6
  A0    ->|5      12|<-  A3
  A2    ->|6      11|<-  A4
  A1    ->|7      10|<-  A5
  VCC   --|8       9|<-  A7
          +---------+
  MOS memory; register A; data D Q; latch RAS/; write WE/; enable CAS/ WE/ of Q; unconnected NC;
  supply VCC; ground GND; Q drives MOS memory; Q follows A
  Not modelled: access time of a sound part, a column strobe that rises and falls again after one
  row, what Q still drives while rows are refreshed behind it, writes later than the column strobe,
  page mode, the need of a few row strobes after power-on, which cells are weak staying the same
  from one power-on to the next.""");

  /** The stored bits; the row is the high half of the index. */
  public static final State CELLS = PINOUT.cells("cells", 1, 65_536);

  /** A cell with this defect forgets within 10 to 100 milliseconds of its last strobe. */
  public static final String SHORT_LIVED = "short-lived";

  /** A cell with this defect takes what is written to the cell beside it. */
  public static final String DISTURBED = "disturbed";

  private static final int ROWS = 256;
  private static final int COLUMNS = 256;
  private static final State ROW = PINOUT.state("row", 8);
  private static final State STROBED = PINOUT.state("strobed", 1);
  private static final State GRAIN = PINOUT.state("grain", 64);

  /** When each row was last strobed, in nanoseconds since power-on. */
  private static final State[] SINCE = new State[ROWS];

  static {
    for (int row = 0; row < ROWS; row++) {
      SINCE[row] = PINOUT.state("row-" + row + "-since", 63);
    }
  }

  private static final Bus A = PINOUT.bus("A");
  private static final long D = PINOUT.pin("D");
  private static final long Q = PINOUT.pin("Q");
  private static final long RAS = PINOUT.pin("RAS/");
  private static final long CAS = PINOUT.pin("CAS/");
  private static final long WE = PINOUT.pin("WE/");

  @Override
  public State bits() {
    return CELLS;
  }

  @Override
  public Bus address() {
    return A;
  }

  /** Columns lie in pairs. */
  @Override
  public int beside(int cell) {
    return cell ^ 1;
  }

  @Override
  public boolean restsHigh(int cell) {
    return cell >= ROWS / 2 * COLUMNS;
  }

  @Override
  public boolean strobes(long in) {
    return (in & RAS) == 0;
  }

  @Override
  public void strobed(Pins pins, int row, long nanoseconds) {
    pins.hold(SINCE[row], Math.max(nanoseconds, pins.state(SINCE[row])));
  }

  @Override
  public long strobedAt(Pins pins, int row) {
    return pins.state(SINCE[row]);
  }

  @Override
  public long keeps(Pins pins) {
    long grain = pins.state(GRAIN);
    long least = Retention.shortest();
    for (int cell : pins.cellsWith(SHORT_LIVED)) {
      least = Math.min(least, Retention.defective(grain, cell));
    }
    return Retention.warm(least, pins.caseTenths());
  }

  @Override
  public void settle(Pins pins) {
    if (pins.low(CAS) && pins.high(WE) && pins.state(STROBED) != 0) {
      pins.drive(Q, pins.cell(CELLS, at(pins)) != 0);
    }
  }

  @Override
  public void commit(Pins pins, Phase phase) {
    if (phase == Phase.V_ROW || phase == Phase.C_ROW) {
      takeRow(pins);
      if (pins.low(RAS)) {
        strobe(pins, pins.read(A));
      }
    } else if (pins.low(CAS) && pins.low(WE) && pins.state(STROBED) != 0) {
      write(pins, at(pins), pins.high(D) ? 1 : 0);
    }
  }

  @Override
  public long restsWhileHigh(Phase phase) {
    return phase == Phase.V_ROW || phase == Phase.C_ROW ? 0 : CAS | WE;
  }

  @Override
  public void takeRow(Pins pins) {
    pins.hold(STROBED, pins.low(RAS) && pins.high(CAS) ? 1 : 0);
    if (pins.low(RAS)) {
      pins.hold(ROW, pins.read(A));
    }
  }

  private void write(Pins pins, int cell, int bit) {
    pins.hold(CELLS, cell, bit);
    for (int disturbed : pins.cellsWith(DISTURBED)) {
      if (beside(disturbed) == cell) {
        pins.hold(CELLS, disturbed, bit);
      }
    }
  }

  private static int at(Pins pins) {
    return (int) pins.state(ROW) * COLUMNS + pins.read(A);
  }

  @Override
  public void strobe(Pins pins, int row) {
    long age = pins.nanoseconds() - pins.state(SINCE[row]);
    if (!pins.refreshed(row) && age >= keeps(pins)) {
      forget(pins, row, age, pins.cellsWith(SHORT_LIVED));
    }
    pins.hold(SINCE[row], pins.nanoseconds());
  }

  private static boolean among(int[] cells, int cell) {
    for (int one : cells) {
      if (one == cell) {
        return true;
      }
    }
    return false;
  }

  private void forget(Pins pins, int row, long age, int[] weak) {
    long grain = pins.state(GRAIN);
    int rest = restsHigh(row * COLUMNS) ? 1 : 0;
    for (int cell = row * COLUMNS; cell < (row + 1) * COLUMNS; cell++) {
      long keeps =
          among(weak, cell) ? Retention.defective(grain, cell) : Retention.sound(grain, cell);
      if (age >= Retention.warm(keeps, pins.caseTenths()) && pins.cell(CELLS, cell) != rest) {
        pins.hold(CELLS, cell, rest);
      }
    }
  }

  @Override
  public boolean commitsEveryPhase() {
    return true;
  }

  @Override
  public void powerOn(Pins pins, PowerOn chance) {
    for (int word = 0; word < CELLS.count() / Long.SIZE; word++) {
      pins.holdBits(CELLS, word * Long.SIZE, chance.draw(word));
    }
    pins.hold(GRAIN, chance.draw(CELLS.count() / Long.SIZE));
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
