package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.Board;
import faultfinch.board.Pad;
import faultfinch.machine.Finger;
import faultfinch.machine.Frames;
import faultfinch.machine.Heat;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.machine.Witness;
import faultfinch.symptom.Glass;
import faultfinch.symptom.Symptoms;
import faultfinch.symptom.Watching;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Predicate;

/**
 * What every passive look would show, out of one run: the board starts, its keys are worked, and at
 * declared times windows of cycles are watched phase by phase.
 */
public final class Survey {
  private static final int HEALTHY_BOARDS = 16;

  /** After everything, so that whatever a run stored by then is looked at once more. */
  private static final int LAST_CYCLES = 16;

  /** A case above 60 degrees burns. */
  private static final int BURNS_TENTHS = 600;

  private final Board board;
  private final Schedule schedule;
  private final List<Look> looks;
  private final List<Pad> places;

  private final Heat healthyHeat;
  private final boolean many;

  /** Pictures that boards of a seed share. */
  private final Map<Long, Frames> frames = new HashMap<>();

  /** Healthy boards that were followed, by seed. */
  private final Map<Long, Followed> followed = new HashMap<>();

  private Survey(Board board, boolean many) {
    this.board = board;
    this.many = many;
    List<Heat> heats = new ArrayList<>();
    Seldom round = new Seldom();
    List<Long> seldom = new ArrayList<>();
    Watching healthy =
        Watching.of(
            Setup.healthy(board, Schedule.SEED),
            Map.of(
                Seldom.from(board),
                round::round,
                Schedule.idle(board),
                m -> {
                  heats.add(m.heat());
                  seldom.addAll(round.starts(m));
                }));
    schedule = Schedule.of(board, healthy.milestones(), seldom);
    healthyHeat = heats.get(0);
    looks = Looks.passive(board);
    places =
        looks.stream()
            .filter(l -> l.kind() == Instruments.METER)
            .map(l -> Looks.pad(l.place()))
            .toList();
  }

  /** Gets ready to survey runs of a board; when to look is learnt from its healthy run. */
  public static Survey on(Board board) {
    return new Survey(board, false);
  }

  /**
   * The same for hundreds of faults and more: the healthy board is run once more and followed phase
   * by phase, which takes as long as twenty runs, and a fault of which it can be told from that
   * that every part would have done the same is not run.
   */
  public static Survey ofMany(Board board) {
    return new Survey(board, true);
  }

  /** One survey; whoever makes many of one board uses {@link #on} once. */
  public static SortedMap<Look, String> of(Setup setup) {
    return on(setup.board()).features(setup);
  }

  /** The looks surveyed: {@link Looks#passive}. */
  public List<Look> looks() {
    return looks;
  }

  /**
   * One run.
   *
   * @param readings of every look
   * @param trail a digest of all that happened while it was watched; see {@link Trail}
   */
  public record Run(SortedMap<Look, Reading> readings, long trail) {
    public Run {
      readings = Collections.unmodifiableSortedMap(new TreeMap<>(readings));
    }

    /** Feature of every look. */
    public SortedMap<Look, String> features() {
      SortedMap<Look, String> features = new TreeMap<>();
      readings.forEach((look, reading) -> features.put(look, reading.feature()));
      return features;
    }
  }

  /** Feature of every look. */
  public SortedMap<Look, String> features(Setup setup) {
    return run(setup).features();
  }

  /** Reading of every look. */
  public SortedMap<Look, Reading> readings(Setup setup) {
    return run(setup).readings();
  }

  /** Runs a board and looks at all of it. */
  public Run run(Setup setup) {
    return watched(setup, Optional.empty());
  }

  /**
   * Runs one board and looks at others that do the same, on every pin and in every stored bit, as
   * it: they stand where it stood and settle there on their own wiring. One whose supplies say that
   * it may do something else, or with a net that carries what it was left with, is run by itself.
   *
   * @param alike the first is run
   */
  public List<Run> runs(List<Setup> alike) {
    Run[] runs = new Run[alike.size()];
    List<Integer> left = new ArrayList<>();
    boolean asking = many;
    for (int i = 0; i < runs.length; i++) {
      Optional<Run> spared = asking ? spared(alike.get(i)) : Optional.empty();
      if (spared.isPresent()) {
        runs[i] = spared.get();
      } else {
        left.add(i);
      }
      // If the first does otherwise than the healthy board, so do they all.
      asking &= i > 0 || spared.isPresent();
    }
    List<Run> shared = left.isEmpty() ? List.of() : shared(left.stream().map(alike::get).toList());
    for (int i = 0; i < left.size(); i++) {
      runs[left.get(i)] = shared.get(i);
    }
    return List.of(runs);
  }

