package faultfinch.diagnosis;

import faultfinch.bench.Starts;
import faultfinch.board.Board;
import faultfinch.board.Milestone;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.machine.Lockstep;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.machine.Standing;
import faultfinch.signal.Phase;
import faultfinch.signal.Pin;
import faultfinch.symptom.Symptoms;
import faultfinch.symptom.Watching;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Finds out why a fault shows what it shows: the healthy board and the faulty one are watched from
 * power-on, by the fast machine, and where they part both are played plainly.
 */
public final class Inquest {
  private static final long MILLISECOND = 1_000_000;
  private static final int MARK_MS = 5;
  private static final long MARK_CYCLES = 12;

  /** Volts that differ by less than so many per cent are no other volts; nor are times. */
  private static final int SAME_PER_CENT = 2;

  private static final long SAME_NS = MILLISECOND;

  /** The end of a watch: what the last instructions were, and how few of them make a circle. */
  private static final int LAST_INSTRUCTIONS = 4096;

  private static final int CIRCLE_INSTRUCTIONS = 96;
  private static final int TAIL_CYCLES = 64;

  private final Setup setup;
  private final Board board;
  private final Routines routines;
  private final Chronicle right = new Chronicle();
  private final Chronicle seen = new Chronicle();
  private final Machine healthy;
  private final Machine faulty;
  private final FirstActs acts;
  private final boolean keys;
  private Symptoms rightShows;
  private Symptoms shows;

  private Inquest(Setup setup, boolean keys) {
    this.setup = setup;
    this.keys = keys;
    board = setup.board();
    routines = new Routines(board);
    healthy = new Machine(sound(setup), Watching.KIND, right);
    faulty = new Machine(setup, Watching.KIND, seen);
    acts = new FirstActs(setup);
  }

  private static Setup sound(Setup setup) {
    return new Setup(
        setup.board(), List.of(), Set.of(), setup.seed(), setup.powerOn(), setup.surroundings());
  }

  /** The chain of a board's start; if no step and no sign of that is otherwise, of its keys too. */
  public static Why of(Setup setup) {
    Setup unpressed =
        new Setup(
            setup.board().exercised(List.of()),
            setup.faults(),
            setup.out(),
            setup.seed(),
            setup.powerOn(),
            setup.surroundings());
    Why start = new Inquest(unpressed, false).why();
    boolean tells = !start.steps().isEmpty() || !start.shows().isEmpty();
    return tells || setup.board().exercise().isEmpty() ? start : ofKeys(setup);
  }

  /** The chain of a board whose keys are worked. */
  public static Why ofKeys(Setup setup) {
    return new Inquest(setup, true).why();
  }

  private Why why() {
    watch();
    int parts = seen.differs(right);
    Optional<Why.OtherCycle> bus = bus(parts);
    OptionalLong when = when(bus);
    return new Why(
        setup,
        keys,
        faulty.nanoseconds(),
        supplies(),
        faulty.power().blown().stream().filter(f -> !healthy.power().blown().contains(f)).toList(),
        faulty.power().killed().stream()
            .filter(ref -> !healthy.power().killed().contains(ref))
            .toList(),
        clock(),
        acts.stands(),
        acts.reads(),
        acts.misreads(),
        bus,
        place(bus, parts),
        when.isPresent() ? lastStep(when.getAsLong()) : Optional.empty(),
        bus.flatMap(b -> strays(parts)),
        bus.flatMap(b -> strays(parts)).flatMap(this::leaves),
        ending(),
        circles(),
        steps(),
        features(),
        Optional.of(new Starts(setup.board()).of(setup)).filter(s -> !s.equals(Starts.ALIKE)));
  }

  private void watch() {
    rightShows = shows(healthy);
    shows = shows(faulty);
    acts.begin(
        new Machine(sound(setup), Machine.Kind.PLAIN), new Machine(setup, Machine.Kind.PLAIN));
    if (acts.unfinished()) {
      look();
    }
  }

