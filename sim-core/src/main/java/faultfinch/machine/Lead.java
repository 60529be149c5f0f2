package faultfinch.machine;

import faultfinch.signal.Phase;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * The lead to the set while somebody looks at the picture. Lines that are known are not played: the
 * processor runs on tables, and the set reads what came over the lead when the line was played
 * first. All others are played and remembered. When the look is over the machine and its set stand
 * as if every cycle had been played.
 *
 * <p>How: a known line is believed as long as the processor does nothing that it depends on, see
 * {@link Overlooked}. If it does, a machine that was set aside before plays what was skipped.
 */
public final class Lead {
  private static final int PHASES = Phase.values().length;

  /** Cycles that have to be played until all that takes data stands right. */
  private static final int FRESH = 32;

  /** Passes after which another machine is set aside, so that going back is not far. */
  private static final int ASIDE = 40;

  /** Cycles without a new line after which what follows is taken for one. */
  private static final int LONG = 128;

  /** Longer than any instruction: passes end where one ends. */
  private static final int INSTRUCTION = 8;

  private final Machine machine;

  /** What is shared with other boards; empty if nothing is. */
  private final Optional<Shared> shared;

  private record Shared(
      PictureHalf half,
      PictureLines lines,
      SetReading set,
      int[][] nets,
      int[] memories,
      int[] buffers) {}

  /** Lines that are known, the one under way first. */
  private final Deque<Known> ahead = new ArrayDeque<>();

  private record Known(long from, PictureLines.Line line) {
    long until() {
      return from + line.lead().length / PHASES;
    }
  }

  /** The line that is played and was not known. */
  private Optional<LineUnderWay> underWay = Optional.empty();

  /** Half cycle at which the last line began that was seen to, by the set. */
  private long lineFrom;

  /** Cycle at which the last line began that was seen to, the set's or what was taken for one. */
  private long began;

  /** Whether what takes data for the picture does not stand right, for it was not played. */
  private boolean stale;

  /** A machine that stands where the first line was skipped, and the passes since. */
  private Optional<Machine> aside = Optional.empty();

  private final List<Long> passes = new ArrayList<>();
  private Optional<Overlooked> overlooked = Optional.empty();

  /** A lead of a board that shares no lines. */
  Lead(Machine machine) {
    this.machine = machine;
    shared = Optional.empty();
  }

  Lead(Machine machine, PictureHalf half, PictureLines lines) {
    this.machine = machine;
    SetReading set = new SetReading(machine, half.monitor);
    int[][] nets = half.nets(machine.plain().circuit);
    shared = Optional.of(new Shared(half, lines, set, nets, half.memories(), half.buffers()));
    lineFrom = set.lineFrom();
    began = machine.cycles();
  }

  /**
   * Lets so many cycles pass, and what is left of the instruction.
   *
   * @param last whether the look ends with them at the latest
   */
  public void pass(long cycles, boolean last) {
    if (shared.isEmpty()) {
      machine.play(cycles, (phase, ns) -> {});
      return;
    }
    if (overlooked.isEmpty()) {
      watch(shared.get());
    }
    boolean relied = stale;
    if (!last && known(shared.get(), cycles)) {
      relied = true;
      skim(shared.get(), cycles);
    } else {
      play(shared.get(), cycles);
    }
    passes.add(cycles);
    long now = machine.cycles();
    while (!ahead.isEmpty() && ahead.peek().until() <= now) {
      ahead.remove();
    }
    overlooked.ifPresent(o -> o.passed(now));
    if (overlooked.filter(Overlooked::spoilt).isPresent()) {
      if (relied) {
        goBack(shared.get());
      }
      forget(shared.get());
    }
  }

  /** Has the processor watched anew. */
  private void watch(Shared with) {
    Levels levels = machine.plain().levels;
    Overlooked by = new Overlooked(levels, with.half().slowNets(levels.circuit));
    overlooked = Optional.of(by);
    bus().overlookedBy(by);
  }

  /** What was known of the lines under way no longer holds. */
  private void forget(Shared with) {
    ahead.clear();
    underWay = Optional.empty();
    watch(with);
  }

