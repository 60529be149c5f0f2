package faultfinch.machine;

import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import java.util.Set;

/**
 * How warm the cases of a running board get: supply heat from {@link Power}, signal heat as the
 * mean over a window of phases, and a rise of the first order.
 *
 * <p>Not modelled: parts that warm each other, the air inside a lid, activity that changes while
 * the board warms up.
 */
public final class Heat {
  private final Setup setup;
  private final Circuit circuit;
  private final Power power;
  private final SignalHeat signals;

  private Heat(Setup setup, Circuit circuit, Power power, SignalHeat signals) {
    this.setup = setup;
    this.circuit = circuit;
    this.power = power;
    this.signals = signals;
  }

  /**
   * Measures a running board. Its time goes on by the window, as with any instrument; while the
   * processor is held the levels at rest are taken once.
   *
   * @param cycles length of the window, 1 or more
   */
  public static Heat of(Machine machine, int cycles) {
    Circuit circuit = machine.plain().circuit;
    SignalHeat signals = new SignalHeat(circuit, machine.board().phaseNanoseconds());
    machine.rest();
    if (!machine.held()) {
      machine.play(cycles, (phase, at) -> signals.sample(phase, machine.plain().levels));
    } else {
      signals.sample(machine.plain().levels.phase, machine.plain().levels);
    }
    return new Heat(machine.setup(), circuit, machine.power(), signals);
  }

  /** The heat of the supply alone: a board on a feed that does not let it run. */
  public static Heat of(Power power, Setup setup) {
    Circuit circuit =
        Wiring.compile(setup.board(), setup.faults(), setup.out(), Set.of(), setup.seed(), false);
    return new Heat(
        setup, circuit, power, new SignalHeat(circuit, setup.board().phaseNanoseconds()));
  }

  /** Milliamperes the board takes at its jack, signal currents included. */
  public int currentMilliamps() {
    return power.currentMilliamps() + whole(signals.milliamps());
  }

  /** Milliwatts a part turns into heat; 0 for a reference the board does not have. */
  public int milliwatts(String ref) {
    return whole(exact(ref));
  }

  /** Milliwatts of a part that its signals alone cause: large where two outputs fight. */
  public int signalMilliwatts(String ref) {
    int p = circuit.index(ref);
    return p < 0 ? 0 : whole(signals.milliwatts(p));
  }

  private double exact(String ref) {
    int p = circuit.index(ref);
    double own = power.milliwatts(ref) + (p < 0 ? 0 : signals.milliwatts(p));
    Supply supply = setup.board().supply();
    if (ref.equals(supply.regulator())) {
      int across = power.afterDiodeMillivolts() - power.railMillivolts();
      own += Math.max(0, across) * signals.milliamps() / 1000;
    }
    return own;
  }

  /**
   * Case temperature in tenths of a degree Celsius.
   *
   * @param seconds since power-on from cold, 0 or more
   * @throws IllegalArgumentException if the board has no such part
   */
  public int caseTenths(String ref, int seconds) {
    PlacedPart part =
        setup
            .board()
            .part(ref)
            .orElseThrow(
                () ->
                    new IllegalArgumentException("no part " + ref + " on " + setup.board().name()));
    double settled = Math.min(PowerFigures.figure("rise.most"), exact(ref) * perMilliwatt(part));
    double share = 1 - StrictMath.exp(-(double) seconds / PowerFigures.figure("settles.s"));
    return PowerFigures.figure("air.tenths") + whole(settled * share);
  }

  /** Tenths of a kelvin for each milliwatt. */
  private static double perMilliwatt(PlacedPart part) {
    int rise = PowerFigures.orNone("rise", part.type());
    if (rise > 0) {
      double nominal = PowerFigures.current(part.type()) * Branch.Draw.NOMINAL_MILLIVOLTS / 1000.0;
      return rise / nominal;
    }
    return PowerFigures.orNone("per-watt", part.type()) / 1000.0;
  }

  /** What a finger says of a part after so many seconds, against a healthy board's heat. */
  public Finger finger(String ref, int seconds, Heat healthy) {
    return Finger.of(caseTenths(ref, seconds), healthy.caseTenths(ref, seconds));
  }

  private static int whole(double figure) {
    return (int) StrictMath.floor(figure + 0.5);
  }
}