  private List<Run> shared(List<Setup> alike) {
    Setup first = alike.get(0);
    if (alike.size() == 1) {
      return List.of(run(first));
    }
    Moments moments = new Moments();
    List<Run> runs = new ArrayList<>();
    runs.add(watched(first, Optional.of(moments)));
    for (Setup setup : alike.subList(1, alike.size())) {
      Machine twin = new Machine(setup, Machine.Kind.PLAIN);
      Optional<Run> looked =
          twin.doublesFor(moments.end())
              ? looked(setup, twin, moments, Machine::keepsOnlyWhatIsKnown)
              : Optional.empty();
      runs.add(looked.orElseGet(() -> run(setup)));
    }
    return List.copyOf(runs);
  }

  /** The looks at a board that does as the healthy one does. */
  private Optional<Run> spared(Setup setup) {
    Followed healthy = followed(setup);
    Machine twin = new Machine(setup, Machine.Kind.PLAIN);
    // What a net keeps by itself is among the things the witness answers for.
    return healthy.witness().same(twin, Watching.eyed(board))
        ? looked(setup, twin, healthy.moments(), m -> true)
        : Optional.empty();
  }

  /** Whether a board would do as the healthy one does, so that it need not be run. */
  public boolean spares(Setup setup) {
    Machine machine = new Machine(setup, Machine.Kind.PLAIN);
    return followed(setup).witness().same(machine, Watching.eyed(board));
  }

  /** The healthy board of a seed, run and followed at the first call. */
  private synchronized Followed followed(Setup like) {
    return followed.computeIfAbsent(
        like.seed(),
        seed -> {
          Setup healthy = Setup.healthy(board, seed);
          Machine machine = new Machine(healthy, Machine.Kind.PLAIN);
          Witness witness = Witness.of(machine);
          Moments moments = new Moments();
          watched(healthy, machine, Optional.of(moments));
          return new Followed(witness, moments);
        });
  }

  private synchronized Frames frames(long seed) {
    return many ? frames.computeIfAbsent(seed, this::learnt) : Frames.NONE;
  }

  /** Frames that know what the healthy board draws. */
  private Frames learnt(long seed) {
    Frames learnt = Frames.of(board, seed, Schedule.idle(board));
    Machine healthy = new Machine(Setup.healthy(board, seed), Watching.KIND);
    Watching.ofAllKeys(healthy, learnt, Map.of());
    return learnt;
  }

  private record Followed(Witness witness, Moments moments) {}

  /** Where a run stood when a window began. */
  private record Moment(Machine machine, Window window) {}

  /** Where a run stood at each of its windows, in their order, and what its owner saw. */
  private static final class Moments {
    private final List<Moment> windows = new ArrayList<>();
    private Optional<Machine> end = Optional.empty();
    private Optional<Watching> watching = Optional.empty();

    void note(Machine machine, Window window) {
      windows.add(new Moment(machine.moment(), window));
    }

    Machine end() {
      return end.orElseThrow();
    }
  }

  private Run watched(Setup setup, Optional<Moments> moments) {
    return watched(setup, new Machine(setup, Watching.KIND), moments);
  }

  private Run watched(Setup setup, Machine on, Optional<Moments> moments) {
    Looking looking = new Looking(setup);
    Map<Long, Consumer<Machine>> stops = new LinkedHashMap<>();
    schedule
        .windows()
        .forEach(
            (start, window) ->
                stops.put(
                    start,
                    machine -> {
                      moments.ifPresent(m -> m.note(machine, window));
                      looking.play(machine, window);
                    }));
    Watching watching = Watching.ofAllKeys(on, frames(setup.seed()), stops);
    Machine machine = looking.machine.orElseThrow();
    moments.ifPresent(
        m -> {
          m.end = Optional.of(machine.moment());
          m.watching = Optional.of(watching);
        });
    return looking.done(machine, watching);
  }

  /**
   * Looks at a board that stands, moment after moment, where another stood.
   *
   * @param trusted whether the board is known to stand there; if not, nothing comes of it
   */
  private Optional<Run> looked(
      Setup setup, Machine twin, Moments moments, Predicate<Machine> trusted) {
    Looking looking = new Looking(setup);
    for (Moment moment : moments.windows) {
      twin.standWhere(moment.machine());
      if (!trusted.test(twin)) {
        return Optional.empty();
      }
      looking.play(twin, moment.window());
    }
    twin.standWhere(moments.end());
    return trusted.test(twin)
        ? Optional.of(looking.done(twin, moments.watching.orElseThrow().on(twin)))
        : Optional.empty();
  }

