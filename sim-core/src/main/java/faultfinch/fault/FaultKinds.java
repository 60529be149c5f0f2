package faultfinch.fault;

import faultfinch.board.Board;
import faultfinch.fault.Places.Form;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Every kind of fault: pins first, from the die outwards, then track, chips, passives, supply. */
public enum FaultKinds {
  READS_STUCK(
      "input that reads one level",
      Form.PIN,
      "reads low|high",
      "reads (low|high)",
      "U9.D0: reads low",
      ReadsStuck::read,
      ReadsStuck::sites),
  DRIVES_STUCK(
      "output that drives one level",
      Form.PIN,
      "drives low|high",
      "drives (low|high)",
      "U4.Y0/: drives low",
      DrivesStuck::read,
      DrivesStuck::sites),
  CLAMP(
      "pin that loads its net",
      Form.PIN,
      "clamps to ground|supply through N ohms",
      "clamps to (ground|supply) through " + Ohms.PATTERN,
      "U2.D3: clamps to ground through 470 ohms",
      Clamp::read,
      Clamp::sites),
  LEAK(
      "leak over the board",
      Form.PIN,
      "leaks to ground|supply through N ohms",
      "leaks to (ground|supply) through " + Ohms.PATTERN,
      "U9.D0: leaks to ground through 4k7",
      Leak::read,
      Leak::sites),
  OPEN_PIN(
      "pin open inside the part",
      Form.PIN,
      "open pin",
      "open pin",
      "U9.D0: open pin",
      w -> Open.read(w, Open.Break.PIN),
      a -> Open.sites(a, Open.Break.PIN)),
  OPEN_LEG(
      "broken leg",
      Form.PIN,
      "open leg",
      "open leg",
      "U9.D0: open leg",
      w -> Open.read(w, Open.Break.LEG),
      a -> Open.sites(a, Open.Break.LEG)),
  BENT_LEG(
      "leg bent beside its socket",
      Form.PIN,
      "bent leg",
      "bent leg",
      "U9.D0: bent leg",
      w -> Open.read(w, Open.Break.BENT_LEG),
      a -> Open.sites(a, Open.Break.BENT_LEG)),
  OPEN_CONTACT(
      "socket contact that does not touch",
      Form.PIN,
      "open contact",
      "open contact",
      "U9.D0: open contact",
      w -> Open.read(w, Open.Break.CONTACT),
      a -> Open.sites(a, Open.Break.CONTACT)),
  OPEN_JOINT(
      "dry joint",
      Form.PIN,
      "open joint",
      "open joint",
      "U9.D0: open joint",
      w -> Open.read(w, Open.Break.JOINT),
      a -> Open.sites(a, Open.Break.JOINT)),
  TRACK_OPEN(
      "cut track",
      Form.TRACK,
      "open",
      "open",
      "track U1.D0-U3.D0: open",
      TrackOpen::read,
      TrackOpen::sites),
  BRIDGE(
      "bridge between neighbours",
      Form.TWO_PINS,
      "bridge",
      "bridge",
      "U3.A4-U3.A5: bridge",
      Bridge::read,
      Bridge::sites),
  TRACK_BRIDGE(
      "bridge between tracks",
      Form.TWO_TRACKS,
      "bridge",
      "bridge",
      "track U1.D0-U2.D0 and U1.D1-U2.D1: bridge",
      TrackBridge::read,
      TrackBridge::sites),
  DEAD("dead chip", Form.PART, "dead", "dead", "U5: dead", Dead::read, Dead::sites),
  REVERSED(
      "chip the wrong way round",
      Form.PART,
      "reversed",
      "reversed",
      "U5: reversed",
      Reversed::read,
      Reversed::sites),
  BADLY_SEATED(
      "badly seated chip",
      Form.PART,
      "badly seated at pins N to N",
      "badly seated at pins (\\d{1,3}) to (\\d{1,3})",
      "U2: badly seated at pins 1 to 14",
      BadlySeated::read,
      BadlySeated::sites),
  MISPLACED(
      "chip in the wrong socket",
      Form.PART,
      "in the socket of U3",
      "in the socket of (\\S+)",
      "U2: in the socket of U8",
      Misplaced::read,
      Misplaced::sites),
  MIS_PROGRAMMED(
      "wrong byte in a programmed memory",
      Form.PART,
      "mis-programmed at 01F3 as 7E",
      "mis-programmed at ([0-9A-F]{4}) as ([0-9A-F]{2})",
      "U2: mis-programmed at 01F3 as 7E",
      MisProgrammed::read,
      MisProgrammed::sites),
  CELL_STUCK(
      "memory cell that keeps one level",
      Form.PART,
      "cell 0123 bit 4 stuck low|high",
      "cell ([0-9A-F]{4}) bit ([0-7]) stuck (low|high)",
      "U3: cell 0123 bit 4 stuck low",
      CellStuck::read,
      CellStuck::sites),
  CELL_DEFECT(
      "memory cell that does not keep what it is given",
      Form.PART,
      "cell 0123 short-lived|disturbed",
      "cell ([0-9A-F]{4}) (short-lived|disturbed)",
      "U4: cell 0123 short-lived",
      CellDefect::read,
      CellDefect::sites),
  DEFECT_INSIDE(
      "one function that fails",
      Form.PART,
      "defect NAME",
      "defect (\\S+)",
      "U8: defect timer-dead",
      DefectInside::read,
      DefectInside::sites),
  SLOW(
      "memory of too slow a grade",
      Form.PART,
      "slow at N ns",
      "slow at (\\d{1,4}) ns",
      "U4: slow at 150 ns",
      Slow::read,
      Slow::sites),
  RACE(
      "memory that takes its column too soon",
      Form.PART,
      "races at N ns",
      "races at (\\d{1,4}) ns",
      "U4: races at 105 ns",
      Race::read,
      Race::sites),
  ELEMENT_OPEN(
      "open part", Form.PART, "open", "open", "R2: open", ElementOpen::read, ElementOpen::sites),
  ELEMENT_SHORT(
      "shorted part",
      Form.PART,
      "short",
      "short",
      "D1: short",
      ElementShort::read,
      ElementShort::sites),
  STUCK_CLOSED(
      "contact that stays closed",
      Form.PART,
      "stuck closed (a link: closed)",
      "stuck closed|closed",
      "K1: stuck closed",
      StuckClosed::read,
      StuckClosed::sites),
  DRIFT(
      "resistor off its value",
      Form.PART,
      "drifts to N per cent",
      "drifts to (\\d{1,4}) per cent",
      "R2: drifts to 150 per cent",
      Drift::read,
      Drift::sites),
  CAPACITOR_SHORT(
      "shorted capacitor",
      Form.PART,
      "short",
      "short",
      "C3: short",
      CapacitorShort::read,
      CapacitorShort::sites),
  CAPACITOR_LEAK(
      "leaky capacitor",
      Form.PART,
      "leaks through N ohms",
      "leaks through " + Ohms.PATTERN,
      "C3: leaks through 1k",
      CapacitorLeak::read,
      CapacitorLeak::sites),
  CLOCK_DEAD(
      "dead oscillator", Form.PART, "dead", "dead", "X1: dead", ClockDead::read, ClockDead::sites),
  CLOCK_OFF(
      "oscillator off its frequency",
      Form.PART,
      "off frequency at N per mille",
      "off frequency at (\\d{1,4}) per mille",
      "X1: off frequency at 1030 per mille",
      ClockOff::read,
      ClockOff::sites),
  REGULATOR(
      "failed regulator",
      Form.PART,
      "dead|low|shorted",
      "dead|low|shorted",
      "VR1: shorted",
      RegulatorFault::read,
      RegulatorFault::sites),
  BRICK(
      "failed brick",
      Form.SUPPLY,
      "sags|low|dead|ripples",
      "sags|low|dead|ripples",
      "brick: sags",
      BrickFault::read,
      BrickFault::sites),
  SUPPLY_BREAK(
      "break before the regulator",
      Form.SUPPLY,
      "open",
      "open|open joint",
      "lead: open",
      SupplyBreak::read,
      SupplyBreak::sites);

