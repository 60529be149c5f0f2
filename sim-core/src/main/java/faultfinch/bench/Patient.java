package faultfinch.bench;

import faultfinch.bench.Prices.Chances;
import faultfinch.board.Board;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.fault.Clamp;
import faultfinch.fault.ClockDead;
import faultfinch.fault.Condition;
import faultfinch.fault.Dead;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.Open;
import faultfinch.fault.RepairAction;
import faultfinch.fault.Seat;
import faultfinch.fault.Slow;
import faultfinch.fault.UnknownFault;
import faultfinch.machine.Chance;
import faultfinch.machine.Feed;
import faultfinch.machine.Machine;
import faultfinch.machine.Power;
import faultfinch.machine.Setup;
import faultfinch.machine.Surroundings;
import faultfinch.machine.Wear;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;

/**
 * The board under repair: what is true of it now. Moves change it; looks are answered by running
 * the machine on what is true.
 */
final class Patient {
  private static final int PER_CENT = 100;
  private static final int WARM_AFTER_MINUTES = 4;

  /** What the bench supply gives at most. */
  static final int LIMIT_MILLIAMPS = 1000;

  /** What feeds the board. */
  enum Source {
    OWN,
    BENCH,
    BORROWED
  }

  final Job job;
  final Board board;

  /** All looks the board offers, in order. */
  final Set<Look> looks;

  /** What stands on the board besides what came with it. */
  final Rig rig;

  private final Set<Fault> faults;
  private final Set<Fault> dormant = new LinkedHashSet<>();
  private final Set<String> out = new LinkedHashSet<>();
  private final Set<String> renewed = new LinkedHashSet<>();
  private final Map<String, List<Fault>> aside = new LinkedHashMap<>();
  private final Set<Pad> lifted = new LinkedHashSet<>();
  private final Map<String, Fault> cuts = new LinkedHashMap<>();
  private final Set<String> unplugged = new LinkedHashSet<>();
  private final Set<String> socketed = new LinkedHashSet<>();
  private final Map<String, Integer> times = new LinkedHashMap<>();

  /** Millivolt-minutes above what a part stands, by reference. */
  private final Map<String, Long> borne = new LinkedHashMap<>();

  private int powerOns;
  private int minutesOn;
  private Optional<Setup> seenOf = Optional.empty();
  private SortedMap<Look, Reading> seen = Collections.emptySortedMap();

  boolean powered;
  boolean lidOn;
  boolean shaken;
  boolean plugged;
  boolean strapped;
  boolean checkedOffLoad;
  boolean checkedOnDummy;
  Source source = Source.OWN;

  Patient(Job job) {
    this.job = job;
    board = job.board();
    rig = new Rig(board);
    lidOn = job.intake().lidOn();
    looks = Collections.unmodifiableSet(new LinkedHashSet<>(Looks.passive(board)));
    faults = new LinkedHashSet<>(job.faults());
    board.parts().stream().filter(PlacedPart::socketed).forEach(p -> socketed.add(p.ref()));
  }

  /** All looks at this board as it stands. */
  Survey survey() {
    return rig.survey();
  }

  /** What is still wrong with the board as it came or was made. */
  List<Fault> faults() {
    return List.copyOf(faults);
  }

  Set<String> out() {
    return Set.copyOf(out);
  }

  boolean isOut(String ref) {
    return out.contains(ref);
  }

  boolean isSocketed(String ref) {
    return socketed.contains(ref);
  }

  boolean liesAside(String ref) {
    return aside.containsKey(ref);
  }

  /** Whether every part is in its place and nothing on the board that did not come with it. */
  boolean untouched() {
    return missing().isEmpty() && lifted.isEmpty() && cuts.isEmpty() && rig.empty();
  }

