package faultfinch.bench;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.machine.Machine;
import faultfinch.machine.PinCurrents;
import faultfinch.symptom.Watching;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Between which two pins of a net most current flows, pin by pin along it, when a healthy board is
 * ready and no key is pressed: what parts the chips on a line that is held, or fought over.
 */
public final class CurrentPaths {
  /** Of a net along which nothing flows that a signal would not need. */
  public static final String NOTHING = "nothing flows";

  /** Signals of healthy boards need less. */
  private static final double LEAST_MILLIAMPS = 6;

  private static final int CYCLES = 512;
  private static final long MILLISECOND = 1_000_000;

  private CurrentPaths() {}

  /** Nets that can be followed: all but those of the supply. */
  public static List<String> nets(Board board) {
    return board.nets().stream()
        .map(Net::name)
        .filter(name -> !board.supply().feeds(name))
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
    SortedMap<String, String> found = new TreeMap<>();
    for (String name : nets(board)) {
      found.put(name, says(currents.into(board.net(name).orElseThrow())));
    }
    return found;
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