  private final String title;
  private final Form form;
  private final String says;
  private final Pattern pattern;
  private final String example;
  private final Function<Words, Optional<Fault>> reader;
  private final Function<Anatomy, List<Fault>> sites;

  FaultKinds(
      String title,
      Form form,
      String says,
      String pattern,
      String example,
      Function<Words, Optional<Fault>> reader,
      Function<Anatomy, List<Fault>> sites) {
    this.title = title;
    this.form = form;
    this.says = says;
    this.pattern = Pattern.compile(pattern);
    this.example = example;
    this.reader = reader;
    this.sites = sites;
  }

  /** The kind's name for people, such as {@code dry joint}. */
  public String title() {
    return title;
  }

  /** Whether its figures move with the part's own temperature. */
  public boolean followsHeat() {
    return this == SLOW || this == RACE;
  }

  /** The form of its text: place, colon, words with choices between strokes. */
  public String grammar() {
    return Places.example(form) + ": " + says;
  }

  /** One such text; the parts in it need not be on every board. */
  public String example() {
    return example;
  }

  /** All the faults of this kind a board can have, in board order; grids as the figures give. */
  public List<Fault> sites(Board board) {
    return sites(new Anatomy(board));
  }

  List<Fault> sites(Anatomy anatomy) {
    return sites.apply(anatomy);
  }

