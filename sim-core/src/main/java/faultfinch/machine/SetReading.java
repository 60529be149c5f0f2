package faultfinch.machine;

import faultfinch.part.Monitor;
import faultfinch.signal.Phase;
import faultfinch.signal.Pinout;
import java.util.Arrays;

/**
 * What the set at the end of the picture lead reads in a phase, in one byte; and the set reading it
 * once more, when the phase was not played.
 */
final class SetReading {
  private static final Phase[] PHASES = Phase.values();
  private static final Pinout SET = new Monitor().pinout();
  private static final long HS = SET.pin("HS/");
  private static final long VS = SET.pin("VS/");
  private static final long[] PINS = {SET.pin("R"), SET.pin("G"), SET.pin("B"), HS, VS};
  private static final int FELL = 1 << PINS.length;
  private static final int ROSE = FELL << 1;

  private final Machine machine;
  private final int monitor;

  SetReading(Machine machine, int monitor) {
    this.machine = machine;
    this.monitor = monitor;
  }

  /** Where the bytes of cycles are to be had. */
  interface Source {
    int read(long cycle, int phase);
  }

  /** Whether a frame ends in this phase. */
  static boolean endsFrame(int read) {
    return (read & ROSE) != 0;
  }

  /** What the set reads in the phase now settled. */
  byte now() {
    PartPins pins = machine.plain().levels.pins[monitor];
    int packed = ((pins.rose & VS) != 0 ? ROSE : 0) | ((pins.fell & HS) != 0 ? FELL : 0);
    for (int i = 0; i < PINS.length; i++) {
      packed |= (pins.in & PINS[i]) != 0 ? 1 << i : 0;
    }
    return (byte) packed;
  }

  /** Half cycle at which the line under way began, by the set. */
  long lineFrom() {
    int at = machine.plain().circuit.wordBase[monitor] + Monitor.LINE_FROM.offset();
    return machine.store().words()[at];
  }

  /** The set reads these cycles. */
  void again(long from, long to, Source source) {
    PlainCycle plain = machine.plain();
    Levels levels = plain.levels;
    PartPins pins = levels.pins[monitor];
    long now = levels.now;
    Phase phase = levels.phase;
    boolean moved = levels.moved;
    long in = pins.in;
    long rose = pins.rose;
    long fell = pins.fell;
    for (long cycle = from; cycle < to; cycle++) {
      levels.now = cycle;
      for (int i = 0; i < PHASES.length; i++) {
        int read = source.read(cycle, i);
        levels.phase = PHASES[i];
        pins.in = unpacked(read);
        pins.rose = (read & ROSE) != 0 ? VS : 0;
        pins.fell = (read & FELL) != 0 ? HS : 0;
        plain.circuit.parts[monitor].commit(pins, PHASES[i]);
      }
    }
    levels.now = now;
    levels.phase = phase;
    levels.moved = moved;
    pins.in = in;
    pins.rose = rose;
    pins.fell = fell;
  }

  private static long unpacked(int packed) {
    long in = 0;
    for (int i = 0; i < PINS.length; i++) {
      in |= (packed >>> i & 1) != 0 ? PINS[i] : 0;
    }
    return in;
  }

  /** What the set keeps. */
  record Kept(long[] words, byte[] cells) {}

  Kept kept() {
    Circuit c = machine.plain().circuit;
    Store store = machine.store();
    int word = c.wordBase[monitor];
    int cell = c.cellBase[monitor];
    return new Kept(
        Arrays.copyOfRange(store.words(), word, word + c.parts[monitor].pinout().words().size()),
        Arrays.copyOfRange(store.cells(), cell, cell + c.parts[monitor].pinout().cellCount()));
  }

  void put(Kept kept) {
    Circuit c = machine.plain().circuit;
    Store store = machine.store();
    System.arraycopy(kept.words(), 0, store.words(), c.wordBase[monitor], kept.words().length);
    System.arraycopy(kept.cells(), 0, store.cells(), c.cellBase[monitor], kept.cells().length);
  }
}
