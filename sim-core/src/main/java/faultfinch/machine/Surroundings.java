package faultfinch.machine;

import faultfinch.board.Pad;
import faultfinch.fault.Condition;
import faultfinch.fault.Fault;
import java.util.Set;

/**
 * What a board is exposed to while it runs; faults with a condition wait for it.
 *
 * @param minutes how long it has been on before this run began
 * @param air what is done to its temperature by hand
 * @param shaken whether it is pressed or flexed
 * @param probes where a probe is held to a pin while it runs
 * @param at the one part that is cooled, warmed or pressed; empty for the whole board
 */
public record Surroundings(int minutes, Air air, boolean shaken, Set<Pad> probes, String at) {
  public Surroundings {
    probes = Set.copyOf(probes);
  }

  /** The whole board alike. */
  public Surroundings(int minutes, Air air, boolean shaken, Set<Pad> probes) {
    this(minutes, air, shaken, probes, "");
  }

  /** Nothing held to it. */
  public Surroundings(int minutes, Air air, boolean shaken) {
    this(minutes, air, shaken, Set.of());
  }

  /** A board switched on at room temperature and left alone. */
  public static final Surroundings BENCH = new Surroundings(0, Air.ROOM, false);

  /** Minutes after which a board counts as warm: cases settle in about four. */
  private static final int WARM_AFTER = 4;

  private static final int SECONDS = 60;

  /** Air at the parts. */
  public enum Air {
    ROOM,
    COOLED,
    WARMED
  }

  /** Case temperature of a part in tenths of a degree, by its own heat and the air at it. */
  int caseTenths(String ref, Heat heat) {
    int above = heat.caseTenths(ref, minutes * SECONDS) - PowerFigures.figure("air.tenths");
    return above
        + switch (at.isEmpty() || at.equals(ref) ? air : Air.ROOM) {
          case ROOM -> PowerFigures.figure("air.tenths");
          case COOLED -> PowerFigures.figure("air.cooled.tenths");
          case WARMED -> PowerFigures.figure("air.warmed.tenths");
        };
  }

  /** Whether a fault shows now by its condition; chance and volts are the machine's to say. */
  boolean meets(Fault fault) {
    boolean here = at.isEmpty() || isAt(fault, at);
    Air there = here ? air : Air.ROOM;
    boolean warm = there == Air.WARMED || there == Air.ROOM && minutes >= WARM_AFTER;
    Condition condition = fault.condition();
    return switch (condition.kind()) {
      case ALWAYS -> true;
      case WARM -> warm;
      case COLD -> !warm;
      case AFTER_MINUTES -> minutes >= condition.figure() && there != Air.COOLED;
      case SHAKEN -> shaken && here;
      case LOW_VOLTS, ONE_POWER_ON_IN -> false;
    };
  }

  /** Whether a fault is at a part: inside it, under it, or at one of its pads. */
  public static boolean isAt(Fault fault, String ref) {
    return fault.place().equals(ref) || fault.spot().matches("(.*-)?" + ref + "([.-].*)?");
  }
}