  /**
   * Reads a fault back from its text; {@code parse(fault.text(), board)} equals the fault.
   *
   * @throws UnknownFault naming the column, what was found there and what would be right
   */
  public static Fault parse(String text, Board board) {
    return parse(text, new Anatomy(board));
  }

  static Fault parse(String text, Anatomy anatomy) {
    int colon = text.indexOf(": ");
    if (colon < 1) {
      throw new UnknownFault(
          text, 1, "no place with a colon and a space behind it", "such as 'U9.D0: reads low'");
    }
    Condition condition = Condition.endOf(text);
    Places place = Places.of(anatomy, text, text.substring(0, colon));
    String what =
        Condition.before(text).substring(Math.min(colon + 2, Condition.before(text).length()));
    for (FaultKinds kind : values()) {
      Matcher m = kind.pattern.matcher(what);
      if (kind.takes(place.form()) && m.matches()) {
        Words words =
            new Words(anatomy, text, place.name(), place.pads(), place.part(), m, colon + 3);
        Optional<Fault> fault = kind.reader.apply(words);
        if (fault.isPresent()) {
          return condition.equals(Condition.ALWAYS)
              ? fault.get()
              : new Conditional(fault.get(), condition);
        }
      }
    }
    throw nothingFits(anatomy, text, place, what, colon + 3);
  }

  // A break before the regulator is written like any other break.
  private boolean takes(Form place) {
    return form == place
        || (this == SUPPLY_BREAK && place != Form.TWO_PINS && place != Form.TWO_TRACKS);
  }

  private static UnknownFault nothingFits(
      Anatomy anatomy, String text, Places place, String what, int column) {
    for (FaultKinds kind : values()) {
      Matcher m = kind.pattern.matcher(what);
      if (kind.takes(place.form()) && m.lookingAt() && what.startsWith(" ", m.end())) {
        String rest = what.substring(m.end() + 1);
        String right = "nothing more, or a condition: " + Condition.FORMS;
        return new UnknownFault(text, column + m.end() + 1, "'" + rest + "'", right);
      }
    }
    String can =
        Arrays.stream(values())
            .filter(k -> k.canStandAt(anatomy, place))
            .map(k -> k == SUPPLY_BREAK && place.form() == Form.PIN ? "open joint" : k.says)
            .distinct()
            .collect(Collectors.joining("; "));
    String right = can.isEmpty() ? "another place; this one has no faults" : "one of: " + can;
    return new UnknownFault(text, column, "'" + what + "' for " + place.name(), right);
  }

  private boolean canStandAt(Anatomy anatomy, Places place) {
    return takes(place.form())
        && sites(anatomy).stream().anyMatch(f -> f.text().startsWith(place.name() + ": "));
  }
}
