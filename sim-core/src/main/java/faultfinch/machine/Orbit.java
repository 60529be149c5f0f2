package faultfinch.machine;

import faultfinch.part.Counting;
import faultfinch.part.RowMemory;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The clockwork's way round: what its running parts store at the start of every cycle until they
 * stand where they stood, found by playing one round on a copy; and how many steps its counting
 * parts take in each. From then on any later cycle can be looked up.
 */
final class Orbit {
  private static final int LONGEST = 4_096;
  private static final int CHECKED = 8;

  private final PlainCycle plain;
  private final Circuit c;
  private final int[] runners;
  private final int[] counters;
  private final long[] shown;

  /** First cycle of the round that was played. */
  private long start;

  private int length;
  private long[][] words;

  /** Steps that each counting part has taken in a round before each of its cycles. */
  private int[][] steps;

  /** Whether something that shows moves in a cycle of the round. */
  private boolean[] moves;

  private boolean shows;

  private final int[] keyed;

  /** Whether every row of every memory that forgets is strobed in each round. */
  private boolean refreshes;

  /** Cycle at whose start the counting parts stand now. */
  private long at;

  /** The first cycle in which a counting part moves what shows; found out up to that. */
  private long countedUntil = -1;

  private Orbit(PlainCycle plain, Clockwork clockwork) {
    this.plain = plain;
    this.c = plain.circuit;
    this.runners = clockwork.runners();
    this.counters = clockwork.counters();
    this.shown = Arrays.stream(counters).mapToLong(clockwork::shown).toArray();
    this.keyed = keyed(clockwork);
  }

  private int[] keyed(Clockwork clockwork) {
    return Arrays.stream(clockwork.keys).map(net -> plain.levels.mv[net]).toArray();
  }

  /**
   * Plays a round.
   *
   * @param cycle the cycle about to begin; the levels stand at the end of the one before
   * @return empty if the clockwork does not come round soon, or something outside disturbs it
   */
  static Optional<Orbit> from(PlainCycle plain, Reach reach, Influence influence, long cycle) {
    Orbit orbit = new Orbit(plain, reach.clockwork);
    return orbit.play(reach, influence, cycle) ? Optional.of(orbit) : Optional.empty();
  }

  private boolean play(Reach reach, Influence influence, long cycle) {
    start = cycle;
    at = cycle;
    Store store = plain.store.copy();
    Levels levels = new Levels(c, store, 1);
    levels.continueFrom(plain.levels);
    levels.refreshed = true;
    levels.counted = new int[c.parts.length];
    PlainCycle understudy = new PlainCycle(c, levels, store);
    Influence eyes = influence.on(understudy);
    List<long[]> found = new ArrayList<>();
    List<int[]> counts = new ArrayList<>();
    List<Boolean> moved = new ArrayList<>();
    boolean[][] strobed = new boolean[c.parts.length][];
    int[] seen = shownLevels(levels, reach.clockwork);
    boolean[] moving = new boolean[1];
    understudy.watchPhases(
        (phase, ns) -> {
          moving[0] |= !Arrays.equals(seen, shownLevels(levels, reach.clockwork));
          if (phase == Phase.V_ROW) {
            strobes(levels, eyes, strobed);
          }
        });
    long[] first = stored(store);
    while (found.size() < LONGEST) {
      found.add(stored(store));
      counts.add(counts(levels));
      moving[0] = false;
      understudy.turn();
      int[] now = shownLevels(levels, reach.clockwork);
      moving[0] |= !Arrays.equals(seen, now);
      System.arraycopy(now, 0, seen, 0, now.length);
      moved.add(moving[0]);
      if (!Arrays.equals(keyed, keyedOf(levels, reach.clockwork))) {
        return false;
      }
      if (Arrays.equals(first, stored(store))) {
        counts.add(counts(levels));
        keep(found, counts, moved, strobed);
        return true;
      }
    }
    return false;
  }

  private void keep(
      List<long[]> found, List<int[]> counts, List<Boolean> moved, boolean[][] strobed) {
    length = found.size();
    words = found.toArray(long[][]::new);
    steps = counts.toArray(int[][]::new);
    moves = new boolean[length];
    for (int i = 0; i < length; i++) {
      moves[i] = moved.get(i);
      shows |= moves[i];
    }
    refreshes = true;
    for (int p = 0; p < c.parts.length; p++) {
      if (c.alive[p] && c.parts[p] instanceof RowMemory) {
        refreshes &= strobed[p] != null && all(strobed[p]);
      }
    }
  }

  private static boolean all(boolean[] rows) {
    for (boolean row : rows) {
      if (!row) {
        return false;
      }
    }
    return true;
  }

  private static int[] keyedOf(Levels levels, Clockwork clockwork) {
    return Arrays.stream(clockwork.keys).map(net -> levels.mv[net]).toArray();
  }

