package faultfinch.machine;

import faultfinch.board.KeyPress;
import faultfinch.part.Monitor;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Runs one set-up on both machines and says where they first differ: in what the processor's pins
 * saw in any cycle; in stored state at the instruction boundaries of the last 256 cycles; in what
 * the tables say of every part's pins in those; in the levels of all nets at the end.
 */
final class Agreement {
  private static final int LAST_CYCLES = 256;
  private static final int LONGER = 64;

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

  /**
   * What came of a comparison.
   *
   * @param difference the first one, in words
   * @param compared cycles from tables that were held, pin by pin, against the plain machine's
   */
  record Outcome(Optional<String> difference, long compared) {

    /** This one, and another of the same board if this one found no difference. */
    Outcome then(Supplier<Outcome> other) {
      if (difference.isPresent()) {
        return this;
      }
      Outcome next = other.get();
      return new Outcome(next.difference, compared + next.compared);
    }
  }

  /** Runs both machines from power-on. */
  static Outcome ofRuns(Setup setup, long nanoseconds) {
    int most = (int) (nanoseconds / (setup.board().cycleNanoseconds() / 2)) + 64;
    Digest fastPins = new Digest(most);
    Digest plainPins = new Digest(most);
    PinReports reports = new PinReports(4 * LAST_CYCLES);
    Machine fast = new Machine(setup, Machine.Kind.FAST, both(() -> fastPins, () -> reports));
    Machine plain = new Machine(setup, Machine.Kind.PLAIN, plainPins);
    long steps = nanoseconds - LAST_CYCLES * setup.board().cycleNanoseconds();
    new Script(setup.board().exercise()).runTo(fast, steps);
    new Script(setup.board().exercise()).runTo(plain, steps);
    reports.begin(fast, plain);
    return new Outcome(
        lastCycles(new Pair(fast, plain, fastPins, plainPins, reports), nanoseconds),
        reports.compared());
  }

  /**
   * Starts plain machines where a fast one stands, and runs both on; all the tables say in that
   * time is compared. Where no cycle came from a table the fast machine is the plain one, and slow:
   * from the second mark on that ends it.
   *
   * @param marks nanoseconds since power-on, ascending
   * @param exercise what to press and when
   */
  static Outcome fromMarks(Setup setup, List<KeyPress> exercise, List<Long> marks, long cycles) {
    int most = 2 * (int) cycles;
    Digest[] fastPins = {new Digest(0)};
    PinReports[] reports = {new PinReports(1)};
    Machine fast = new Machine(setup, Machine.Kind.FAST, both(() -> fastPins[0], () -> reports[0]));
    Script script = new Script(exercise);
    long compared = 0;
    for (long mark : marks) {
      script.runTo(fast, mark);
      Digest plainPins = new Digest(most);
      fastPins[0] = new Digest(most);
      reports[0] = new PinReports(most);
      Machine plain = fast.continuedPlainly(plainPins);
      reports[0].begin(fast, plain);
      long end = mark + cycles * setup.board().cycleNanoseconds();
      long steps = end - LAST_CYCLES * setup.board().cycleNanoseconds();
      plain.runTo(steps);
      fast.runTo(steps);
      Optional<String> difference =
          lastCycles(new Pair(fast, plain, fastPins[0], plainPins, reports[0]), end);
      compared += reports[0].compared();
      if (difference.isPresent()) {
        return new Outcome(difference.map(text -> text + " after " + mark + " ns"), compared);
      }
      if (mark > marks.get(0) && reports[0].compared() == 0) {
        break;
      }
    }
    return new Outcome(Optional.empty(), compared);
  }

  private static CycleTap both(Supplier<Digest> digest, Supplier<PinReports> reports) {
    return (cycle, address, value, reads, sync, control) -> {
      digest.get().cycle(cycle, address, value, reads, sync, control);
      reports.get().cycle(cycle, address, value, reads, sync);
    };
  }

