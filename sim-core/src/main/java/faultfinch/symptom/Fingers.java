package faultfinch.symptom;

import faultfinch.machine.Machine;
import java.util.List;

/** The hands of somebody at the keys of a board. */
final class Fingers {
  private static final long MILLISECOND = 1_000_000;

  private final Machine machine;
  private final int downMs;
  private final int upMs;

  /** Each key is held for so many milliseconds, and let go for so many before the next. */
  Fingers(Machine machine, int downMs, int upMs) {
    this.machine = machine;
    this.downMs = downMs;
    this.upMs = upMs;
  }

  /** Keys one after the other. */
  void press(List<String> refs) {
    refs.forEach(this::press);
  }

  void press(String ref) {
    down(ref);
    up(ref);
  }

  void down(String ref) {
    machine.hold(ref, true);
    pass(downMs);
  }

  void up(String ref) {
    machine.hold(ref, false);
    pass(upMs);
  }

  void pass(int milliseconds) {
    machine.runTo(machine.nanoseconds() + milliseconds * MILLISECOND);
  }
}
