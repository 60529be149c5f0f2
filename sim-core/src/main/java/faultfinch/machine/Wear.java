package faultfinch.machine;

import faultfinch.board.PlacedPart;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Pin;
import faultfinch.signal.Technology;
import java.util.List;

/**
 * What a part bears of too many volts before it dies for good: so many millivolt-minutes above 6 V,
 * its own chance on this board. LS and DRAM bear least.
 */
public final class Wear {
  private Wear() {}

  /** Whether a part that has borne so much has died of it. */
  public static boolean killed(PlacedPart part, long seed, long millivoltMinutes) {
    return millivoltMinutes >= bears(part, seed);
  }

  /** Millivolt-minutes above 6 V at which a part dies. */
  static int bears(PlacedPart part, long seed) {
    int from = PowerFigures.figure("wear.from." + frailty(part));
    int to = PowerFigures.figure("wear.to." + frailty(part));
    return from + Chance.below(to - from + 1, seed, Chance.of(part.ref()), Chance.of("wear"));
  }

  /** The key of the figures for how easily a part dies: dram, ls or other. */
  static String frailty(PlacedPart part) {
    if (part.type() == PartCatalog.DRAM_4164) {
      return "dram";
    }
    List<Pin> pins = part.type().part().pinout().pins();
    return pins.stream().anyMatch(p -> p.technology() == Technology.LS) ? "ls" : "other";
  }
}
