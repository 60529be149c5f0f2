package faultfinch.machine;

import faultfinch.board.KeyPress;
import faultfinch.fault.Fault;
import java.util.List;
import java.util.Optional;

/**
 * Runs one set-up on both machines and says where they first differ: in what the processor's pins
 * saw in any cycle; in stored state at the instruction boundaries of the last 256 cycles; in what
 * the tables say of every part's pins in those; in the levels of all nets at the end.
 */
final class Agreement {
  private static final int LAST_CYCLES = 256;

  private Agreement() {}

  /** A running digest of the processor's pins. */
  private static final class Digest implements CycleTap {
    private final long[] sums;
    private int size;

    Digest(int most) {
      sums = new long[most + 16];
    }

    @Override
    public void cycle(
        long cycle, int address, int value, boolean reads, boolean sync, long control) {
      long before = size == 0 ? 0 : sums[size - 1];
      long pins = address | (long) value << 16 | (reads ? 1L << 24 : 0) | (sync ? 1L << 25 : 0);
      if (size < sums.length) {
        sums[size++] = Chance.draw(before, cycle, pins, control);
      }
    }

    int firstDifference(Digest other) {
      int both = Math.min(size, other.size);
      for (int i = 0; i < both; i++) {
        if (sums[i] != other.sums[i]) {
          return i;
        }
      }
      return -1;
    }
  }

  /** The first difference in words, or empty if there is none. */
  static Optional<String> difference(Setup setup, long nanoseconds) {
    int most = (int) (nanoseconds / (setup.board().cycleNanoseconds() / 2)) + 64;
    Digest fastPins = new Digest(most);
    Digest plainPins = new Digest(most);
    PinReports reports = new PinReports(4 * LAST_CYCLES);
    CycleTap tap =
        (cycle, address, value, reads, sync, control) -> {
          fastPins.cycle(cycle, address, value, reads, sync, control);
          reports.cycle(cycle, address, value, reads, sync);
        };
    Machine fast = new Machine(setup, Machine.Kind.FAST, tap);
    Machine plain = new Machine(setup, Machine.Kind.PLAIN, plainPins);
    long cycle = setup.board().cycleNanoseconds();
    long steps = nanoseconds - LAST_CYCLES * cycle;
    new Script(setup.board().exercise()).runTo(fast, steps);
    new Script(setup.board().exercise()).runTo(plain, steps);
    reports.begin(fast, plain);
    String name = setup.faults().stream().map(Fault::text).toList().toString();
    for (long at = steps; at <= nanoseconds; at += cycle) {
      plain.runTo(at);
      fast.runTo(at);
      int pins = fastPins.firstDifference(plainPins);
      if (pins >= 0) {
        return Optional.of(name + ": processor pins differ at its bus call " + pins);
      }
      if (reports.difference().isPresent()) {
        return reports.difference().map(text -> name + ": " + text);
      }
      if (fast.cycles() != plain.cycles()) {
        return Optional.of(name + ": " + fast.cycles() + " cycles against " + plain.cycles());
      }
      Optional<String> state = state(fast, plain);
      if (state.isPresent()) {
        return Optional.of(name + ": " + state.get() + " at cycle " + plain.cycles());
      }
    }
    return levels(fast, plain).map(text -> name + ": " + text);
  }

  /**
   * Starts plain machines where a fast one stands, and says where they first differ from it.
   *
   * @param marks nanoseconds since power-on, ascending
   * @param exercise what to press and when
   */
  static Optional<String> differenceFrom(
      Setup setup, List<KeyPress> exercise, List<Long> marks, long cycles) {
    Digest[] fastPins = {new Digest(0)};
    CycleTap tap =
        (cycle, address, value, reads, sync, control) ->
            fastPins[0].cycle(cycle, address, value, reads, sync, control);
    Machine fast = new Machine(setup, Machine.Kind.FAST, tap);
    Script script = new Script(exercise);
    for (long mark : marks) {
      script.runTo(fast, mark);
      Digest plainPins = new Digest((int) cycles);
      fastPins[0] = new Digest((int) cycles);
      Machine plain = fast.continuedPlainly(plainPins);
      long end = mark + cycles * setup.board().cycleNanoseconds();
      fast.runTo(end);
      plain.runTo(end);
      int pins = fastPins[0].firstDifference(plainPins);
      if (pins >= 0) {
        return Optional.of("processor pins differ at bus call " + pins + " after " + mark + " ns");
      }
      Optional<String> state = state(fast, plain).or(() -> levels(fast, plain));
      if (state.isPresent()) {
        return state.map(text -> text + " after " + mark + " ns");
      }
    }
    return Optional.empty();
  }

  private static Optional<String> state(Machine fast, Machine plain) {
    fast.rest();
    Circuit c = plain.plain().circuit;
    for (int p = 0; p < c.parts.length; p++) {
      if (p == c.cpu) {
        continue;
      }
      int words = c.parts[p].pinout().words().size();
      for (int w = c.wordBase[p]; w < c.wordBase[p] + words; w++) {
        // Where every row is proven to be strobed in time, the fast machine keeps no clocks for
        // rows.
        boolean rowClock =
            c.parts[p].pinout().words().get(w - c.wordBase[p]).name().endsWith("since");
        if (rowClock && fast.plain().levels.refreshed) {
          continue;
        }
        if (fast.store().words()[w] != plain.store().words()[w]) {
          return Optional.of(
              c.refs[p] + " word " + c.parts[p].pinout().words().get(w - c.wordBase[p]).name());
        }
      }
    }
    int cell = java.util.Arrays.mismatch(fast.store().cells(), plain.store().cells());
    return cell < 0 ? Optional.empty() : Optional.of("cell " + cell);
  }

  private static Optional<String> levels(Machine fast, Machine plain) {
    fast.rest();
    Levels f = fast.plain().levels;
    Levels p = plain.plain().levels;
    for (int net = 0; net < p.circuit.netCount; net++) {
      if (f.mv[net] != p.mv[net] || f.kind[net] != p.kind[net]) {
        return Optional.of(
            "net "
                + p.circuit.netNames[net]
                + " "
                + f.mv[net]
                + " mV against "
                + p.mv[net]
                + " mV");
      }
    }
    return Optional.empty();
  }
}
