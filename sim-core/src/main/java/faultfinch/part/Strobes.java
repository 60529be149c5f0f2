package faultfinch.part;

import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/**
 * Makes the strobes of dynamic memory out of a divided dot clock: row, column, address switch and
 * picture latch, for the video half and for the processor half. While EN is low it makes none. MUX
 * is high while the row is on the address pins.
 */
public final class Strobes extends Part {

  static final Pinout PINOUT =
      Pinout.drawn(
          """
          +----v----+
  EN    ->|1       8|--  VCC
  RAS/  <-|2       7|->  MUX
  VCAS/ <-|3       6|->  PIC
  GND   --|4       5|->  CCAS/
          +---------+
  LS; input EN; supply VCC; ground GND; RAS/ follows EN; VCAS/ follows EN; CCAS/ follows EN;
  MUX follows EN; PIC follows EN; RAS/ drives LS gate; VCAS/ drives LS gate; CCAS/ drives LS gate;
  MUX drives LS gate; PIC drives LS gate
  Not modelled: the dot clock it counts (the phase stands for it). What it drives between two
  halves, where RAS/ is high, is on a page of its own.""");

  private static final long EN = PINOUT.pin("EN");
  private static final long RAS = PINOUT.pin("RAS/");
  private static final long VIDEO_COLUMN = PINOUT.pin("VCAS/");
  private static final long PROCESSOR_COLUMN = PINOUT.pin("CCAS/");
  private static final long MUX = PINOUT.pin("MUX");
  private static final long PICTURE = PINOUT.pin("PIC");

  @Override
  public void settle(Pins pins) {
    boolean runs = pins.high(EN);
    Phase phase = pins.phase();
    boolean row = phase == Phase.V_ROW || phase == Phase.C_ROW;
    pins.drive(RAS, !runs);
    pins.drive(VIDEO_COLUMN, !runs || row || phase.processorHalf());
    pins.drive(PROCESSOR_COLUMN, !runs || row || !phase.processorHalf());
    pins.drive(MUX, runs && row);
    pins.drive(PICTURE, runs && phase == Phase.V_LATCH);
  }

  @Override
  public boolean followsPhase() {
    return true;
  }

  @Override
  public Pinout pinout() {
    return PINOUT;
  }
}
