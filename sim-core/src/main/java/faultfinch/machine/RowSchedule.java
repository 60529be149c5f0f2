package faultfinch.machine;

import faultfinch.part.Counting;
import faultfinch.part.RowMemory;
import faultfinch.signal.Phase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * When the picture half strobes those rows that are not strobed in every round of the clockwork:
 * found by playing one whole frame on a copy. A row so strobed cannot run out; when it was last
 * strobed can be told for any later cycle while the frame stays as it is.
 */
final class RowSchedule {
  private static final int LONGEST = 65_536;
  private static final int ALL_LINES = 0xFFFF;

  /** The times are noted in the memories at least so often, as a share of what cells keep. */
  private static final int NOTED = 4;

  private final Circuit c;
  private final long start;
  private final int frame;

  /** Per memory and row the cycles of the frame in which it is strobed, ascending; or null. */
  private final int[][][] times;

  private long notedAt;
  private final long notedEvery;

  /** Until then some row may not have been strobed yet since the frame was taken up. */
  private long wholeFrom;

  private RowSchedule(Circuit c, long start, int frame, int[][][] times, long notedEvery) {
    this.c = c;
    this.start = start;
    this.frame = frame;
    this.times = times;
    this.notedEvery = notedEvery;
    this.notedAt = start;
  }

  /**
   * Plays a frame on a copy and writes it down; and another, in which the processor shows other
   * addresses and what goes round in less than a frame stands elsewhere: it has to be the same.
   *
   * @param copy of the machine as it stands at the start of this cycle
   * @param round cycles in which the rest of the clockwork comes round
   * @param counters counting parts; the frame is over when their addresses go on as they began
   * @param always rows of each memory that need no schedule
   * @return empty if the frame does not come round, if the processor has a say in its rows, or if a
   *     row is strobed at times that are too far apart, or first too late
   */
  static Optional<RowSchedule> record(
      PlainCycle plain,
      PlainCycle copy,
      int round,
      int[] counters,
      boolean[][] always,
      long cycle) {
    List<int[]> before = new ArrayList<>();
    // A slot may last several cycles: the frame is measured from where one begins.
    for (long[] at = addressing(copy, counters); before.size() < round; ) {
      before.add(turn(copy, 0, always));
      if (!Arrays.equals(at, addressing(copy, counters))) {
        break;
      }
    }
    long[] first = addressing(copy, counters);
    List<int[]> strobed = new ArrayList<>();
    boolean left = false;
    boolean there = true;
    // It has to go on before it can come back: a slot lasts several cycles. What does not go on for
    // a round stands.
    while (strobed.size() < LONGEST && !(there && (left || strobed.size() >= round))) {
      strobed.add(turn(copy, 0, always));
      there = Arrays.equals(first, addressing(copy, counters));
      left |= !there;
    }
    if (strobed.size() == LONGEST) {
      return Optional.empty();
    }
    for (int frame = strobed.size(), i = frame; i % frame != 0 || i < round; i++) {
      strobed.add(turn(copy, 0, always));
    }
    for (int[] rows : strobed) {
      if (!Arrays.equals(rows, turn(copy, ALL_LINES, always))) {
        return Optional.empty();
      }
    }
    Collections.rotate(strobed, before.size());
    return written(plain, strobed, always, cycle);
  }

  /**
   * Plays a cycle in which the processor shows this address; the row each memory strobes first, if
   * it is one that needs a schedule.
   */
  private static int[] turn(PlainCycle copy, int address, boolean[][] always) {
    Circuit c = copy.circuit;
    int[] rows = new int[c.parts.length];
    Arrays.fill(rows, -1);
    copy.watchPhases(
        (phase, ns) -> {
          for (int p = 0; phase == Phase.V_ROW && p < rows.length; p++) {
            long in = copy.levels.pins[p].in;
            if (c.alive[p] && c.parts[p] instanceof RowMemory row && row.strobes(in)) {
              int strobed = row.address().of(in);
              rows[p] = always[p][strobed] ? -1 : strobed;
            }
          }
        });
    copy.present(address, true, 0, false);
    copy.turn();
    return rows;
  }

