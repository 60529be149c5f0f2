package faultfinch.part;

import faultfinch.signal.Phase;
import faultfinch.signal.Pins;

/**
 * A part with registers on a processor bus. The adapter in {@link BusAdapter} is the only way from
 * its pins to the register calls, so an open or stuck select, register, data or clock pin needs no
 * code of its own.
 */
public abstract class BusDevice extends Part {

  /** The adapter made from this part's role lines. */
  public abstract BusAdapter adapter();

  /** What a read of the register would return now, 0 to 255; changes nothing. */
  public abstract int look(Pins pins, int register);

  /** What a read does besides returning the value; called once at the end of the cycle. */
  public void afterRead(Pins pins, int register) {}

  /** Writes a register; value 0 to 255. */
  public abstract void write(Pins pins, int register, int value);

  /** Drives every output but the data pins. */
  public abstract void outputs(Pins pins);

  /** Called every phase while the reset pin is low or at other level inputs; may change state. */
  public void levels(Pins pins) {}

  @Override
  public void settle(Pins pins) {
    outputs(pins);
    adapter().drive(this, pins);
  }

  @Override
  public void commit(Pins pins, Phase phase) {
    levels(pins);
    adapter().commit(this, pins, phase);
  }

  @Override
  public boolean commitsEveryPhase() {
    return true;
  }
}