  /** All looks at one run. */
  private final class Looking {
    private final Legs legs;
    private final Trail trail;
    private final Levels levels;
    private Optional<Machine> machine = Optional.empty();
    private Optional<Heat> heat = Optional.empty();

    Looking(Setup setup) {
      legs = Legs.of(setup);
      trail = new Trail(setup);
      levels = new Levels(places, board.phaseNanoseconds(), legs, trail);
    }

    void play(Machine now, Window window) {
      machine = Optional.of(now);
      levels.play(now, window);
      heat = window == Window.IDLE ? Optional.of(now.heat()) : heat;
    }

    Run done(Machine now, Watching watching) {
      SortedMap<Look, Reading> readings = new TreeMap<>();
      owner(watching, readings);
      readings.forEach((look, reading) -> trail.seen(look.text() + ": " + reading.feature()));
      for (Look look : looks) {
        switch (look.kind()) {
          case SCREEN, LISTEN, LAMP, KEY, TYPED -> {
            // Seen and heard above.
          }
          case CURRENT -> readings.put(look, Dial.current(heat.orElseThrow().currentMilliamps()));
          case FINGER -> readings.put(look, touch(heat.orElseThrow(), look.place()));
          case METER -> readings.put(look, volts(now, levels, legs, Looks.pad(look.place())));
          case PROBE ->
              readings.put(
                  look,
                  new Reading.Level(
                      levels.light(Looks.pad(look.place()), Looks.atPad(look.place()))));
          case COUNTER -> readings.put(look, Dial.frequency(levels.hertz(Looks.pad(look.place()))));
          case CONTINUITY, OHMS -> readings.put(look, Unpowered.of(now, legs, look));
        }
      }
      trail.still(now);
      trail.begin(now);
      now.play(LAST_CYCLES, (phase, nanoseconds) -> trail.phase(now));
      trail.end(now);
      return new Run(readings, trail.sum());
    }
  }

  private Reading touch(Heat heat, String ref) {
    return new Reading.Touch(
        heat.finger(ref, Finger.SETTLED_SECONDS, healthyHeat),
        heat.caseTenths(ref, Finger.SETTLED_SECONDS) > BURNS_TENTHS);
  }

  private static Reading volts(Machine machine, Levels levels, Legs legs, Pad pad) {
    OptionalInt supply = machine.power().millivolts(pad, legs.asPad(pad));
    return Dial.volts(supply.orElseGet(() -> levels.average(pad)));
  }

  private static void owner(Watching watching, SortedMap<Look, Reading> readings) {
    Board board = watching.board();
    Symptoms symptoms = watching.symptoms();
    int ready = Watching.readyMilliseconds(board);
    Glass glass = watching.glassAt(ready);
    String shown = symptoms.feature(Symptoms.DISPLAY);
    readings.put(
        new Look(Instruments.SCREEN, ""), new Reading.Picture(shown, shown, glass.cells()));
    String heard = symptoms.feature(Symptoms.SOUND);
    readings.put(
        new Look(Instruments.LISTEN, ""),
        new Reading.Sound(heard, heard, watching.tones(0, ready)));
    String lamp = symptoms.feature(Symptoms.LAMP);
    readings.put(new Look(Instruments.LAMP, ""), new Words(lamp, lamp));
    watching
        .typed()
        .ifPresent(
            s ->
                readings.put(
                    new Look(Instruments.TYPED, ""),
                    new Reading.Picture(s.says(), s.says(), glass.cells())));
    symptoms
        .features()
        .forEach(
            (name, value) -> {
              if (name.startsWith(Symptoms.KEY)) {
                String key = name.substring(Symptoms.KEY.length());
                readings.put(new Look(Instruments.KEY, key), new Words(value, value));
              }
            });
  }

  /**
   * Looks that show the same on sixteen healthy boards of different seeds; what differs among them
   * tells nothing of a fault.
   */
  public List<Look> steady() {
    SortedMap<Look, String> first = features(Setup.healthy(board, 1));
    List<Look> steady = new ArrayList<>(looks);
    for (int seed = 2; seed <= HEALTHY_BOARDS; seed++) {
      SortedMap<Look, String> other = features(Setup.healthy(board, seed));
      steady.removeIf(look -> !first.get(look).equals(other.get(look)));
    }
    return List.copyOf(steady);
  }
}
