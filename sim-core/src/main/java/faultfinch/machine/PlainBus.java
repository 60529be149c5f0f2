package faultfinch.machine;

/** The plain machine: every cycle by its six phases. */
final class PlainBus extends CycleBus {
  PlainBus(Machine machine) {
    super(machine);
  }

  @Override
  public int fetch(int address) {
    return played(address, true, 0, true);
  }

  @Override
  public int read(int address) {
    return played(address, true, 0, false);
  }

  @Override
  public void write(int address, int value) {
    played(address, false, value, false);
  }

  @Override
  void materialise() {
    // The levels are always those of the last cycle.
  }

  @Override
  void run(long until) {
    while (core.cycle < until) {
      careful(until);
    }
  }
}
