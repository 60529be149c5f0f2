package faultfinch.machine;

import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.signal.Pin;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * How late the slow parts of a circuit are and how much time its races leave, as their volts,
 * temperatures and the probes on them make it. Tenths of a nanosecond.
 *
 * <p>A delay grows by 0.3 % for each kelvin above 25 degrees and shrinks by 6 % for each quarter of
 * a volt above 5; a probe or 15 pF on a net adds 5 ns. Of a ripple the lowest point counts.
 */
final class Delays {
  /** Within so much of a limit chance decides. */
  static final int UNSURE = 10 * PowerFigures.figure("delay.unsure.ns");

  private static final int SOUND = -1;
  private static final int ROOM_TENTHS = 250;
  private static final int NOMINAL_MILLIVOLTS = 5000;
  private static final double PER_TENTH_KELVIN = PowerFigures.figure("delay.per-kelvin") / 1e5;
  private static final double PER_MILLIVOLT = PowerFigures.figure("delay.per-quarter-volt") / 25e3;

  /** What each part's outputs take; -1 for a part whose delay does not matter. */
  final int[] late;

  /**
   * By how much the address is there before each part's column strobe, where it may be too late.
   */
  final Map<Integer, Integer> races = new TreeMap<>();

  final long seed;
  final int powerOn;
  final int cycleNanoseconds;
  final int[] phaseTenths;

  private Delays(Circuit c, Setup setup, Power power) {
    seed = setup.seed();
    powerOn = setup.powerOn();
    cycleNanoseconds = c.board.cycleNanoseconds();
    phaseTenths = c.board.phaseNanoseconds().stream().mapToInt(ns -> 10 * ns).toArray();
    late = new int[c.parts.length];
    Arrays.fill(late, SOUND);
    Heat heat = Heat.of(power, setup);
    c.harm.slow.forEach(
        (ref, ns) -> {
          int p = c.index(ref);
          late[p] = tenths(ns, ref, setup, power, heat) + load(c, p, setup, Pin.Role.DATA);
        });
    c.harm.races.forEach(
        (ref, ns) -> {
          int p = c.index(ref);
          int strobe = tenths(ns, ref, setup, power, heat) + load(c, p, setup, Pin.Role.ENABLE);
          int left = strobe - 10 * PowerFigures.figure("race.turn.ns");
          // With that much to spare the address is always there: nothing depends on such a part.
          if (left <= UNSURE) {
            races.put(p, left);
          }
        });
  }

  /** The delays of a circuit, if there is a part in it whose delay matters. */
  static Optional<Delays> of(Circuit c, Setup setup, Power power) {
    if (c.harm.slow.isEmpty() && c.harm.races.isEmpty()) {
      return Optional.empty();
    }
    Delays delays = new Delays(c, setup, power);
    return Optional.of(delays).filter(d -> !c.harm.slow.isEmpty() || !d.races.isEmpty());
  }

  boolean slow(int part) {
    return late[part] != SOUND;
  }

  private static int tenths(int ns, String ref, Setup setup, Power power, Heat heat) {
    int above = setup.surroundings().caseTenths(ref, heat) - ROOM_TENTHS;
    int over = power.least(ref).orElse(NOMINAL_MILLIVOLTS) - NOMINAL_MILLIVOLTS;
    double factor = 1 + above * PER_TENTH_KELVIN - over * PER_MILLIVOLT;
    return (int) StrictMath.round(10 * ns * factor);
  }

  /** What probes add on the nets of a part's pins of this role. */
  private static int load(Circuit c, int part, Setup setup, Pin.Role role) {
    int load = 0;
    PlacedPart placed = c.board.parts().get(part);
    for (Pad probe : setup.surroundings().probes()) {
      int net = c.padNetOf[c.pin(probe.ref(), probe.pin())];
      boolean on =
          placed.type().part().pinout().pins().stream()
              .filter(p -> p.role() == role)
              .anyMatch(p -> c.netOf[c.pinBase[part] + p.bit()] == net);
      load += on ? 10 * PowerFigures.figure("delay.load.ns") : 0;
    }
    return load;
  }
}
