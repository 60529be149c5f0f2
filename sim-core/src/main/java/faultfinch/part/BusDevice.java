package faultfinch.part;

import faultfinch.signal.Phase;
import faultfinch.signal.Pins;

/**
 * A part with registers on a processor bus. The adapter in {@link BusAdapter} is the only way from
 * its pins to the register calls, so an open or stuck select, register, data or clock pin needs no
 * code of its own.
 */
public interface BusDevice extends Part {

  /** The adapter made from this part's role lines. */
  BusAdapter adapter();

  /** What a read of the register would return now, 0 to 255; changes nothing. */
  int look(Pins pins, int register);

  /** What a read does besides returning the value; called once at the end of the cycle. */
  default void afterRead(Pins pins, int register) {}

  /** Writes a register; value 0 to 255. */
  void write(Pins pins, int register, int value);

  /** Drives every output but the data pins. */
  void outputs(Pins pins);

  /** Called every phase while the reset pin is low or at other level inputs; may change state. */
  default void levels(Pins pins) {}

  @Override
  default void settle(Pins pins) {
    outputs(pins);
    adapter().drive(this, pins);
  }

  @Override
  default void commit(Pins pins, Phase phase) {
    levels(pins);
    adapter().commit(this, pins, phase);
  }

  @Override
  default boolean commitsEveryPhase() {
    return true;
  }
}
