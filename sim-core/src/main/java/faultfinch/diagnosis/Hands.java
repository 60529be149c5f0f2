package faultfinch.diagnosis;

import faultfinch.machine.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/** Runs a machine while somebody works its keys as the exercise of its board tells. */
final class Hands {
  private static final long MILLISECOND = 1_000_000;

  private final Machine machine;
  private final NavigableMap<Long, List<Runnable>> moves = new TreeMap<>();

  Hands(Machine machine) {
    this.machine = machine;
    machine
        .board()
        .exercise()
        .forEach(
            key -> {
              long at = key.atMilliseconds() * MILLISECOND;
              long until = at + key.forMilliseconds() * MILLISECOND;
              move(at, () -> machine.hold(key.ref(), true));
              move(until, () -> machine.hold(key.ref(), false));
            });
  }

  private void move(long at, Runnable what) {
    moves.computeIfAbsent(at, t -> new ArrayList<>()).add(what);
  }

  /** The machine at this many nanoseconds since power-on; what is due then has not been done. */
  Machine at(long nanoseconds) {
    while (!moves.isEmpty() && moves.firstKey() < nanoseconds) {
      var next = moves.pollFirstEntry();
      machine.runTo(next.getKey());
      next.getValue().forEach(Runnable::run);
    }
    machine.runTo(Math.max(0, nanoseconds));
    return machine;
  }
}
