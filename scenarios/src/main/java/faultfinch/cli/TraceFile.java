package faultfinch.cli;

import faultfinch.bench.Legs;
import faultfinch.board.Pad;
import faultfinch.machine.Machine;
import faultfinch.machine.PhaseTap;
import faultfinch.signal.Phase;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Levels of some pins as a VCD file, one time step a nanosecond since power-on. A pin between low
 * and high, or that does not come to rest, is x, one that nothing drives is z. Source: IEEE 1364,
 * value change dump.
 */
final class TraceFile implements PhaseTap {
  private static final int LOW_BELOW_MV = 800;
  private static final int HIGH_ABOVE_MV = 2000;
  private static final char FIRST_CODE = '!';

  private final Machine machine;
  private final Legs legs;
  private final List<Pad> pads;
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

  /** Nanoseconds from the start of a cycle to the start of each phase, at the clock as it runs. */
  private static long[] starts(Machine machine) {
    List<Integer> lengths = machine.board().phaseNanoseconds();
    double hertz = machine.processorHertz();
    double stretch = hertz > 0 ? 1e9 / hertz / machine.board().cycleNanoseconds() : 1;
    long[] starts = new long[lengths.size()];
    double start = 0;
    for (int i = 0; i < starts.length; i++) {
      starts[i] = (long) start;
      start += lengths.get(i) * stretch;
    }
    return starts;
  }

  /** Its time is that of the cycle, so the phase's own is added. */
  @Override
  public void settled(Phase phase, long nanoseconds) {
    boolean timed = false;
    last = nanoseconds + starts[phase.ordinal()];
    for (int i = 0; i < levels.length; i++) {
      char level = level(pads.get(i));
      if (level != levels[i]) {
        if (!timed) {
          text.append('#').append(last).append('\n');
          text.append(begun ? "" : "$dumpvars\n");
          timed = true;
        }
        levels[i] = level;
        text.append(level).append(code(i)).append('\n');
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