  /** What a hand has moved and not put back, one line each. */
  List<String> notBack() {
    List<String> wrong = new ArrayList<>();
    out.stream().sorted().forEach(ref -> wrong.add(ref + " is not in its place"));
    unplugged.stream().sorted().forEach(ref -> wrong.add(ref + " is unplugged"));
    lifted.stream().map(Pad::text).sorted().forEach(pin -> wrong.add(pin + " is off its pad"));
    cuts.keySet().stream().sorted().forEach(track -> wrong.add(track + " is cut"));
    wrong.addAll(rig.says());
    return List.copyOf(wrong);
  }

  boolean isUnplugged(String ref) {
    return unplugged.contains(ref);
  }

  void unplug(String ref, boolean off) {
    if (off) {
      unplugged.add(ref);
    } else {
      unplugged.remove(ref);
    }
    changed();
  }

  boolean isCut(String segment) {
    return cuts.containsKey(segment);
  }

  void cut(String segment) {
    cuts.put(segment, FaultKinds.parse("track " + segment + ": open", board));
    changed();
  }

  /** Two chips change places, and what is wrong inside them with them. */
  void exchange(String one, String other) {
    List<Fault> first = inside(one);
    List<Fault> second = inside(other);
    faults.removeAll(first);
    faults.removeAll(second);
    for (Fault f : first) {
      moved(f, one, other).ifPresent(faults::add);
    }
    for (Fault f : second) {
      moved(f, other, one).ifPresent(faults::add);
    }
    boolean was = renewed.remove(one);
    if (renewed.remove(other)) {
      renewed.add(one);
    }
    if (was) {
      renewed.add(other);
    }
    for (String ref : List.of(one, other)) {
      lifted.removeIf(p -> p.ref().equals(ref));
      seated(ref, Chances.RESEATING_CURES);
    }
  }

  /**
   * A fault inside a chip, at another place; how the chip sat does not go along, nor what is wrong
   * at a pin that leads nowhere there.
   */
  private Optional<Fault> moved(Fault fault, String from, String to) {
    if (fault.seat() == Seat.SEATING) {
      return Optional.empty();
    }
    try {
      return Optional.of(FaultKinds.parse(to + fault.text().substring(from.length()), board));
    } catch (UnknownFault nowhere) {
      return Optional.empty();
    }
  }

  /** What is wrong inside the chip that lies beside its place. */
  List<Fault> insideOfPulled(String ref) {
    return List.copyOf(aside.getOrDefault(ref, List.of()));
  }

  Set<Pad> lifted() {
    return Set.copyOf(lifted);
  }

  /** What would be switched on now, with whatever else is held to it. */
  Setup setup(Fault... more) {
    List<Fault> all = new ArrayList<>(showable());
    all.addAll(List.of(more));
    return setup(all, rig.board(brokenInside()));
  }

  private Setup setup(List<Fault> all, Board made) {
    return setup(all, made, new Surroundings(minutesThatCount(), Surroundings.Air.ROOM, shaken));
  }

  private Setup setup(List<Fault> all, Board made, Surroundings around) {
    return new Setup(made, all, missing(), job.seed(), powerOns, around);
  }

  /** All that is wrong now as far as what feeds the board lets it matter. */
  private List<Fault> showable() {
    List<Fault> all = new ArrayList<>();
    for (Fault f : faults) {
      if (source == Source.OWN || f.seat() != Seat.SUPPLY) {
        all.add(f);
      }
    }
    lifted.forEach(p -> all.add(new Open(p, Open.Break.LEG)));
    all.addAll(cuts.values());
    return all;
  }

  /** The bench supply at the volts of the board's own, with its limit. */
  Feed limited() {
    return new Feed.Bench(board.supply().noLoadVolts(), LIMIT_MILLIAMPS);
  }

  /** What the supply makes of the board on what feeds it now. */
  Power power(Machine machine) {
    return source == Source.BENCH ? Power.of(machine.setup(), limited()) : machine.power();
  }

  private Set<Pad> brokenInside() {
    return Legs.of(new Setup(board, faults(), Set.of(), 0, 0)).brokenInside();
  }

  private Set<String> missing() {
    Set<String> missing = new LinkedHashSet<>(out);
    missing.addAll(unplugged);
    return missing;
  }

