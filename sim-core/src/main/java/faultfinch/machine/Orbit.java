package faultfinch.machine;

import faultfinch.part.Counting;
import faultfinch.part.RowMemory;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The clockwork's way round: what its running parts store at the start of every cycle until they
 * stand where they stood, found by playing one round on a copy; and how many steps its counting
 * parts take in each. From then on any later cycle can be looked up.
 */
final class Orbit {
  private static final int LONGEST = 4_096;

  /** Steps of a counting part that are looked through at once for one that shows. */
  private static final int LOOKED_AHEAD = 20_000;

  private final PlainCycle plain;
  private final Circuit c;
  private final int[] runners;
  private final int[] counters;
  private final long[] shown;

  /** First cycle of the round that was played. */
  private long start;

  private int length;

  private int played;
  private long[][] words;

  /** Steps that each counting part has taken in a round before each of its cycles. */
  private int[][] steps;

  /** Whether something that shows moves in a cycle of the round. */
  private boolean[] moves;

  private boolean shows;
  private final boolean interruptsOnly;

  private final int[] keyed;

  /** Per memory that forgets, the rows strobed in each round whatever the processor does. */
  private boolean[][] strobed;

  /** Whether a memory stored something in the round that was played, whoever wanted it to. */
  private boolean stores;

  /** When those rows are strobed. */
  private StrobeTimes strobes;

  /** The cycle at which this way was last taken up. */
  private long takenUp;

  private RowSchedule schedule;

  /** Whether the counting parts show the addresses that their steps alone would have led to. */
  private boolean current = true;

  /** Whether they ever did not: what goes on as before since then is another frame. */
  private boolean outdated;

  /** Whether somebody relies on the picture going on as it did. */
  private boolean watched;

  private boolean disturbed;

  /** Whether somebody relies on the moves of counting parts that were looked for. */
  private boolean planned;

  private int turns;

  /** What each counting part stored at that cycle. */
  private final long[][] wordsThen;

  private final byte[][] cellsThen;

  /** Cycle at whose start the counting parts stand now. */
  private long at;

  /** The first cycle in which a counting part moves what shows; found out up to that. */
  private long countedUntil = -1;

  /** The same way of another wiring that is kin to its own. */
  private Orbit(PlainCycle plain, Orbit like) {
    this.plain = plain;
    this.c = plain.circuit;
    this.runners = like.runners;
    this.counters = like.counters;
    this.wordsThen = like.wordsThen.clone();
    this.cellsThen = like.cellsThen.clone();
    this.shown = like.shown;
    this.interruptsOnly = like.interruptsOnly;
    this.keyed = like.keyed;
    this.start = like.start;
    this.length = like.length;
    this.words = like.words;
    this.steps = like.steps;
    this.moves = like.moves;
    this.shows = like.shows;
    this.strobed = like.strobed;
    this.stores = like.stores;
    this.strobes = like.strobes;
    this.schedule = like.schedule == null ? null : like.schedule.again();
    this.at = like.at;
  }