  /** The look is over: nobody watches the processor any more. */
  public void end() {
    if (overlooked.isPresent()) {
      overlooked = Optional.empty();
      bus().overlookedBy(null);
    }
  }

  private FastBus bus() {
    return (FastBus) machine.bus();
  }

  /** Whether the next cycles are of known lines and end no frame, and what comes then is known. */
  private boolean known(Shared with, long cycles) {
    Levels levels = machine.plain().levels;
    boolean far = stale && passes.size() >= ASIDE;
    if (far || ahead.isEmpty() || !bus().runsFree() || bus().replays()) {
      return false;
    }
    long from = machine.cycles();
    while (ahead.peekLast().until() < from + cycles + 2 * INSTRUCTION + FRESH) {
      Known end = ahead.peekLast();
      Optional<PictureLines.Line> next = with.lines().find(end.line().next(), levels);
      if (next.isEmpty()) {
        return false;
      }
      expect(new Known(end.until(), next.get()));
    }
    for (long cycle = from; cycle < from + cycles + INSTRUCTION; cycle++) {
      for (int phase = 0; phase < PHASES; phase++) {
        if (SetReading.endsFrame(read(cycle, phase))) {
          return false;
        }
      }
    }
    return true;
  }

  private void expect(Known known) {
    ahead.add(known);
    overlooked.orElseThrow().expect(known.until(), known.line().fetched(), known.line().found());
  }

  private boolean knows(long cycle) {
    return !ahead.isEmpty() && cycle < ahead.peekLast().until();
  }

  /** What the set reads in a phase of a known line. */
  private int read(long cycle, int phase) {
    for (Known known : ahead) {
      if (cycle >= known.from() && cycle < known.until()) {
        return known.line().lead()[(int) (cycle - known.from()) * PHASES + phase];
      }
    }
    throw new IllegalStateException("no line at cycle " + cycle);
  }

  private void skim(Shared with, long cycles) {
    if (!stale) {
      aside = Optional.of(machine.moment());
      passes.clear();
    }
    long from = machine.cycles();
    // Some cycles are played all the same, and the set reads what then stands on the lead.
    SetReading.Kept before = with.set().kept();
    bus().pass(from + cycles);
    with.set().put(before);
    if (!bus().runsFree()) {
      overlooked.get().spoil();
    }
    stale = true;
    with.set().again(from, machine.cycles(), this::read);
    lineFrom = with.set().lineFrom();
    for (Known known : ahead) {
      began = known.from() <= machine.cycles() ? known.from() : began;
    }
  }

  /** Plays some cycles; what the set read before the picture stood right it reads again. */
  private void play(Shared with, long cycles) {
    long from = machine.cycles();
    Playing playing = new Playing(with, stale ? from + FRESH : from);
    SetReading.Kept before = with.set().kept();
    Levels levels = machine.plain().levels;
    levels.recorder = playing;
    machine.play(cycles, (phase, nanoseconds) -> playing.settled(phase));
    levels.recorder = Recorder.NONE;
    if (stale) {
      with.set().put(before);
      with.set()
          .again(
              from,
              machine.cycles(),
              (cycle, phase) ->
                  knows(cycle)
                      ? read(cycle, phase)
                      : playing.lead[(int) (cycle - from) * PHASES + phase]);
    }
    stale = false;
  }

  /** The processor did what the picture depends on: what was skipped is played after all. */
  private void goBack(Shared with) {
    Machine plain = aside.orElseThrow();
    for (long cycles : passes) {
      plain.play(cycles, (phase, ns) -> {});
    }
    if (plain.cycles() != machine.cycles()) {
      throw new IllegalStateException(
          "two machines at cycle " + plain.cycles() + " and " + machine.cycles());
    }
    machine.rest();
    Circuit c = machine.plain().circuit;
    Levels levels = machine.plain().levels;
    for (int p = 0; p < c.parts.length; p++) {
      if (bus().reach().clockwork.takers[p]) {
        int words = c.parts[p].pinout().words().size();
        int from = c.wordBase[p];
        System.arraycopy(plain.store().words(), from, machine.store().words(), from, words);
        levels.touch(p);
      }
    }
    with.set().put(new SetReading(plain, with.half().monitor).kept());
    levels.settle();
    for (int p = 0; p < c.parts.length; p++) {
      if (bus().reach().clockwork.takers[p]) {
        // An edge that the cycle left is seen with the next.
        levels.pins[p].rose = plain.plain().levels.pins[p].rose;
        levels.pins[p].fell = plain.plain().levels.pins[p].fell;
      }
    }
    stale = false;
    lineFrom = with.set().lineFrom();
    began = machine.cycles();
  }

