package faultfinch.cli;

import faultfinch.bench.Legs;
import faultfinch.board.Pad;
import faultfinch.machine.Machine;
import faultfinch.machine.PhaseTap;
import faultfinch.signal.Phase;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;

/**
 * Levels of some pins as a VCD file, one time step a nanosecond since power-on. A pin between low
 * and high, or that does not come to rest, is x, one that nothing drives is z; a clock that moves
 * within phases has its own edges. Source: IEEE 1364, value change dump.
 */
final class TraceFile implements PhaseTap {
  private static final int LOW_BELOW_MV = 800;
  private static final int HIGH_ABOVE_MV = 2000;
  private static final char FIRST_CODE = '!';

  private final Machine machine;
  private final Legs legs;
  private final List<Pad> pads;
  private final List<Optional<ClockWave>> clocks;
  private final char[] levels;
  private final long[] starts;
  private final StringBuilder text = new StringBuilder();
  private boolean begun;
  private long last;

  /**
   * Of the legs, where a clip would hold.
   *
   * @param pads at most 90: each has a code of one letter
   */
  TraceFile(Machine machine, Legs legs, List<Pad> pads) {
    this.machine = machine;
    this.legs = legs;
    this.pads = List.copyOf(pads);
    this.clocks = pads.stream().map(pad -> ClockWave.at(machine, legs, pad)).toList();
    this.levels = new char[pads.size()];
    this.starts = starts(machine);
    text.append("$timescale 1 ns $end\n$scope module ");
    text.append(machine.board().name()).append(" $end\n");
    for (int i = 0; i < pads.size(); i++) {
      text.append("$var wire 1 ").append(code(i)).append(' ').append(pads.get(i).text());
      text.append(" $end\n");
    }
    text.append("$upscope $end\n$enddefinitions $end\n");
  }

  /** Nanoseconds from the start of a cycle to the start of each phase, and to the next cycle's. */
  private static long[] starts(Machine machine) {
    List<Integer> lengths = machine.board().phaseNanoseconds();
    double hertz = machine.processorHertz();
    double stretch = hertz > 0 ? 1e9 / hertz / machine.board().cycleNanoseconds() : 1;
    long[] starts = new long[lengths.size() + 1];
    double start = 0;
    for (int i = 0; i < lengths.size(); i++) {
      starts[i] = (long) start;
      start += lengths.get(i) * stretch;
    }
    starts[lengths.size()] = (long) start;
    return starts;
  }

  /** Its time is that of the cycle, so the phase's own is added. */
  @Override
  public void settled(Phase phase, long nanoseconds) {
    long from = starts[phase.ordinal()];
    long to = starts[phase.ordinal() + 1];
    SortedMap<Long, Map<Integer, Character>> changes = new TreeMap<>();
    for (int i = 0; i < levels.length; i++) {
      int pin = i;
      BiConsumer<Long, Character> change =
          (at, level) -> changes.computeIfAbsent(at, t -> new TreeMap<>()).put(pin, level);
      clocks
          .get(i)
          .ifPresentOrElse(
              clock -> clock.edges(from, to, (at, high) -> change.accept(at, high ? '1' : '0')),
              () -> change.accept(from, level(pads.get(pin))));
    }
    changes.forEach((at, levels) -> write(nanoseconds + at, levels));
    last = Math.max(last, nanoseconds + from);
  }

  private void write(long nanoseconds, Map<Integer, Character> now) {
    boolean timed = false;
    for (Map.Entry<Integer, Character> pin : now.entrySet()) {
      int i = pin.getKey();
      if (pin.getValue() != levels[i]) {
        if (!timed) {
          text.append('#').append(nanoseconds).append('\n');
          text.append(begun ? "" : "$dumpvars\n");
          timed = true;
          last = nanoseconds;
        }
        levels[i] = pin.getValue();
        text.append(pin.getValue()).append(code(i)).append('\n');
      }
    }
    if (!begun && timed) {
      text.append("$end\n");
      begun = true;
    }
  }

  /** The bytes of the file so far; it ends with the time of the last phase. */
  byte[] bytes() {
    return (text + "#" + last + "\n").getBytes(StandardCharsets.US_ASCII);
  }

  private char level(Pad pad) {
    if (legs.floats(machine, pad)) {
      return 'z';
    }
    if (legs.oscillates(machine, pad)) {
      return 'x';
    }
    int millivolts = legs.millivolts(machine, pad);
    return millivolts < LOW_BELOW_MV ? '0' : millivolts > HIGH_ABOVE_MV ? '1' : 'x';
  }

  private static char code(int i) {
    return (char) (FIRST_CODE + i);
  }
}