  private Symptoms shows(Machine machine) {
    Watching watching =
        keys ? Watching.ofEveryKey(machine, Map.of()) : Watching.of(machine, Map.of());
    return watching.symptoms();
  }

  /** Looks at both again where something may first be otherwise, until the two processors part. */
  private void look() {
    int alike = seen.alike(right, 0);
    OptionalLong parts =
        Stream.of(cycle(right, alike, faulty.cycles()), cycle(seen, alike, healthy.cycles()))
            .flatMap(Optional::stream)
            .mapToLong(BusCycle::cycle)
            .boxed()
            .min(Long::compare)
            .map(OptionalLong::of)
            .orElse(OptionalLong.empty());
    Hands one = new Hands(new Machine(sound(setup), Watching.KIND));
    Hands other = new Hands(new Machine(setup, Watching.KIND));
    for (Map.Entry<Long, Long> mark : marks().entrySet()) {
      long at = nanoseconds(mark.getKey());
      if (parts.isPresent() && mark.getKey() + mark.getValue() >= parts.getAsLong()) {
        acts.part(parts.getAsLong());
        return;
      }
      acts.mark(one.at(at).moment(), other.at(at).moment(), mark.getValue());
      if (!acts.unfinished()) {
        return;
      }
    }
  }

  /** Where to look, by the cycle, and for how many cycles. */
  private NavigableMap<Long, Long> marks() {
    int end = keys ? Watching.endMilliseconds(board) : Watching.readyMilliseconds(board);
    long last = (long) (end * healthy.processorHertz() / 1e3);
    long step = (long) (MARK_MS * healthy.processorHertz() / 1e3);
    NavigableMap<Long, Long> marks = new TreeMap<>();
    for (long at = step; at <= last; at += step) {
      marks.put(at, MARK_CYCLES);
    }
    for (long[] span : right.firsts()) {
      if (span[0] <= last) {
        marks.merge(span[0], span[1] - span[0], Math::max);
      }
    }
    return marks;
  }

  private List<Why.OtherSupply> supplies() {
    Map<Pad, Net> netOf = board.netOfPad();
    Map<String, Why.OtherSupply> byNet = new LinkedHashMap<>();
    for (PlacedPart part : board.parts()) {
      OptionalLong should = least(healthy, part.ref());
      OptionalLong has = least(faulty, part.ref());
      if (should.isPresent() && !setup.out().contains(part.ref())) {
        int had = (int) has.orElse(0);
        int expected = (int) should.getAsLong();
        if (100 * Math.abs(had - expected) >= SAME_PER_CENT * expected) {
          String net = feeding(part, netOf);
          byNet.merge(
              net,
              new Why.OtherSupply(net, part.ref(), expected, had, 0),
              (a, b) ->
                  new Why.OtherSupply(net, a.ref(), a.expectedMv(), a.hadMv(), a.others() + 1));
        }
      }
    }
    return List.copyOf(byNet.values());
  }

  private static OptionalLong least(Machine machine, String ref) {
    int[] steps = machine.power().milliseconds(ref);
    return steps.length == 0 ? OptionalLong.empty() : OptionalLong.of(steps[steps.length - 1]);
  }

  private static String feeding(PlacedPart part, Map<Pad, Net> netOf) {
    return part.type().part().pinout().pins().stream()
        .filter(p -> p.role() == Pin.Role.SUPPLY)
        .map(p -> netOf.get(new Pad(part.ref(), p.name())))
        .filter(n -> n != null)
        .map(Net::name)
        .findFirst()
        .orElse("");
  }

