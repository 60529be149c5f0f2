package faultfinch.fault;

import faultfinch.board.Pad;
import faultfinch.fault.Open.Break;
import faultfinch.signal.Pin;
import java.util.Locale;
import java.util.function.BiPredicate;

/** The ways a part fails, as statistics count them, and which faults each stands for. */
enum Mode {
  STUCK_HIGH((a, f) -> stuck(f, true)),
  STUCK_LOW((a, f) -> stuck(f, false)),
  INPUT_OPEN((a, f) -> broken(a, f) && !powers(a, f) && !a.pin(((Open) f).pad()).drives()),
  OUTPUT_OPEN((a, f) -> broken(a, f) && a.pin(((Open) f).pad()).drives()),
  POWERLESS((a, f) -> f instanceof Dead || (broken(a, f) && powers(a, f))),
  FUNCTION((a, f) -> f instanceof DefectInside),
  UNSELECTED((a, f) -> f instanceof DrivesStuck d && a.pin(d.pin()).role() == Pin.Role.DATA),
  BITS_LOST(
      (a, f) -> f instanceof CellStuck || f instanceof CellDefect || f instanceof MisProgrammed),
  SLOW((a, f) -> f instanceof Slow || f instanceof Race),
  OPEN((a, f) -> f instanceof ElementOpen || (f instanceof SupplyBreak && f.seat() == Seat.INSIDE)),
  SHORT((a, f) -> f instanceof ElementShort || f instanceof CapacitorShort),
  LEAKY((a, f) -> f instanceof CapacitorLeak),
  DRIFT((a, f) -> f instanceof Drift),
  CLOSED((a, f) -> f instanceof StuckClosed && f.seat() == Seat.INSIDE),
  CLOCK_DEAD((a, f) -> f instanceof ClockDead),
  CLOCK_OFF((a, f) -> f instanceof ClockOff),
  REGULATOR((a, f) -> f instanceof RegulatorFault),
  CONTACT_OPEN((a, f) -> f.seat() == Seat.CONTACT || f.seat() == Seat.SEATING),
  BROKEN((a, f) -> f.seat() == Seat.TRACK || f.seat() == Seat.JOINT),
  BRIDGED((a, f) -> f instanceof Bridge || f instanceof TrackBridge),
  DIRT((a, f) -> f instanceof Leak),
  BRICK((a, f) -> f instanceof BrickFault),
  LEAD((a, f) -> f instanceof SupplyBreak && f.seat() == Seat.SUPPLY),
  REVERSED((a, f) -> f instanceof Reversed),
  BADLY_SEATED((a, f) -> f instanceof BadlySeated),
  BENT_LEG((a, f) -> f.seat() == Seat.BENT_LEG),
  MISPLACED((a, f) -> f instanceof Misplaced),
  SET((a, f) -> f.seat() == Seat.SETTING);

  private final BiPredicate<Anatomy, Fault> counts;

  Mode(BiPredicate<Anatomy, Fault> counts) {
    this.counts = counts;
  }

  boolean counts(Anatomy anatomy, Fault fault) {
    return counts.test(anatomy, fault);
  }

  /** How much of the mode falls to its clamps or legs, in per cent; the rest to what is inside. */
  int rarer() {
    if (this == STUCK_HIGH || this == STUCK_LOW) {
      return Figures.number("stuck.clamps.percent");
    }
    boolean opens = this == INPUT_OPEN || this == OUTPUT_OPEN || this == POWERLESS;
    return opens ? Figures.number("open.legs.percent") : 0;
  }

  /** The mode as the figures name it, such as {@code stuck-high}. */
  static Mode named(String name) {
    return valueOf(name.toUpperCase(Locale.ROOT).replace('-', '_'));
  }

  private static boolean stuck(Fault fault, boolean high) {
    return (fault instanceof ReadsStuck r && r.high() == high)
        || (fault instanceof DrivesStuck d && d.high() == high)
        || (fault instanceof Clamp c && c.toSupply() == high);
  }

  private static boolean broken(Anatomy anatomy, Fault fault) {
    return fault instanceof Open o && (o.at() == Break.PIN || o.at() == Break.LEG);
  }

  private static boolean powers(Anatomy anatomy, Fault fault) {
    Pad pad = ((Open) fault).pad();
    Pin.Role role = anatomy.pin(pad).role();
    return role == Pin.Role.SUPPLY || role == Pin.Role.GROUND;
  }
}
