package faultfinch.fault;

import java.util.Optional;

/**
 * One thing that is wrong, as an identity: equal faults have equal text. What becomes of it (found,
 * dropped, equivalent to another) is kept in tables by fault, never in it.
 */
public sealed interface Fault
    permits ReadsStuck,
        DrivesStuck,
        Clamp,
        Leak,
        Open,
        TrackOpen,
        Bridge,
        TrackBridge,
        Dead,
        Reversed,
        BadlySeated,
        Misplaced,
        MisProgrammed,
        CellStuck,
        CellDefect,
        DefectInside,
        Slow,
        Race,
        ElementOpen,
        ElementShort,
        StuckClosed,
        Drift,
        CapacitorShort,
        CapacitorLeak,
        ClockDead,
        ClockOff,
        RegulatorFault,
        BrickFault,
        SupplyBreak,
        Conditional {

  /** The one text form, read back by {@link FaultKinds#parse}. */
  String text();

  /** Reference of the part, or the net's or lead's name, that a repair would touch. */
  String place();

  /** The row of the registry it belongs to. */
  FaultKinds kind();

  /** What a hand would have to get at to cure it. */
  Seat seat();

  /** The exact spot inside {@link #place()}: a pad, a piece of track, two pads; else the place. */
  default String spot() {
    return place();
  }

  /**
   * The one thing of which there can be one state only, such as what a pin reads; two faults that
   * decide the same thing cannot stand together.
   */
  default Optional<String> decides() {
    return Optional.empty();
  }

  /** When it shows. */
  default Condition condition() {
    return Condition.ALWAYS;
  }

  /** The fault without its condition. */
  default Fault base() {
    return this;
  }

  /** Carries it out on a board being compiled. */
  void applyTo(Harm harm);
}