  private Orbit(PlainCycle plain, Clockwork clockwork) {
    this.plain = plain;
    this.c = plain.circuit;
    this.runners = clockwork.runners();
    this.counters = clockwork.counters();
    this.wordsThen = new long[counters.length][];
    this.cellsThen = new byte[counters.length][];
    this.shown = Arrays.stream(counters).mapToLong(clockwork::shown).toArray();
    this.interruptsOnly = clockwork.interruptsOnly();
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

  /**
   * The same way in a wiring that is kin to its own, if what runs by itself is on it there, and in
   * the frame that was written down, if one was.
   */
  Optional<Orbit> on(PlainCycle other, Clockwork clockwork, long cycle) {
    Orbit way = new Orbit(other, this);
    boolean another = schedule != null && outdated;
    if (another || at > cycle || !way.holds(cycle, clockwork)) {
      return Optional.empty();
    }
    way.standAt(cycle);
    return way.current() ? Optional.of(way) : Optional.empty();
  }

  private boolean play(Reach reach, Influence influence, long cycle) {
    start = cycle;
    at = cycle;
    remember();
    PlainCycle understudy = copy();
    Levels levels = understudy.levels;
    Store store = understudy.store;
    Influence eyes = influence.on(understudy);
    eyes.only(rowPins());
    int[] visible = visible(reach.clockwork);
    int[] keys = reach.clockwork.keys;
    List<long[]> found = new ArrayList<>();
    List<int[]> counts = new ArrayList<>();
    List<Boolean> moved = new ArrayList<>();
    strobed = rows();
    boolean[][] swayed = rows();
    List<int[]> surely = new ArrayList<>();
    int[] seen = shownLevels(levels, visible);
    boolean[] moving = new boolean[1];
    understudy.watchPhases(
        (phase, ns) -> {
          moving[0] |= moved(seen, levels, visible);
          stores = stores || eyes.memoryStores();
          if (phase == Phase.V_ROW) {
            surely.add(strobes(levels, eyes, swayed));
          }
        });
    long[] first = stored(store);
    while (found.size() < LONGEST) {
      found.add(stored(store));
      counts.add(counts(levels));
      moving[0] = false;
      understudy.turn();
      moving[0] |= moved(seen, levels, visible);
      System.arraycopy(shownLevels(levels, visible), 0, seen, 0, seen.length);
      moved.add(moving[0]);
      for (int i = 0; i < keys.length; i++) {
        if (keyed[i] != levels.mv[keys[i]]) {
          return false;
        }
      }
      if (Arrays.equals(first, stored(store))) {
        counts.add(counts(levels));
        keep(found, counts, moved);
        strobes = new StrobeTimes(c, surely);
        boolean runs = lasts(plain.levels) && (covered(swayed) || scheduled());
        played = length + (schedule == null ? 0 : schedule.played());
        return runs;
      }
    }
    return false;
  }

  private void keep(List<long[]> found, List<int[]> counts, List<Boolean> moved) {
    length = found.size();
    words = found.toArray(long[][]::new);
    steps = counts.toArray(int[][]::new);
    moves = new boolean[length];
    for (int i = 0; i < length; i++) {
      moves[i] = moved.get(i);
      shows |= moves[i];
    }
  }

  private boolean[][] rows() {
    boolean[][] rows = new boolean[c.parts.length][];
    for (int p = 0; p < rows.length; p++) {
      if (c.parts[p] instanceof RowMemory row) {
        rows[p] = new boolean[1 << row.address().width()];
      }
    }
    return rows;
  }

  private boolean[][] everyRow() {
    boolean[][] rows = rows();
    for (boolean[] of : rows) {
      if (of != null) {
        Arrays.fill(of, true);
      }
    }
    return rows;
  }

  /** Whether every memory keeps what it holds for longer than a round. */
  private boolean lasts(Levels levels) {
    double round = length * levels.cycleNanoseconds();
    for (int p = 0; p < c.parts.length; p++) {
      if (c.parts[p] instanceof RowMemory row && row.keeps(levels.pins[p]) <= round) {
        return false;
      }
    }
    return true;
  }

  /** Whether the rows strobed at times are among those strobed always. */
  private boolean covered(boolean[][] swayed) {
    for (int p = 0; p < swayed.length; p++) {
      for (int row = 0; swayed[p] != null && row < swayed[p].length; row++) {
        if (swayed[p][row] && !strobed[p][row]) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether the picture strobes in time, frame by frame, what is not strobed in every round. */
  private boolean scheduled() {
    schedule = RowSchedule.record(plain, copy(), length, counters, strobed, start).orElse(null);
    return schedule != null;
  }

  /** A machine that stands where this one stands, and keeps no clocks for rows. */
  private PlainCycle copy() {
    Store store = plain.store.copy();
    Levels levels = new Levels(c, store, 1);
    levels.continueFrom(plain.levels);
    levels.refreshed = everyRow();
    levels.counted = new int[c.parts.length];
    return new PlainCycle(c, levels, store);
  }

  /** Notes in the memories when rows were last strobed for which no clock is kept. */
  void noteStrobed(long cycle) {
    strobes.note(plain, start, takenUp, cycle);
  }

  /** Whether memory is not what it was after a round in which the processor did nothing. */
  boolean stores() {
    return stores;
  }

  /** Whether every row of every memory is strobed in every round. */
  boolean strobesAll() {
    for (int p = 0; p < strobed.length; p++) {
      for (int row = 0; c.alive[p] && strobed[p] != null && row < strobed[p].length; row++) {
        if (!strobed[p][row]) {
          return false;
        }
      }
    }
    return true;
  }

  /** Notes in the memories when the picture last strobed their rows; now, or if it is time. */
  void noteRows(long cycle, boolean now) {
    if (schedule != null) {
      schedule.note(plain, cycle, now);
    }
  }

  /** This way is taken up at a cycle. */
  void begin(long cycle) {
    takenUp = cycle;
    if (schedule != null) {
      schedule.begin(cycle);
    }
  }

  /** Whether the picture strobes a row of a memory in time, so that it cannot run out. */
  boolean pictured(int part, int row) {
    return schedule != null && schedule.strobes(part, row);
  }

  /** Whether the frame is as it was written down, if it was; once it was not it never is again. */
  boolean current() {
    return schedule == null || current && !outdated;
  }

  private static int[] visible(Clockwork clockwork) {
    return IntStream.range(0, clockwork.visible.length)
        .filter(net -> clockwork.visible[net])
        .toArray();
  }

  private static int shown(Levels levels, int net) {
    return levels.mv[net] << 2 | levels.kind[net];
  }

  private static int[] shownLevels(Levels levels, int[] visible) {
    int[] shown = new int[visible.length];
    for (int i = 0; i < shown.length; i++) {
      shown[i] = shown(levels, visible[i]);
    }
    return shown;
  }

  private static boolean moved(int[] seen, Levels levels, int[] visible) {
    boolean moved = false;
    for (int i = 0; i < seen.length; i++) {
      moved |= seen[i] != shown(levels, visible[i]);
    }
    return moved;
  }

  private int[] counts(Levels levels) {
    int[] counts = new int[counters.length];
    for (int k = 0; k < counts.length; k++) {
      counts[k] = levels.counted[counters[k]];
    }
    return counts;
  }

  /** Per memory that forgets the pins that say which of its rows is strobed, and whether. */
  private long[] rowPins() {
    long[] pins = new long[c.parts.length];
    for (int p = 0; p < pins.length; p++) {
      if (c.parts[p] instanceof RowMemory row) {
        pins[p] = row.address().mask() | c.parts[p].pinout().role(Pin.Role.LATCH);
      }
    }
    return pins;
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

  /**
   * Notes the rows strobed now, apart those that are so whatever the processor does; says which
   * each part so strobes, or -1.
   */
  private int[] strobes(Levels levels, Influence eyes, boolean[][] swayed) {
    int[] surely = new int[c.parts.length];
    Arrays.fill(surely, -1);
    eyes.alone();
    for (int p = 0; p < c.parts.length; p++) {
      if (c.alive[p] && c.parts[p] instanceof RowMemory row) {
        long in = levels.pins[p].in;
        boolean maybe = swayed(levels, eyes, p, c.parts[p].pinout().role(Pin.Role.LATCH));
        if (maybe || row.strobes(in)) {
          int free = 0;
          for (int i = 0; i < row.address().width(); i++) {
            free |= swayed(levels, eyes, p, 1L << row.address().shift() + i) ? 1 << i : 0;
          }
          boolean sure = !maybe && free == 0;
          boolean[] rows = sure ? strobed[p] : swayed[p];
          surely[p] = sure ? row.address().of(in) : -1;
          int base = row.address().of(in) & ~free;
          int some = 0;
          do {
            rows[base | some] = true;
            some = some - free & free;
          } while (some != 0);
        }
      }
    }
    return surely;
  }

  /** Whether something else has a say in a pin, if only by what it left on a net that floats. */
  private static boolean swayed(Levels levels, Influence eyes, int p, long pin) {
    return eyes.swayed(p, pin) || levels.keeps(p, pin);
  }

  /** Cycles that were played to find it; 0 of one that is the way of another wiring too. */
  int played() {
    return played;
  }

  /** Cycles in which it comes round. */
  int round() {
    return length;
  }

  /** Per memory that forgets, the rows that need no clock while the clockwork goes this way. */
  boolean[][] strobed() {
    return strobed;
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

  /**
   * The counting parts stand right at the start of this cycle. If they came there by their steps
   * alone, what was found out about their next steps still holds.
   */
  void standAt(long cycle) {
    boolean alike = true;
    current = true;
    boolean asked = countedUntil >= 0 || schedule != null || watched || planned;
    for (int k = 0; k < counters.length && asked; k++) {
      Counting part = (Counting) c.parts[counters[k]];
      PartPins pins = plain.levels.pins[counters[k]];
      long[] real = wordsOf(k);
      long[] shows = part.addressing(pins);
      long[] pictures = part.picturing(pins);
      boolean cells = Arrays.equals(cellsOf(k), cellsThen[k]);
      boolean steered = cells || Arrays.equals(part.steering(pins), steeringThen(k));
      System.arraycopy(wordsThen[k], 0, plain.store.words(), c.wordBase[counters[k]], real.length);
      advance(k, steps(k, cycle) - steps(k, at), 0);
      alike &= cells && Arrays.equals(real, wordsOf(k));
      current &= steered && Arrays.equals(shows, part.addressing(pins));
      boolean turned = !cells || !Arrays.equals(pictures, part.picturing(pins));
      disturbed |= turned;
      turns += turned ? 1 : 0;
      System.arraycopy(real, 0, plain.store.words(), c.wordBase[counters[k]], real.length);
    }
    countedUntil = alike ? countedUntil : -1;
    outdated |= !current;
    at = cycle;
    remember();
  }

  /** Tells from now on whether the picture went on as it did. */
  void watchPicture(boolean watch) {
    watched = watch;
    disturbed = false;
  }

  /** Whether a counting part was told to show something else, since this is watched. */
  boolean disturbed() {
    return disturbed;
  }

  private void remember() {
    for (int k = 0; k < counters.length; k++) {
      wordsThen[k] = wordsOf(k);
      cellsThen[k] = cellsOf(k);
    }
  }

  private long[] wordsOf(int counter) {
    int p = counters[counter];
    int from = c.wordBase[p];
    return Arrays.copyOfRange(plain.store.words(), from, from + c.parts[p].pinout().words().size());
  }

  private byte[] cellsOf(int counter) {
    int p = counters[counter];
    int from = c.cellBase[p];
    return Arrays.copyOfRange(plain.store.cells(), from, from + c.parts[p].pinout().cellCount());
  }

  /** What steered a counting part when it was last remembered. */
  private long[] steeringThen(int counter) {
    int p = counters[counter];
    byte[] now = cellsOf(counter);
    System.arraycopy(cellsThen[counter], 0, plain.store.cells(), c.cellBase[p], now.length);
    long[] then = ((Counting) c.parts[p]).steering(plain.levels.pins[p]);
    System.arraycopy(now, 0, plain.store.cells(), c.cellBase[p], now.length);
    return then;
  }

  private long advance(int counter, long count, long watched) {
    int p = counters[counter];
    boolean moved = plain.levels.moved;
    long taken = ((Counting) c.parts[p]).advance(plain.levels.pins[p], count, watched);
    plain.levels.moved = moved;
    return taken;
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
      advance(k, steps(k, cycle) - steps(k, at), 0);
      plain.levels.touch(counters[k]);
    }
    at = cycle;
    countedUntil = countedUntil < cycle ? -1 : countedUntil;
    remember();
  }

  /** Whether nothing of what moves shows to anybody but the interrupt pin of the processor. */
  boolean interruptsOnly() {
    return interruptsOnly && !shows;
  }

  /** First cycle from the one at hand in which something moves that shows. */
  long nextShown(long cycle) {
    long next = Long.MAX_VALUE;
    long from = Math.max(cycle, start);
    for (int i = 0; shows && i < length && next == Long.MAX_VALUE; i++) {
      next = moves[index(from + i)] ? from + i : next;
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
      long[] kept = wordsOf(k);
      long taken = advance(k, LOOKED_AHEAD, shown[k]);
      System.arraycopy(kept, 0, plain.store.words(), c.wordBase[counters[k]], kept.length);
      // Even if nothing moved that far, it is looked at anew from there.
      first = Math.min(first, cycleOf(k, steps(k, at) + taken));
    }
    return first;
  }

  /**
   * The last of the cycles from one to before another in which a counting part moves some of these
   * outputs, or -1; looked for on a copy of its words. A move in the very last may be left out.
   */
  long lastMove(int k, long outputs, long from, long before) {
    if (steps[length][k] == 0 || before <= at) {
      return -1;
    }
    planned = true;
    long[] kept = wordsOf(k);
    long base = steps(k, at);
    long taken = steps(k, Math.max(from, at)) - base;
    long end = steps(k, before) - base;
    advance(k, taken, 0);
    long last = -1;
    while (taken < end) {
      taken += advance(k, end - taken, outputs);
      last = taken < end ? taken : last;
    }
    System.arraycopy(kept, 0, plain.store.words(), c.wordBase[counters[k]], kept.length);
    return last < 0 ? -1 : cycleOf(k, base + last);
  }

  /** How often the picture has gone on otherwise than by its steps alone. */
  int turns() {
    return turns;
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