  private static Optional<RowSchedule> written(
      PlainCycle plain, List<int[]> strobed, boolean[][] always, long cycle) {
    Circuit c = plain.circuit;
    int[][][] times = new int[always.length][][];
    long shortest = Long.MAX_VALUE;
    for (int p = 0; p < times.length; p++) {
      times[p] = always[p] == null ? null : cycles(strobed, p, always[p].length);
      for (int row = 0; times[p] != null && row < times[p].length; row++) {
        int[] cycles = times[p][row];
        if (cycles == null) {
          continue;
        }
        RowMemory memory = (RowMemory) c.parts[p];
        PartPins pins = plain.levels.pins[p];
        long keeps = memory.keeps(pins);
        long waits = plain.levels.nanosecondsAt(cycle + cycles[0]) - memory.strobedAt(pins, row);
        double gap = widest(cycles, strobed.size()) * plain.levels.cycleNanoseconds();
        if (waits >= keeps || gap >= keeps / 2.0) {
          return Optional.empty();
        }
        shortest = Math.min(shortest, keeps);
      }
    }
    long every = (long) (shortest / NOTED / plain.levels.cycleNanoseconds());
    return Optional.of(new RowSchedule(c, cycle, strobed.size(), times, every));
  }

  /** Per row of a memory the cycles in which it is strobed, or null where it never is. */
  private static int[][] cycles(List<int[]> strobed, int p, int rows) {
    IntStream.Builder[] found = new IntStream.Builder[rows];
    for (int i = 0; i < strobed.size(); i++) {
      int row = strobed.get(i)[p];
      if (row >= 0) {
        found[row] = found[row] == null ? IntStream.builder() : found[row];
        found[row].add(i);
      }
    }
    return Arrays.stream(found)
        .map(of -> of == null ? null : of.build().toArray())
        .toArray(int[][]::new);
  }

  private static int widest(int[] cycles, int frame) {
    int widest = cycles[0] + frame - cycles[cycles.length - 1];
    for (int i = 1; i < cycles.length; i++) {
      widest = Math.max(widest, cycles[i] - cycles[i - 1]);
    }
    return widest;
  }

  /** The stored words of counting parts that say which addresses they show from here on. */
  static long[] addressing(PlainCycle machine, int[] counters) {
    return Arrays.stream(counters)
        .mapToObj(p -> ((Counting) machine.circuit.parts[p]).addressing(machine.levels.pins[p]))
        .flatMapToLong(Arrays::stream)
        .toArray();
  }

  /** Whether the picture half strobes a row in time. */
  boolean strobes(int part, int row) {
    return times[part] != null && times[part][row] != null;
  }

  /**
   * The frame is taken up at this cycle. A row may have stood almost as long as a cell keeps, so
   * that until each was strobed once none may seem older than it is.
   */
  void begin(long cycle) {
    wholeFrom = cycle + frame;
  }

  /** Notes in the memories when their rows were last strobed before this cycle, if it is time. */
  void note(PlainCycle plain, long cycle, boolean now) {
    if (!now && cycle >= wholeFrom && cycle < notedAt + notedEvery) {
      return;
    }
    notedAt = cycle;
    for (int p = 0; p < times.length; p++) {
      for (int row = 0; times[p] != null && row < times[p].length; row++) {
        long last = times[p][row] == null ? -1 : last(times[p][row], cycle);
        if (last >= start) {
          long nanoseconds = plain.levels.nanosecondsAt(last);
          ((RowMemory) c.parts[p]).strobed(plain.levels.pins[p], row, nanoseconds);
        }
      }
    }
  }

  /** The last of these cycles of the frame before a cycle, counted since power-on. */
  private long last(int[] cycles, long cycle) {
    long since = cycle - start;
    long frames = since / frame;
    int in = (int) (since - frames * frame);
    int found = Arrays.binarySearch(cycles, in);
    int before = (found >= 0 ? found : -found - 1) - 1;
    return before >= 0
        ? start + frames * frame + cycles[before]
        : start + (frames - 1) * frame + cycles[cycles.length - 1];
  }
}