  /** Of the clocks that run otherwise, the processor's own, else the first in board order. */
  private Optional<Why.OtherClock> clock() {
    List<Why.OtherClock> all = new ArrayList<>();
    for (Net net : board.nets()) {
      for (Pad pad : net.pads()) {
        double expected = healthy.clockHertz(pad, false);
        double had = faulty.clockHertz(pad, false);
        boolean in =
            board
                .part(pad.ref())
                .flatMap(p -> p.type().part().pinout().find(pad.pin()))
                .filter(Pin::receives)
                .isPresent();
        if (in && expected > 0 && expected != had) {
          all.add(new Why.OtherClock(net.name(), pad, expected, had));
        }
      }
    }
    return all.stream()
        .filter(c -> healthy.processorHertz() == c.expectedHertz())
        .findFirst()
        .or(() -> all.stream().findFirst());
  }

  private long nanoseconds(long cycle) {
    double hertz = faulty.processorHertz() > 0 ? faulty.processorHertz() : healthy.processorHertz();
    return (long) (cycle * 1e9 / hertz);
  }

  private Optional<Why.OtherCycle> bus(int parts) {
    Optional<BusCycle> expected = cycle(right, parts, faulty.cycles());
    Optional<BusCycle> had = cycle(seen, parts, healthy.cycles());
    if (expected.isEmpty() && had.isEmpty()) {
      return Optional.empty();
    }
    long when = had.or(() -> expected).orElseThrow().cycle();
    List<List<String>> answers = new ArrayList<>(List.of(List.of(), List.of()));
    boolean sameTime = had.isPresent() && expected.isPresent() && when == expected.get().cycle();
    if (sameTime && had.get().reads()) {
      long shortly = nanoseconds(when - TAIL_CYCLES);
      Machine one = new Hands(new Machine(sound(setup), Watching.KIND)).at(shortly).moment();
      Machine other = new Hands(new Machine(setup, Watching.KIND)).at(shortly).moment();
      new Lockstep(one, other)
          .playTo(
              when + 1,
              shown -> {
                if (shown.cycle() == when && shown.phase() == Phase.C_END) {
                  answers.set(0, shown.shouldAnswer());
                  answers.set(1, shown.answers());
                }
                return true;
              });
    }
    return Optional.of(
        new Why.OtherCycle(nanoseconds(when), expected, had, answers.get(0), answers.get(1)));
  }

  /** The two watches end at an instruction each; what only one of them had time for is nothing. */
  private static Optional<BusCycle> cycle(Chronicle of, int index, long others) {
    return index < of.size() && of.at(index).cycle() < others - TAIL_CYCLES
        ? Optional.of(of.at(index))
        : Optional.empty();
  }

  private OptionalLong when(Optional<Why.OtherCycle> bus) {
    if (bus.isPresent()) {
      return OptionalLong.of(bus.get().nanoseconds());
    }
    return acts.reads().isPresent()
        ? OptionalLong.of(acts.reads().get().moment().nanoseconds())
        : OptionalLong.empty();
  }

  private Optional<Routine> place(Optional<Why.OtherCycle> bus, int parts) {
    if (bus.isPresent()) {
      BusCycle at = bus.get().had().or(bus.get()::expected).orElseThrow();
      boolean same =
          bus.get().had().isPresent()
              && bus.get().expected().isPresent()
              && at.asksAs(bus.get().expected().get());
      return right.instruction(same ? parts : parts - 1).map(f -> routines.at(f.address()));
    }
    return acts.reads()
        .flatMap(a -> right.instruction(right.lastBy(a.moment().cycle())))
        .map(f -> routines.at(f.address()));
  }

  private Optional<Milestone> lastStep(long nanoseconds) {
    Map<String, Long> reached = faulty.milestones();
    return board.milestones().stream()
        .filter(m -> reached.getOrDefault(m.label(), Long.MAX_VALUE) <= nanoseconds)
        .max((a, b) -> Long.compare(reached.get(a.label()), reached.get(b.label())));
  }

