package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;
import faultfinch.signal.State;

/**
 * The pins of the processor; its instructions live in {@link faultfinch.part.mpu6502}, and the
 * machine puts what the core asks of the bus into the words below before it settles a phase.
 */
public final class M6502 extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
          +----v----+
  VSS1  --|1      40|<-  RES/
  RDY   ->|2      39|->  PHI2
  PHI1  <-|3      38|<-  SO
  IRQ/  ->|4      37|<-  PHI0
  NC1   --|5      36|--  NC3
  NMI/  ->|6      35|--  NC2
  SYNC  <-|7      34|->  RW
  VCC   --|8      33|<>  D0
  A0    <-|9      32|<>  D1
  A1    <-|10     31|<>  D2
  A2    <-|11     30|<>  D3
  A3    <-|12     29|<>  D4
  A4    <-|13     28|<>  D5
  A5    <-|14     27|<>  D6
  A6    <-|15     26|<>  D7
  A7    <-|16     25|->  A15
  A8    <-|17     24|->  A14
  A9    <-|18     23|->  A13
  A10   <-|19     22|->  A12
  A11   <-|20     21|--  VSS2
          +---------+
  NMOS; input RDY IRQ/ NMI/ PHI0 SO RES/; data D; unconnected NC; supply VCC; ground VSS1 VSS2;
  A drives NMOS LSI; D drives NMOS LSI; RW drives NMOS LSI; SYNC drives NMOS LSI;
  PHI1 drives NMOS LSI; PHI2 drives NMOS LSI
  Not modelled: address set-up time within the cycle, the output delay of PHI1 and PHI2.""");

  /** The address on the bus. */
  public static final State ADDRESS = PINOUT.state("address", 16);

  /** 1 for a read. */
  public static final State READ = PINOUT.state("read", 1);

  /** 1 in the first cycle of an instruction. */
  public static final State SYNC = PINOUT.state("sync", 1);

  /** What a write puts on the data lines. */
  public static final State DATA = PINOUT.state("data", 8);

  private static final Bus A = PINOUT.bus("A");
  private static final Bus D = PINOUT.bus("D");
  private static final long RW_PIN = PINOUT.pin("RW");
  private static final long SYNC_PIN = PINOUT.pin("SYNC");
  private static final long PHI1 = PINOUT.pin("PHI1");
  private static final long PHI2 = PINOUT.pin("PHI2");

  @Override
  public void settle(Pins pins) {
    boolean high = pins.phase().processorHalf();
    boolean reads = pins.state(READ) != 0;
    pins.drive(A, (int) pins.state(ADDRESS));
    pins.drive(RW_PIN, reads);
    pins.drive(SYNC_PIN, pins.state(SYNC) != 0);
    pins.drive(PHI1, !high);
    pins.drive(PHI2, high);
    if (!reads && pins.phase().ordinal() >= Phase.C_COL.ordinal()) {
      pins.drive(D, (int) pins.state(DATA));
    }
  }

  @Override
  public void powerOn(Pins pins, PowerOn chance) {
    pins.hold(READ, 1);
    pins.hold(ADDRESS, chance.draw(0) & 0xFFFF);
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