  /** What would be switched on with other parts in the place of some. */
  Setup refitted(List<PlacedPart> others) {
    return setup(showable(), rig.board(brokenInside()).refitted(others));
  }

  /** What runs while a probe of so many ohms hangs on a pin. */
  Setup probed(Pad pin, int ohms) {
    List<Fault> all = new ArrayList<>(showable());
    all.add(new Clamp(pin, false, ohms));
    Surroundings around =
        new Surroundings(minutesThatCount(), Surroundings.Air.ROOM, shaken, Set.of(pin));
    return setup(all, rig.board(brokenInside()), around);
  }

  /** What runs in these surroundings. */
  Setup in(Surroundings around) {
    return setup(showable(), rig.board(brokenInside()), around);
  }

  /** What runs while one part is pressed, or with the empty reference the whole board flexed. */
  Setup pressed(String ref) {
    List<Fault> all = new ArrayList<>();
    for (Fault f : showable()) {
      boolean here = ref.isEmpty() || Surroundings.isAt(f, ref);
      boolean contact = f.seat() == Seat.CONTACT || f.seat() == Seat.SEATING;
      boolean always = f.condition().equals(Condition.ALWAYS);
      boolean closes =
          here && contact && always && happens(Chances.PRESSING_CLOSES, f.base().text());
      if (!closes) {
        all.add(f);
      }
    }
    Surroundings around =
        new Surroundings(minutesThatCount(), Surroundings.Air.ROOM, true, Set.of(), ref);
    return setup(all, rig.board(brokenInside()), around);
  }

  /** The board with its own supply, whatever feeds it now. */
  Setup asItCame() {
    return new Setup(board, faults(), missing(), job.seed(), powerOns);
  }

  /** Minutes matter where a fault waits for them: the last mark passed stands for all after it. */
  int minutesThatCount() {
    int mark = 0;
    for (Fault f : faults) {
      int waits =
          switch (f.condition().kind()) {
            case WARM, COLD -> WARM_AFTER_MINUTES;
            case AFTER_MINUTES -> f.condition().figure();
            case ALWAYS, LOW_VOLTS, SHAKEN, ONE_POWER_ON_IN ->
                f.kind().followsHeat() ? WARM_AFTER_MINUTES : 0;
          };
      mark = waits <= minutesOn ? Math.max(mark, waits) : mark;
    }
    return mark;
  }

  /** Readings of all passive looks at the board as it is, switched on. */
  SortedMap<Look, Reading> readings() {
    Setup now = setup();
    if (!seenOf.equals(Optional.of(now))) {
      seen = survey().readings(now);
      seenOf = Optional.of(now);
    }
    return seen;
  }

  void switchOn() {
    if (!powered) {
      powered = true;
      plugged |= source == Source.OWN;
      powerOns++;
      minutesOn = 0;
      suffer(0);
    }
  }

  void switchOff() {
    powered = false;
    minutesOn = 0;
  }

  /** The bench clock goes on. */
  void pass(int minutes) {
    if (powered) {
      minutesOn += minutes;
      suffer(minutes);
    }
  }

  /** What too many volts have killed stays dead, whatever feeds the board later. */
  private void suffer(int minutes) {
    // The limit of the bench supply is what damage cannot pass.
    Power power = source == Source.BENCH ? Power.of(setup(), limited()) : Power.of(setup());
    power.killed().forEach(this::lose);
    power
        .strained()
        .forEach(
            (ref, over) -> {
              long sum = borne.merge(ref, (long) over * minutes, Long::sum);
              if (Wear.killed(board.part(ref).orElseThrow(), job.seed(), sum)) {
                lose(ref);
              }
            });
  }

  private void lose(String ref) {
    faults.add(ref.equals(board.crystal()) ? new ClockDead(ref) : new Dead(ref));
  }

  /** Whatever was changed with the power on starts the board anew. */
  void changed() {
    if (powered) {
      switchOff();
      switchOn();
    }
  }

