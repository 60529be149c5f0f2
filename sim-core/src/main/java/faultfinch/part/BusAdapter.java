package faultfinch.part;

import faultfinch.signal.Bus;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import faultfinch.signal.Pinout;
import faultfinch.signal.Pins;

/**
 * The way from pins to registers, made from role lines: select, register, direction, data and
 * clock.
 *
 * <p>A register is read or written where the clock falls at the end of a cycle, and only if the
 * clock pin was low in the video half: a pin stuck at one level has no edges.
 */
public final class BusAdapter {
  private final long selectHigh;
  private final long selectLow;
  private final long direction;
  private final long clock;
  private final Bus register;
  private final Bus data;

  /** Reads the roles of a drawing whose register and data pins form the buses of these names. */
  public BusAdapter(Pinout pinout, String register, String data) {
    long high = 0;
    long low = 0;
    for (Pin pin : pinout.pins()) {
      if (pin.role() == Pin.Role.SELECT) {
        high |= pin.activeLow() ? 0 : pin.mask();
        low |= pin.activeLow() ? pin.mask() : 0;
      }
    }
    this.selectHigh = high;
    this.selectLow = low;
    this.direction = pinout.role(Pin.Role.DIRECTION);
    this.clock = pinout.role(Pin.Role.CLOCK_FALLS);
    this.register = pinout.bus(register);
    this.data = pinout.bus(data);
  }

  private boolean selected(long in) {
    return (in & selectHigh) == selectHigh && (in & selectLow) == 0;
  }

  void drive(BusDevice device, Pins pins) {
    long in = pins.in();
    if (selected(in) && (in & direction) != 0 && (in & clock) != 0) {
      pins.drive(data, device.look(pins, register.of(in)));
    }
  }

  void commit(BusDevice device, Pins pins, Phase phase) {
    long in = pins.in();
    boolean falls = (in & clock) != 0 && (pins.before() & clock) == 0;
    if (phase != Phase.C_END || !falls) {
      return;
    }
    if (!selected(in)) {
      return;
    }
    int at = register.of(in);
    if ((in & direction) != 0) {
      device.afterRead(pins, at);
    } else {
      device.write(pins, at, data.of(in));
    }
  }
}
