package faultfinch.machine;

import faultfinch.board.KeyPress;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Presses a board's keys while its time goes on. */
final class Script {
  private record Move(String ref, boolean down) {}

  private final TreeMap<Long, Move> left = new TreeMap<>();

  Script(List<KeyPress> presses) {
    for (KeyPress k : presses) {
      left.put(k.atMilliseconds() * 1_000_000L, new Move(k.ref(), true));
      long up = k.atMilliseconds() + k.forMilliseconds();
      left.put(up * 1_000_000L, new Move(k.ref(), false));
    }
  }

  /** Runs to a time, with every press and release due before it. */
  void runTo(Machine machine, long nanoseconds) {
    while (!left.isEmpty() && left.firstKey() < nanoseconds) {
      Map.Entry<Long, Move> next = left.pollFirstEntry();
      machine.runTo(next.getKey());
      machine.hold(next.getValue().ref(), next.getValue().down());
    }
    machine.runTo(nanoseconds);
  }
}