  /** Draws for something that can happen again: by job, what it is, where, and how often before. */
  boolean happens(Chances what, String where) {
    int time = times.merge(what + " " + where, 1, Integer::sum);
    return Chance.below(PER_CENT, job.seed(), Chance.of(what.name()), Chance.of(where), time)
        < job.prices().chance(what);
  }

  /** Takes a chip out of its place. */
  void takeOut(String ref) {
    List<Fault> own = inside(ref);
    faults.removeAll(own);
    own.removeIf(f -> f.seat() == Seat.SEATING);
    if (powered && happens(Chances.HOT_CHIP_LOST, ref)) {
      own.add(new Dead(ref));
    }
    lifted.removeIf(p -> p.ref().equals(ref));
    if (!renewed.remove(ref)) {
      aside.put(ref, own);
    }
    out.add(ref);
  }

  private List<Fault> inside(String ref) {
    List<Fault> own = new ArrayList<>();
    for (Fault f : faults) {
      boolean goesAlong =
          switch (f.seat()) {
            case INSIDE, LEG, BENT_LEG, SEATING -> true;
            case CONTACT, JOINT, TRACK, BETWEEN_PADS, DIRT, SETTING, SOCKET_OF_ANOTHER, SUPPLY ->
                false;
          };
      if (goesAlong && f.place().equals(ref)) {
        own.add(f);
      }
    }
    return own;
  }

  /** Puts the chip that came with the board back. */
  void putBack(String ref) {
    faults.addAll(aside.remove(ref));
    seated(ref, Chances.RESEATING_CURES);
  }

  /** Fits a new chip. */
  void fitNew(String ref) {
    renewed.add(ref);
    if (happens(Chances.NEW_PART_BAD, ref)) {
      faults.add(new Dead(ref));
    } else if (happens(Chances.NEW_PART_UNSUITABLE, ref)) {
      Slow.grade(board, board.part(ref).orElseThrow()).ifPresent(faults::add);
    }
    borne.remove(ref);
    seated(ref, Chances.RESEATING_CURES);
  }

  private void seated(String ref, Chances cures) {
    if (powered && out.contains(ref) && happens(Chances.HOT_CHIP_LOST, ref)) {
      faults.add(new Dead(ref));
    }
    out.remove(ref);
    disturb(ref, cures);
    changed();
  }

  /** Whatever moves a chip in its socket gives every contact of that place another chance. */
  void disturb(String ref, Chances cures) {
    faults.removeIf(f -> f.seat() == Seat.SEATING && f.place().equals(ref));
    Set<Fault> contacts = new LinkedHashSet<>(faults);
    contacts.addAll(dormant);
    for (Fault f : contacts) {
      if (f.seat() == Seat.CONTACT && f.place().equals(ref)) {
        boolean touches = happens(cures, f.base().text());
        (touches ? faults : dormant).remove(f);
        (touches ? dormant : faults).add(f);
      }
    }
  }

  /** Carries out what surely cures. */
  void cure(RepairAction action) {
    faults.removeIf(f -> action.cures(f));
    dormant.removeIf(f -> action.cures(f));
    if (action.kind() == RepairAction.Kind.REFLOW) {
      lifted.removeIf(p -> p.text().equals(action.place()));
    }
    if (action.kind() == RepairAction.Kind.LINK_TRACK) {
      cuts.remove(action.place());
    }
    changed();
  }

  void lift(Pad pin) {
    lifted.add(pin);
    changed();
  }

  /** Unsolders a chip for good: a socket and a new chip stand there now. */
  void desolder(String ref) {
    cure(new RepairAction(RepairAction.Kind.DESOLDER_AND_SOCKET, ref));
    socketed.add(ref);
    if (happens(Chances.PAD_TEARS, ref)) {
      List<Pad> pads = board.netOfPad().keySet().stream().filter(p -> p.ref().equals(ref)).toList();
      int torn = Chance.below(pads.size(), job.seed(), Chance.of("torn"), Chance.of(ref));
      faults.add(new Open(pads.get(torn), Open.Break.JOINT));
    }
    fitNew(ref);
  }
}
