package faultfinch.cli;

import faultfinch.bench.Legs;
import faultfinch.board.Pad;
import faultfinch.machine.Machine;
import java.util.Optional;
import java.util.function.BiConsumer;

/**
 * Edges of a clock that moves within the phases of a cycle, as the oscillator does and what it
 * drives before the processor, and a row strobe. It is low first: in the first half of the cycle
 * the picture is fetched.
 *
 * @param cycle nanoseconds
 * @param times periods in a cycle
 * @param duty share of a period that it is high, 0 to 1
 */
record ClockWave(double cycle, int times, double duty) {

  /** Of a leg; empty if what moves there does so with the phases, or nothing does. */
  static Optional<ClockWave> at(Machine machine, Legs legs, Pad leg) {
    double processor = machine.processorHertz();
    double hertz = processor > 0 ? legs.clockHertz(machine, leg) : 0;
    int times = (int) StrictMath.round(hertz / processor);
    return hertz >= processor && times > 0
        ? Optional.of(new ClockWave(1e9 / processor, times, legs.clockDuty(machine, leg)))
        : Optional.empty();
  }

  /**
   * Tells the edges of a cycle within a part of it, in their order.
   *
   * @param from nanoseconds from the start of the cycle, whose edge is told too
   * @param to the same, whose edge is not told
   * @param edge given the nanosecond in the cycle and whether it is high from there on
   */
  void edges(long from, long to, BiConsumer<Long, Boolean> edge) {
    for (int i = 0; i < times; i++) {
      long falls = (long) (i * cycle / times);
      long rises = (long) ((i + 1 - duty) * cycle / times);
      if (falls >= from && falls < to) {
        edge.accept(falls, false);
      }
      if (rises >= from && rises < to) {
        edge.accept(rises, true);
      }
    }
  }
}
