package faultfinch.machine;

import faultfinch.part.mpu6502.Bus;

/** Shows every bus cycle of the processor to a tap; repeated ones of a replay are left out. */
final class TappedBus implements Bus {
  private final CycleBus bus;
  private final CycleTap tap;

  TappedBus(CycleBus bus, CycleTap tap) {
    this.bus = bus;
    this.tap = tap;
  }

  @Override
  public int fetch(int address) {
    boolean again = bus.replays();
    return shown(address, bus.fetch(address), true, true, again);
  }

  @Override
  public int read(int address) {
    boolean again = bus.replays();
    return shown(address, bus.read(address), true, false, again);
  }

  @Override
  public void write(int address, int value) {
    boolean again = bus.replays();
    bus.write(address, value);
    shown(address, value, false, false, again);
  }

  private int shown(int address, int value, boolean reads, boolean sync, boolean again) {
    if (!again) {
      bus.overtake();
      tap.cycle(bus.core.cycle, address, value, reads, sync, bus.processor.control());
    }
    return value;
  }
}
