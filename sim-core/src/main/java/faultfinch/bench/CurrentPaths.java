package faultfinch.bench;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.machine.Machine;
import faultfinch.machine.PinCurrents;
import faultfinch.machine.PinCurrents.Way;
import faultfinch.symptom.Watching;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Between which two pins of a net most current flows, pin by pin along it, when a healthy board is
 * ready and no key is pressed: what parts the chips on a line that is held, or fought over. Where
 * nothing flows it is joined to the supply or to ground through a thousand ohms, and that current
 * is followed to what holds the line, or pulls at it most of the time. Nets of the supply are
 * followed as {@link RailPaths} does.
 */
public final class CurrentPaths {
  /** Of a net along which nothing flows that a signal would not need. */
  public static final String NOTHING = "nothing flows";

  /** Signals of healthy boards need less. */
  private static final double LEAST_MILLIAMPS = 6;

  /** Of what a pushed net takes, milliamperes: more than a pull-up and inputs give. */
  private static final double LEAST_HELD = 1.5;

  /**
   * Of a net that moves, in the mean: more than half of what an output takes that is always low.
   */
  private static final double LEAST_LOW = 3;

  /** The same of one that is always high, of which an NMOS output gives least, 3.8 V over 2,200. */
  private static final double LEAST_HIGH = 1.65;

  private static final int CYCLES = 512;
  private static final long MILLISECOND = 1_000_000;

  private CurrentPaths() {}

  /** Nets that can be followed: all but the ground. */
  public static List<String> nets(Board board) {
    return board.nets().stream()
        .map(Net::name)
        .filter(name -> !name.equals(board.supply().groundNet()))
        .sorted()
        .toList();
  }

  /** When a machine is to stand so that it can be followed, nanoseconds since power-on. */
  public static long begin(Board board) {
    return (Watching.readyMilliseconds(board) - 1) * MILLISECOND
        - CYCLES * (long) board.cycleNanoseconds();
  }

  /**
   * What is found on every net that can be followed.
   *
   * @param machine that stands at {@link #begin}; it plays on
   */
  public static SortedMap<String, String> of(Machine machine) {
    Board board = machine.board();
    PinCurrents currents = new PinCurrents(machine);
    List<Integer> lengths = board.phaseNanoseconds();
    if (machine.processorHertz() > 0) {
      machine.play(CYCLES, (phase, nanoseconds) -> currents.sample(lengths.get(phase.ordinal())));
    } else {
      machine.rest();
      currents.sample(1);
    }
    SortedMap<String, String> found =
        new TreeMap<>(RailPaths.of(machine.setup(), machine.power(), RailPaths.nets(board)));
    for (String name : nets(board)) {
      if (found.containsKey(name)) {
        continue;
      }
      Net net = board.net(name).orElseThrow();
      String flows = says(currents.into(net, Way.AS_IT_IS));
      found.put(name, flows.equals(NOTHING) ? held(net, currents) : flows);
    }
    return found;
  }

  /**
   * What holds a net that stays at one level, or pulls at one that moves more than any part does
   * that is asked in its turn.
   */
  private static String held(Net net, PinCurrents currents) {
    if (currents.stays(net, true)) {
      return most(net, currents, false, LEAST_HELD, "held high by ");
    }
    if (currents.stays(net, false)) {
      return most(net, currents, true, LEAST_HELD, "held low by ");
    }
    String low = most(net, currents, true, LEAST_LOW, "pulled low by ");
    return low.equals(NOTHING) ? most(net, currents, false, LEAST_HIGH, "pulled high by ") : low;
  }

  private static String most(
      Net net, PinCurrents currents, boolean up, double least, String words) {
    Pad holds = null;
    double most = least;
    Way way = up ? Way.PUSHED_UP : Way.PUSHED_DOWN;
    for (Map.Entry<Pad, Double> pin : currents.into(net, way).entrySet()) {
      double flows = up ? -pin.getValue() : pin.getValue();
      if (flows > most) {
        most = flows;
        holds = pin.getKey();
      }
    }
    return holds == null ? NOTHING : words + holds.text();
  }

  private static String says(Map<Pad, Double> into) {
    Pad from = null;
    Pad to = null;
    for (Map.Entry<Pad, Double> pin : into.entrySet()) {
      double flows = pin.getValue();
      from =
          flows >= LEAST_MILLIAMPS && (from == null || flows > into.get(from))
              ? pin.getKey()
              : from;
      to = flows <= -LEAST_MILLIAMPS && (to == null || flows < into.get(to)) ? pin.getKey() : to;
    }
    if (from == null && to == null) {
      return NOTHING;
    }
    return "from " + end(from) + " to " + end(to);
  }

  private static String end(Pad pad) {
    return pad == null ? "several" : pad.text();
  }
}