  private Optional<Why.Stray> strays(int from) {
    int a = from;
    int b = from;
    Optional<BusCycle> last = seen.instruction(from - 1);
    while (true) {
      a = right.fetchFrom(a);
      b = seen.fetchFrom(b);
      if (a < 0 || b < 0) {
        return Optional.empty();
      }
      BusCycle expected = right.at(a++);
      BusCycle had = seen.at(b++);
      if (expected.address() != had.address()) {
        return last.map(
            l ->
                new Why.Stray(
                    had.cycle(),
                    nanoseconds(had.cycle()),
                    routines.at(l.address()),
                    routines.at(expected.address()),
                    routines.at(had.address())));
      }
      last = Optional.of(had);
    }
  }

  /** Before its reset a processor is anywhere; that is no leaving. */
  private Optional<Why.Leaving> leaves(Why.Stray stray) {
    if (!routines.known()) {
      return Optional.empty();
    }
    Routine came = stray.from();
    int from = seen.fetchFrom(seen.lastBy(stray.cycle()));
    for (int i = from; i >= 0; i = seen.fetchFrom(i + 1)) {
      BusCycle fetch = seen.at(i);
      if (!routines.inside(fetch.address())) {
        return Optional.of(
            new Why.Leaving(fetch.cycle(), nanoseconds(fetch.cycle()), came, fetch.address()));
      }
      came = routines.at(fetch.address());
    }
    return Optional.empty();
  }

  private Why.Ending ending() {
    OptionalLong since =
        seen.size() == 0
            ? OptionalLong.empty()
            : OptionalLong.of(nanoseconds(seen.at(seen.size() - 1).cycle()));
    return new Why.Ending(faulty.standing(), healthy.standing(), since);
  }

  private Optional<Why.Circle> circles() {
    SortedSet<Integer> round = lately(seen);
    SortedSet<Integer> sound = lately(right);
    boolean circle =
        faulty.standing() == Standing.RUNS
            && !round.isEmpty()
            && round.size() <= CIRCLE_INSTRUCTIONS
            && !sound.containsAll(round);
    if (!circle) {
      return Optional.empty();
    }
    int count = round.size();
    round.removeAll(sound);
    return Optional.of(
        new Why.Circle(routines.at(round.first()), routines.at(round.last()), count));
  }

  /** Addresses of the last instructions; none if there were not that many. */
  private static SortedSet<Integer> lately(Chronicle of) {
    SortedSet<Integer> addresses = new TreeSet<>();
    int count = 0;
    for (int i = of.size() - 1; i >= 0 && count < LAST_INSTRUCTIONS; i--) {
      BusCycle cycle = of.at(i);
      if (cycle.fetches()) {
        addresses.add(cycle.address());
        count++;
      }
    }
    return count < LAST_INSTRUCTIONS ? new TreeSet<>() : addresses;
  }

  private List<Why.OtherStep> steps() {
    List<Why.OtherStep> steps = new ArrayList<>();
    for (Milestone m : board.milestones()) {
      OptionalLong expected = reached(healthy, m);
      OptionalLong had = reached(faulty, m);
      boolean both = expected.isPresent() && had.isPresent();
      boolean otherwise =
          both
              ? Math.abs(expected.getAsLong() - had.getAsLong()) >= SAME_NS
              : expected.isPresent() || had.isPresent();
      if (otherwise) {
        steps.add(new Why.OtherStep(m, expected, had));
      }
    }
    return steps;
  }

  private static OptionalLong reached(Machine machine, Milestone m) {
    Long at = machine.milestones().get(m.label());
    return at == null ? OptionalLong.empty() : OptionalLong.of(at);
  }

  private List<Why.OtherFeature> features() {
    List<Why.OtherFeature> all = new ArrayList<>();
    rightShows
        .features()
        .forEach(
            (name, expected) -> {
              String had = shows.feature(name);
              if (!had.equals(expected)) {
                all.add(new Why.OtherFeature(name, expected, had));
              }
            });
    return all;
  }
}
