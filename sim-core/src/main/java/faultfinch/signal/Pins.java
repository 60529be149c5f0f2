package faultfinch.signal;

/** What a part sees of the world: the bits its pins read, what it drives, and its own state. */
public interface Pins {

  /** The bits read at the pins, one bit a pin in the order of the {@link Pinout}. */
  long in();

  /** The bits the pins read in the last phase of this cycle's video half. */
  long before();

  /** Millivolts at one pin whose role is to take them. */
  int millivolts(long pin);

  /**
   * Nanoseconds in which the capacitor at a pin charges to two thirds of the rail through what
   * pulls there; {@link Long#MAX_VALUE} if it never does.
   */
  long charges(long pin);

  /** Temperature of the part's case in tenths of a degree Celsius. */
  int caseTenths();

  /** The pins that rose since the part last saw a clock edge. Used in commit only. */
  long rose();

  /** The pins that fell since the part last saw a clock edge. Used in commit only. */
  long fell();

  /** Drives these pins at the levels given in the second word. Used in settle only. */
  void drive(long pins, long levels);

  /** A stored word. */
  long state(State word);

  /** Stores a word. Used in commit only. */
  void hold(State word, long value);

  /** One stored cell. */
  int cell(State cells, int index);

  /** Stores one cell. Used in commit only. */
  void hold(State cells, int index, int value);

  /** Stores 64 cells of a bit each, the lowest first. Used at power-on only. */
  default void holdBits(State cells, int from, long bits) {
    for (int i = 0; i < Long.SIZE; i++) {
      hold(cells, from + i, (int) (bits >>> i) & 1);
    }
  }

  /** Whether the part has this internal defect. */
  boolean defect(String name);

  /** The cells of the part that have this defect; none of most parts. */
  int[] cellsWith(String defect);

  /**
   * Whether a row of a memory that forgets is known to be strobed in time, so that no clock need be
   * kept for it.
   */
  default boolean refreshed(int row) {
    return false;
  }

  /** The phase being settled. */
  Phase phase();

  /** Bus cycles of the processor since power-on. */
  long now();

  /** Nanoseconds since power-on. */
  long nanoseconds();

  /** The first bus cycle that begins at or after a time; the time in nanoseconds since power-on. */
  long cycleAfter(long nanoseconds);

  /** Whether the pin reads low. */
  default boolean low(long pin) {
    return (in() & pin) == 0;
  }

  /** Whether the pin reads high. */
  default boolean high(long pin) {
    return (in() & pin) != 0;
  }

  /** The value read on a bus. */
  default int read(Bus bus) {
    return bus.of(in());
  }

  /** Drives a whole bus. Used in settle only. */
  default void drive(Bus bus, int value) {
    drive(bus.mask(), bus.at(value));
  }

  /** Drives one pin. Used in settle only. */
  default void drive(long pin, boolean high) {
    drive(pin, high ? pin : 0);
  }
}
