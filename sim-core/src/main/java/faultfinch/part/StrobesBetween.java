package faultfinch.part;

import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/**
 * What {@link Strobes} drives between two halves of a cycle, which no phase shows: the row strobe
 * is high there, so that it can fall again.
 */
public final class StrobesBetween extends Part {
  private static final long RAS = Strobes.PINOUT.pin("RAS/");
  private static final long VIDEO_COLUMN = Strobes.PINOUT.pin("VCAS/");
  private static final long PROCESSOR_COLUMN = Strobes.PINOUT.pin("CCAS/");
  private static final long MUX = Strobes.PINOUT.pin("MUX");
  private static final long PICTURE = Strobes.PINOUT.pin("PIC");

  @Override
  public void settle(Pins pins) {
    pins.drive(RAS, true);
    pins.drive(VIDEO_COLUMN, true);
    pins.drive(PROCESSOR_COLUMN, true);
    pins.drive(MUX, false);
    pins.drive(PICTURE, false);
  }

  @Override
  public Pinout pinout() {
    return Strobes.PINOUT;
  }
}