  /** Two machines that have run equally long, and what was noted of them. */
  private record Pair(
      Machine fast, Machine plain, Digest fastPins, Digest plainPins, PinReports reports) {}

  /** Plays what is left cycle by cycle, the plain machine ahead, as far as instructions allow. */
  private static Optional<String> lastCycles(Pair pair, long end) {
    Machine fast = pair.fast;
    Machine plain = pair.plain;
    long cycle = plain.setup().board().cycleNanoseconds();
    // Where a picture half runs by itself, a run ends with cycles played; so it must be longer.
    boolean clockwork = fast.bus() instanceof FastBus bus && bus.reach().clockwork.any();
    long stride = clockwork ? LONGER * cycle : cycle;
    for (long at = end - LAST_CYCLES * cycle; at <= end; at += stride) {
      plain.runTo(at);
      fast.runTo(at);
      int pins = pair.fastPins.firstDifference(pair.plainPins);
      if (pins >= 0) {
        return Optional.of("processor pins differ at its bus call " + pins);
      }
      if (pair.reports.difference().isPresent()) {
        return pair.reports.difference();
      }
      if (fast.cycles() != plain.cycles()) {
        return Optional.of(fast.cycles() + " cycles against " + plain.cycles());
      }
      Optional<String> state = state(fast, plain);
      if (state.isPresent()) {
        return Optional.of(state.get() + " at cycle " + plain.cycles());
      }
    }
    return levels(fast, plain);
  }

  /**
   * Nanoseconds by which a row may have been strobed later than the fast machine notes: it keeps no
   * clock for a row that is strobed in every round of the clockwork, so that an access from the
   * tables, which strobes it once more, is not noted. A processor that is held makes none.
   */
  private static double mayLag(Machine fast) {
    int round = fast.bus() instanceof FastBus bus && !fast.held() ? bus.round() : 0;
    return round * fast.plain().levels.cycleNanoseconds();
  }

  private static Optional<String> state(Machine fast, Machine plain) {
    if (fast.processorHertz() > 0) {
      fast.bus().show();
    }
    Circuit c = plain.plain().circuit;
    for (int p = 0; p < c.parts.length; p++) {
      // What a monitor shows is right a frame after the picture is looked at.
      if (p == c.cpu || c.parts[p] instanceof Monitor) {
        continue;
      }
      int words = c.parts[p].pinout().words().size();
      for (int w = c.wordBase[p]; w < c.wordBase[p] + words; w++) {
        boolean rowClock =
            c.parts[p].pinout().words().get(w - c.wordBase[p]).name().endsWith("since");
        long lag = plain.store().words()[w] - fast.store().words()[w];
        if (rowClock && lag > 0 && lag < mayLag(fast)) {
          continue;
        }
        if (fast.store().words()[w] != plain.store().words()[w]) {
          return Optional.of(
              c.refs[p] + " word " + c.parts[p].pinout().words().get(w - c.wordBase[p]).name());
        }
      }
    }
    byte[] cells = plain.store().cells().clone();
    for (int p = 0; p < c.parts.length; p++) {
      if (c.parts[p] instanceof Monitor) {
        int count = c.parts[p].pinout().cellCount();
        System.arraycopy(fast.store().cells(), c.cellBase[p], cells, c.cellBase[p], count);
      }
    }
    int cell = Arrays.mismatch(fast.store().cells(), cells);
    return cell < 0 ? Optional.empty() : Optional.of("cell " + cell);
  }

  private static String pads(Circuit c, int net) {
    StringBuilder pads = new StringBuilder();
    for (int g = 0; g < c.netOf.length; g++) {
      if (c.netOf[g] == net) {
        int p = c.partOf[g];
        pads.append(" ").append(c.refs[p]).append(".");
        pads.append(c.parts[p].pinout().pins().get(c.bitOf[g]).name());
      }
    }
    return pads.toString();
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
                + pads(p.circuit, net)
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
