package faultfinch.machine;

import faultfinch.board.PlacedPart;
import faultfinch.part.Element;

/**
 * How long a net with a capacitor to a supply net takes to charge through what pulls at it, from
 * the moment the supply stands. It is the wiring the levels are solved on, so an open or shorted
 * capacitor, a resistor off its value and a leak need nothing of their own here.
 *
 * <p>Not modelled: charge that gates or coupled nets bring.
 */
final class Ramp {
  /** What track and pins hold against the board; all there is where no capacitor is fitted. */
  private static final double STRAY_FARADS = 20e-12;

  /** A timer ends at two thirds of its supply. */
  private static final double ENDS_AT = Wiring.RAIL_MILLIVOLTS * 2 / 3.0;

  /** Resistance times capacitance for two thirds, as every data sheet rounds it. */
  private static final double TIMES = 1.1;

  private Ramp() {}

  /** Nanoseconds to two thirds of the rail; {@link Long#MAX_VALUE} if the net never gets there. */
  static long nanoseconds(Circuit c, Levels levels, int net) {
    double siemens = 0;
    double amperes = 0;
    for (int i = 0; i < c.loadOhm[net].length; i++) {
      if (levels.loads(net, i)) {
        siemens += 1.0 / c.loadOhm[net][i];
        amperes += c.loadMv[net][i] / (double) c.loadOhm[net][i];
      }
    }
    double settles = siemens == 0 ? 0 : amperes / siemens;
    if (settles <= ENDS_AT) {
      return Long.MAX_VALUE;
    }
    double longer =
        StrictMath.log(settles / (settles - ENDS_AT))
            / StrictMath.log(Wiring.RAIL_MILLIVOLTS / (Wiring.RAIL_MILLIVOLTS - ENDS_AT));
    return StrictMath.round(TIMES * farads(c, net) / siemens * longer * 1e9);
  }

  static double farads(Circuit c, int net) {
    if (c.farads[net] == 0) {
      c.farads[net] = summed(c, net);
    }
    return c.farads[net];
  }

  private static double summed(Circuit c, int net) {
    double farads = 0;
    for (int p = 0; p < c.parts.length; p++) {
      PlacedPart placed = c.board.parts().get(p);
      boolean fitted =
          c.parts[p] instanceof Element e
              && e.kind() == Element.Kind.CAPACITOR
              && !placed.value().isEmpty()
              && !c.harm.absent.contains(c.refs[p])
              && !c.harm.elementsOpen.contains(c.refs[p]);
      if (fitted) {
        int one = c.netOf[c.pinBase[p]];
        int other = c.netOf[c.pinBase[p] + 1];
        boolean loads =
            one == net && c.source[other] != Circuit.NO_SOURCE
                || other == net && c.source[one] != Circuit.NO_SOURCE;
        farads += loads ? Element.farads(placed.value()) : 0;
      }
    }
    return Math.max(farads, STRAY_FARADS);
  }
}