  private static int[] shownLevels(Levels levels, Clockwork clockwork) {
    int n = clockwork.visible.length;
    int[] shown = new int[n];
    for (int net = 0; net < n; net++) {
      shown[net] = clockwork.visible[net] ? levels.mv[net] << 2 | levels.kind[net] : 0;
    }
    return shown;
  }

  private int[] counts(Levels levels) {
    return Arrays.stream(counters).map(p -> levels.counted[p]).toArray();
  }

  private long[] stored(Store store) {
    int n = 0;
    for (int p : runners) {
      n += c.parts[p].pinout().words().size();
    }
    long[] stored = new long[n];
    int i = 0;
    for (int p : runners) {
      int size = c.parts[p].pinout().words().size();
      System.arraycopy(store.words(), c.wordBase[p], stored, i, size);
      i += size;
    }
    return stored;
  }

  /** Notes the rows strobed now that are strobed whatever the processor does. */
  private void strobes(Levels levels, Influence eyes, boolean[][] strobed) {
    eyes.alone();
    for (int p = 0; p < c.parts.length; p++) {
      if (c.alive[p] && c.parts[p] instanceof RowMemory row) {
        long in = levels.pins[p].in;
        long latch = c.parts[p].pinout().role(Pin.Role.LATCH);
        if (row.strobes(in) && !eyes.swayed(p, latch | row.address().mask())) {
          int rows = 1 << row.address().width();
          strobed[p] = strobed[p] == null ? new boolean[rows] : strobed[p];
          strobed[p][row.address().of(in)] = true;
        }
      }
    }
  }

  /** Whether rows need no clocks while the clockwork goes this way. */
  boolean refreshes() {
    return refreshes;
  }

  /** Whether the running parts stand as this way says, and what steers them is as it was. */
  boolean holds(long cycle, Clockwork clockwork) {
    return cycle >= start
        && Arrays.equals(words[index(cycle)], stored(plain.store))
        && Arrays.equals(keyed, keyed(clockwork));
  }

  private int index(long cycle) {
    return (int) ((cycle - start) % length);
  }

  /** Steps of a counting part from the first cycle of the round to the start of this one. */
  private long steps(int counter, long cycle) {
    long rounds = (cycle - start) / length;
    return rounds * steps[length][counter] + steps[index(cycle)][counter];
  }

  /** The counting parts stand right at the start of this cycle, however they came there. */
  void standAt(long cycle) {
    at = cycle;
    countedUntil = -1;
  }

  /** Puts everything that runs by itself where it is at the start of a cycle. */
  void bringTo(long cycle) {
    int i = 0;
    long[] now = words[index(cycle)];
    for (int p : runners) {
      int size = c.parts[p].pinout().words().size();
      System.arraycopy(now, i, plain.store.words(), c.wordBase[p], size);
      i += size;
      plain.levels.touch(p);
    }
    for (int k = 0; k < counters.length; k++) {
      Counting part = (Counting) c.parts[counters[k]];
      part.advance(plain.levels.pins[counters[k]], steps(k, cycle) - steps(k, at), 0);
      plain.levels.touch(counters[k]);
    }
    at = cycle;
  }

  /** First cycle from the one at hand in which something moves that shows. */
  long nextShown(long cycle) {
    long next = Long.MAX_VALUE;
    for (int i = 0; shows && i < length && next == Long.MAX_VALUE; i++) {
      next = moves[index(cycle + i)] ? cycle + i : next;
    }
    if (countedUntil < cycle) {
      countedUntil = counted();
    }
    return Math.min(next, countedUntil);
  }

  /** First cycle in which a counting part moves what shows, looked for on a copy of its words. */
  private long counted() {
    long first = Long.MAX_VALUE;
    for (int k = 0; k < counters.length; k++) {
      long round = steps[length][k];
      if (shown[k] == 0 || round == 0) {
        continue;
      }
      int p = counters[k];
      int size = c.parts[p].pinout().words().size();
      long[] kept = Arrays.copyOfRange(plain.store.words(), c.wordBase[p], c.wordBase[p] + size);
      boolean moved = plain.levels.moved;
      long taken =
          ((Counting) c.parts[p]).advance(plain.levels.pins[p], CHECKED * round * length, shown[k]);
      System.arraycopy(kept, 0, plain.store.words(), c.wordBase[p], size);
      plain.levels.moved = moved;
      // Even if nothing moved that far, it is looked at anew from there.
      first = Math.min(first, cycleOf(k, steps(k, at) + taken));
    }
    return first;
  }

  /** The cycle in which a counting part takes its step of this number, counted from the start. */
  private long cycleOf(int counter, long step) {
    long round = steps[length][counter];
    long rounds = (step - 1) / round;
    long left = step - rounds * round;
    int i = 0;
    while (steps[i + 1][counter] < left) {
      i++;
    }
    return start + rounds * length + i;
  }
}
