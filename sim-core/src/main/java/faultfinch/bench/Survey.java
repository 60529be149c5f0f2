package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.Board;
import faultfinch.board.Pad;
import faultfinch.machine.Heat;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.symptom.Glass;
import faultfinch.symptom.Symptoms;
import faultfinch.symptom.Watching;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * What every passive look would show, out of one run: the board starts, its keys are worked, and at
 * declared times eight windows of cycles are watched phase by phase.
 */
public final class Survey {
  private static final int HEALTHY_BOARDS = 16;

  /** After everything, so that whatever a run stored by then is looked at once more. */
  private static final int LAST_CYCLES = 16;

  /** Cases have settled after about four minutes. */
  private static final int SETTLED_SECONDS = 300;

  /** A case above 60 degrees burns. */
  private static final int BURNS_TENTHS = 600;

  private final Board board;
  private final Schedule schedule;
  private final List<Look> looks;
  private final List<Pad> places;

  private final Heat healthyHeat;

  private Survey(Board board) {
    this.board = board;
    schedule = Schedule.of(board);
    List<Heat> heats = new ArrayList<>();
    Watching.of(
        Setup.healthy(board, Schedule.SEED), Map.of(schedule.idle(), m -> heats.add(m.heat())));
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
    return new Survey(board);
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
    Legs legs = Legs.of(setup);
    Trail trail = new Trail(setup);
    Levels levels = new Levels(places, board.phaseNanoseconds(), legs, trail);
    List<Machine> machines = new ArrayList<>();
    Map<Long, Consumer<Machine>> stops = new LinkedHashMap<>();
    for (long start : schedule.starts()) {
      stops.put(
          start,
          machine -> {
            machines.add(machine);
            levels.window(machine, Schedule.CYCLES);
          });
    }
    List<Heat> heats = new ArrayList<>();
    stops.put(
        schedule.idle(),
        machine -> {
          levels.idle(machine, Schedule.IDLE_CYCLES);
          heats.add(machine.heat());
        });
    Watching watching = Watching.of(setup, stops);
    Machine machine = machines.get(machines.size() - 1);
    SortedMap<Look, Reading> readings = new TreeMap<>();
    owner(watching, readings);
    readings.forEach((look, reading) -> trail.seen(look.text() + ": " + reading.feature()));
    Heat heat = heats.get(0);
    for (Look look : looks) {
      switch (look.kind()) {
        case SCREEN, LISTEN, LAMP, KEY -> {
          // Seen and heard above.
        }
        case CURRENT -> readings.put(look, Dial.current(heat.currentMilliamps()));
        case FINGER -> readings.put(look, touch(heat, look.place()));
        case METER -> readings.put(look, volts(machine, levels, legs, Looks.pad(look.place())));
        case PROBE ->
            readings.put(
                look,
                new Reading.Level(
                    levels.light(Looks.pad(look.place()), Looks.atPad(look.place()))));
        case COUNTER -> readings.put(look, Dial.frequency(levels.hertz(Looks.pad(look.place()))));
        case CONTINUITY, OHMS -> readings.put(look, unpowered(machine, legs, look));
      }
    }
    trail.still(machine);
    trail.begin(machine);
    machine.play(LAST_CYCLES, (phase, nanoseconds) -> trail.phase(machine));
    trail.end(machine);
    return new Run(readings, trail.sum());
  }

  private Reading touch(Heat heat, String ref) {
    return new Reading.Touch(
        heat.finger(ref, SETTLED_SECONDS, healthyHeat),
        heat.caseTenths(ref, SETTLED_SECONDS) > BURNS_TENTHS);
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

  /** What continuity and ohms show of a board that is switched off; no cycle is run. */
  public static Reading unpowered(Setup setup, Look look) {
    return unpowered(new Machine(setup, Watching.KIND), Legs.of(setup), look);
  }

  private static Reading unpowered(Machine machine, Legs legs, Look look) {
    if (look.kind() == Instruments.OHMS) {
      return Dial.ohms(machine.ohmsToGround(machine.point(Looks.pad(look.place()), true)));
    }
    int dash = Looks.dash(look.place());
    Pad from = Looks.pad(dash < 0 ? look.place() : look.place().substring(0, dash));
    int there =
        dash < 0
            ? legs.point(machine, from)
            : machine.point(Looks.pad(look.place().substring(dash + 1)), true);
    boolean conducts = machine.point(from, true) == there;
    String says = conducts ? "conducts" : "open";
    return new Words(says, says);
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
