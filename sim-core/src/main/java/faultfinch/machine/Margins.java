package faultfinch.machine;

import faultfinch.board.PlacedPart;
import faultfinch.fault.CellStuck;
import faultfinch.fault.ClockDead;
import faultfinch.fault.Fault;
import faultfinch.part.Oscillator;
import faultfinch.part.RowMemory;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * What too few volts do to sound parts, as faults that last as long as the volts do. The lowest
 * point of the ripple counts: a cell is strobed far more often than that comes round.
 *
 * <p>A cell of a dynamic memory keeps a charge in proportion to the rail, and its amplifier needs a
 * least difference; each cell has its own volts below which it reads as discharged, whatever was
 * written. An oscillator stops where its amplifier no longer makes good the crystal's losses.
 *
 * <p>Not modelled: outputs and thresholds that move with the rail, volts that change within a run
 * (a run is short against everything that moves a rail).
 */
final class Margins {
  private static final double FRACTION = 0x1.0p-53;

  private Margins() {}

  /** What shows on this board with these volts. */
  static List<Fault> of(Setup setup, Power power) {
    List<Fault> faults = new ArrayList<>();
    for (PlacedPart part : setup.board().parts()) {
      OptionalInt least = power.least(part.ref());
      if (least.isPresent() && part.type().part() instanceof RowMemory memory) {
        cells(part, memory, least.getAsInt(), setup.seed(), faults);
      } else if (least.isPresent() && part.type().part() instanceof Oscillator) {
        if (least.getAsInt() < stopsBelow(part, setup.seed())) {
          faults.add(new ClockDead(part.ref()));
        }
      }
    }
    return faults;
  }

  private static int stopsBelow(PlacedPart part, long seed) {
    int from = PowerFigures.figure("clock.stops.from");
    int to = PowerFigures.figure("clock.stops.to");
    return from + Chance.below(to - from + 1, seed, Chance.of(part.ref()), Chance.of("stops"));
  }

  private static void cells(
      PlacedPart part, RowMemory memory, int millivolts, long seed, List<Fault> faults) {
    double share = share(millivolts);
    if (share == 0 || millivolts < PowerFigures.figure("band.dead.below")) {
      return;
    }
    for (int cell = 0; cell < memory.bits().count(); cell++) {
      long drawn = Chance.draw(seed, Chance.of(part.ref()), cell, FAINT);
      if ((drawn >>> 11) * FRACTION < share) {
        faults.add(new CellStuck(part.ref(), cell, 0, memory.restsHigh(cell)));
      }
    }
  }

  private static final long FAINT = Chance.of("faint");

  /** Share of cells that need more than this. */
  static double share(int millivolts) {
    int under = PowerFigures.figure("cells.need.most") - millivolts;
    double first = PowerFigures.figure("cells.need.most.share.per-million") / 1e6;
    double decades = (double) under / PowerFigures.figure("cells.need.decade");
    return under <= 0 ? 0 : Math.min(1, first * StrictMath.pow(10, decades));
  }
}
