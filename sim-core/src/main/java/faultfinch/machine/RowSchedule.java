package faultfinch.machine;

import faultfinch.part.Counting;
import faultfinch.part.RowMemory;
import faultfinch.signal.Phase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

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

  private final long start;
  private final StrobeTimes times;

  /** Cycles that were played to write it down. */
  private final int played;

  private final long notedEvery;
  private long notedAt;

  /** The cycle at which the frame was last taken up. */
  private long from;

  private RowSchedule(long start, StrobeTimes times, int played, long notedEvery) {
    this.start = start;
    this.times = times;
    this.played = played;
    this.notedEvery = notedEvery;
    this.notedAt = start;
    this.from = start;
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
    return written(plain, strobed, cycle);
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

  private static Optional<RowSchedule> written(PlainCycle plain, List<int[]> strobed, long cycle) {
    StrobeTimes times = new StrobeTimes(plain.circuit, strobed);
    long shortest = Long.MAX_VALUE;
    for (int p = 0; p < plain.circuit.parts.length; p++) {
      for (int row = 0; row < times.rows(p); row++) {
        if (!times.strobes(p, row)) {
          continue;
        }
        RowMemory memory = (RowMemory) plain.circuit.parts[p];
        PartPins pins = plain.levels.pins[p];
        long keeps = memory.keeps(pins);
        long first = plain.levels.nanosecondsAt(cycle + times.first(p, row));
        double gap = times.widest(p, row) * plain.levels.cycleNanoseconds();
        if (first - memory.strobedAt(pins, row) >= keeps || gap >= keeps / 2.0) {
          return Optional.empty();
        }
        shortest = Math.min(shortest, keeps);
      }
    }
    long every = (long) (shortest / NOTED / plain.levels.cycleNanoseconds());
    return Optional.of(new RowSchedule(cycle, times, 2 * strobed.size(), every));
  }

  /** The stored words of counting parts that say which addresses they show from here on. */
  static long[] addressing(PlainCycle machine, int[] counters) {
    return Arrays.stream(counters)
        .mapToObj(p -> ((Counting) machine.circuit.parts[p]).addressing(machine.levels.pins[p]))
        .flatMapToLong(Arrays::stream)
        .toArray();
  }

  /** The same frame, to be taken up by another wiring of the same picture half. */
  RowSchedule again() {
    return new RowSchedule(start, times, 0, notedEvery);
  }

  int played() {
    return played;
  }

  /** Whether the picture half strobes a row in time. */
  boolean strobes(int part, int row) {
    return times.strobes(part, row);
  }

  /**
   * The frame is taken up at this cycle. A row may have stood almost as long as a cell keeps, so
   * that until each was strobed once none may seem older than it is.
   */
  void begin(long cycle) {
    from = cycle;
  }

  /** Notes in the memories when their rows were last strobed before this cycle, if it is time. */
  void note(PlainCycle plain, long cycle, boolean now) {
    if (!now && cycle >= from + times.length() && cycle < notedAt + notedEvery) {
      return;
    }
    notedAt = cycle;
    times.note(plain, start, from, cycle);
  }
}
