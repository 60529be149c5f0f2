package faultfinch.bench;

import faultfinch.bench.Reading.Light;
import faultfinch.board.Pad;
import faultfinch.machine.Machine;
import faultfinch.signal.Electrical;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Gathers what every pin and pad carries over the windows of a run, phase by phase, as a probe and
 * a meter take it.
 */
final class Levels {
  private static final int LOW = 1;
  private static final int HIGH = 2;
  private static final int MID = 4;
  private static final int RESTLESS = 8;
  private static final double SECOND = 1e9;
  private static final int MID_FROM = Electrical.figure("mid.from");
  private static final int MID_TO = Electrical.figure("mid.to");

  /** What a clock net swings between; it is solved as a rate, so its phases do not show it. */
  private static final int CLOCK_LOW_MV = 200;

  private static final int CLOCK_HIGH_MV = 3400;

  /** When nets rise, from low to high, as a counter that measures periods takes it. */
  private static final class Rises {
    private final boolean[] low;
    private final int[] times;
    private final double[] first;
    private final double[] last;

    Rises(int nets) {
      low = new boolean[nets];
      times = new int[nets];
      first = new double[nets];
      last = new double[nets];
    }

    void note(int net, int level, double now) {
      if (level == HIGH && low[net]) {
        first[net] = times[net]++ == 0 ? now : first[net];
        last[net] = now;
      }
      low[net] = level == LOW || low[net] && level != HIGH;
    }

    /** How often in such a time, from the first rise to the last; 0 if it did not rise twice. */
    double each(int net, int nanoseconds) {
      return times[net] < 2 ? 0 : nanoseconds * (times[net] - 1) / (last[net] - first[net]);
    }
  }

  private static final class Point {
    int seen;

    /** The same while the board waits: in the meter's window, and in those of what is seldom. */
    int resting;

    int seldom;
    double average;

    /** Of a clock that the oscillator turns by itself; 0 of all else. */
    double hertz;

    double duty;

    /** As it rose while averages were taken, in hertz. */
    double rises;
  }

  private final Map<Pad, Point> pins = new LinkedHashMap<>();
  private final Map<Pad, Point> pads = new LinkedHashMap<>();
  private final int[] phaseNanoseconds;
  private final int cycle;

  private final Legs legs;
  private final Trail trail;

  Levels(List<Pad> places, List<Integer> phaseNanoseconds, Legs legs, Trail trail) {
    this.legs = legs;
    this.trail = trail;
    this.phaseNanoseconds = phaseNanoseconds.stream().mapToInt(Integer::intValue).toArray();
    cycle = Arrays.stream(this.phaseNanoseconds).sum();
    for (Pad pad : places) {
      pins.put(pad, new Point());
      pads.put(pad, new Point());
    }
  }

  /** Plays one window for the probe; in that of the meter its averages are taken too. */
  void play(Machine machine, Window window) {
    int cycles = window.cycles();
    boolean averages = window == Window.IDLE;
    int nets = machine.points();
    int[] seen = new int[nets];
    double[] volts = new double[nets];
    double[] time = new double[1];
    Rises rises = new Rises(nets);
    trail.begin(machine);
    machine.play(
        cycles,
        (phase, nanoseconds) -> {
          int length = phaseNanoseconds[phase.ordinal()];
          time[0] += length;
          trail.phase(machine);
          for (int net = 0; net < nets; net++) {
            int carries = machine.carries(net);
            volts[net] += (double) (carries >> 2) * length;
            int level = flag(carries);
            seen[net] |= level;
            if (averages) {
              rises.note(net, level, time[0]);
            }
          }
        });
    trail.end(machine);
    for (Map.Entry<Pad, Point> at : pins.entrySet()) {
      Point point = at.getValue();
      note(point, seen[legs.point(machine, at.getKey())], window);
      if (averages) {
        point.average = volts[legs.point(machine, at.getKey())] / time[0];
        point.hertz = machine.clockHertz(at.getKey(), legs.asPad(at.getKey()));
        point.duty = machine.clockDuty(at.getKey(), legs.asPad(at.getKey()));
        point.rises = rises.each(legs.point(machine, at.getKey()), cycle) * cyclesASecond(machine);
      }
    }
    for (Map.Entry<Pad, Point> at : pads.entrySet()) {
      note(at.getValue(), seen[machine.point(at.getKey(), true)], window);
      at.getValue().hertz = machine.clockHertz(at.getKey(), true);
    }
  }

  private static void note(Point point, int seen, Window window) {
    point.seen |= seen;
    point.resting |= window == Window.IDLE ? seen : 0;
    point.seldom |= window == Window.SELDOM ? seen : 0;
  }

  /** Also of a board whose processor stands still. */
  private static double cyclesASecond(Machine machine) {
    double hertz = machine.processorHertz();
    return hertz > 0 ? hertz : SECOND / machine.board().cycleNanoseconds();
  }

  /** What a probe's lights would do of it in one phase, one bit. */
  static int flag(int carries) {
    int millivolts = carries >> 2;
    return switch (carries & 3) {
      case 0 -> millivolts < MID_FROM ? LOW : millivolts > MID_TO ? HIGH : MID;
      case 1 -> 0;
      default -> RESTLESS;
    };
  }

  private Point point(Pad pad, boolean atPad) {
    return (atPad ? pads : pins).get(pad);
  }

  /** What a probe's lights show; it holds on to pulses, so one is enough. */
  Light light(Pad pad, boolean atPad) {
    Point p = point(pad, atPad);
    boolean both = (p.seen & (LOW | HIGH)) == (LOW | HIGH);
    // Nothing drives it while the board waits but for a moment: that is a pulse, of one light.
    boolean pulled = p.resting == 0 && p.seldom != 0 && (p.seen & MID) == 0;
    if (p.hertz > 0 || both || pulled || (p.seen & RESTLESS) != 0) {
      return Light.PULSING;
    }
    if ((p.seen & MID) != 0) {
      return Light.MID;
    }
    return (p.seen & HIGH) != 0 ? Light.HIGH : (p.seen & LOW) != 0 ? Light.LOW : Light.NONE;
  }

  /** Average millivolts at the pin. */
  int average(Pad pad) {
    Point p = point(pad, false);
    double mv = p.hertz > 0 ? CLOCK_LOW_MV + p.duty * (CLOCK_HIGH_MV - CLOCK_LOW_MV) : p.average;
    return (int) StrictMath.round(mv);
  }

  /** Hertz at the pin; 0 if nothing rises there twice while averages are taken. */
  double hertz(Pad pad) {
    Point p = point(pad, false);
    return p.hertz > 0 ? p.hertz : p.rises;
  }
}