  /** Cycles that are played, the lines in them remembered. */
  private final class Playing implements Recorder {
    private static final int SOME = 1 << 10;

    private final Shared with;
    private final PlainCycle plain = machine.plain();
    private final Levels levels = plain.levels;

    /** The cell that each part looked up last. */
    private final int[] looked = new int[plain.circuit.parts.length];

    /** The cycle from which all that takes data stands right. */
    private final long rightFrom;

    private byte[] lead = new byte[SOME];
    private int read;

    Playing(Shared with, long rightFrom) {
      this.with = with;
      this.rightFrom = rightFrom;
    }

    void settled(Phase phase) {
      if (phase == Phase.V_ROW) {
        boolean another = with.set().lineFrom() != lineFrom || levels.now >= began + LONG;
        if (another || !ahead.isEmpty() && ahead.peekLast().until() == levels.now) {
          lineFrom = with.set().lineFrom();
          began = levels.now;
          begins(began);
        }
      }
      lead = read == lead.length ? Arrays.copyOf(lead, 2 * read) : lead;
      lead[read++] = with.set().now();
      underWay.ifPresent(line -> settled(phase, line));
    }

    /** A line begins with this cycle. */
    private void begins(long cycle) {
      boolean spoilt = overlooked.orElseThrow().spoilt();
      if (spoilt || !bus().runsFree() || !with.half().standsIn(levels)) {
        // What the line begins with does not tell all of it.
        underWay = Optional.empty();
        return;
      }
      PictureLines.Start start = with.lines().start(with.half().state(plain));
      underWay.ifPresent(line -> line.ends(cycle, with.lines(), start));
      underWay = Optional.empty();
      if (knows(cycle) || cycle < rightFrom) {
        return;
      }
      Known last = ahead.peekLast();
      if (last != null && (cycle != last.until() || last.line().next() != start)) {
        overlooked.orElseThrow().spoil();
        return;
      }
      Optional<PictureLines.Line> line = with.lines().find(start, levels);
      if (line.isPresent()) {
        expect(new Known(cycle, line.get()));
      } else {
        underWay = Optional.of(new LineUnderWay(cycle, start));
      }
    }

    private void settled(Phase phase, LineUnderWay line) {
      line.reads(with.set().now());
      for (int net : with.nets()[phase.ordinal()]) {
        if (levels.kind[net] == Levels.FLOATS || levels.kind[net] == Levels.OSCILLATES) {
          line.unfit();
        }
      }
      if (phase == Phase.V_LATCH && takes()) {
        for (int p : with.memories()) {
          int found = levels.pins[p].found(looked[p]);
          boolean high = (levels.driven[p] & levels.bits[p]) != 0;
          if (levels.driven[p] == 0 || high != (found != 0)) {
            line.unfit();
          }
          line.fetches(p, looked[p], found);
        }
      }
    }

    /** Whether anybody takes what memory shows in the phase now settled. */
    private boolean takes() {
      boolean takes = false;
      for (int p : with.buffers()) {
        PartPins pins = levels.pins[p];
        takes |=
            (pins.rose & plain.circuit.risePins[p] | pins.fell & plain.circuit.fallPins[p]) != 0;
      }
      return takes;
    }

    @Override
    public void held(int part, boolean changed) {
      // Words are part of what a line begins with.
    }

    @Override
    public void looked(int part, int cell) {
      looked[part] = cell;
      if (levels.phase == Phase.V_LATCH && with.half().looksUp(part)) {
        underWay.ifPresent(l -> l.fetches(part, cell, levels.pins[part].found(cell)));
      }
    }

    @Override
    public void stored(int part, int cell) {
      // What is stored is found later.
    }
  }
}
