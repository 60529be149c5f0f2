package faultfinch.attempt;

import faultfinch.bench.Moves;
import faultfinch.format.GuideLine;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Asks for one act after the other. An act done early is not asked again, and one that is passed
 * over is given up: by doing the next one instead, or any two that come later.
 */
final class Guide {
  private static final int PASSED_OVER_BY = 2;

  private final List<GuideLine> lines;
  private final boolean[] done;
  private boolean powered;
  private int at;
  private int early;
  private int firstEarly;

  Guide(List<GuideLine> lines) {
    this.lines = lines;
    this.done = new boolean[lines.size()];
    at = undone(0);
  }

  /** The act asked for now. */
  Optional<String> asks() {
    return at == done.length ? Optional.empty() : Optional.of(lines.get(at).says());
  }

  /**
   * Something was done.
   *
   * @param powered whether the board is switched on now
   */
  void did(String act, boolean powered) {
    int asked = at;
    int next = at < done.length ? undone(at + 1) : done.length;
    boolean switched = this.powered != powered;
    this.powered = powered;
    int line = match(act, next);
    if (line < done.length) {
      done[line] = true;
      passOver(line, next);
    }
    at = undone(at);
    if (switched) {
      takeBackSwitch();
    }
    early = at == asked ? early : 0;
  }

  /** The line an act fulfils, or one past the last. */
  private int match(String act, int next) {
    boolean known = false;
    for (int i = 0; i < done.length; i++) {
      GuideLine line = lines.get(i);
      if (line.done().contains(act)) {
        boolean meant = switches(line) ? i <= next : !known || changedBefore(i);
        if (i >= at && !done[i] && meant) {
          return i;
        }
        known = true;
      }
    }
    return done.length;
  }

  private void passOver(int line, int next) {
    if (line == at) {
      return;
    }
    firstEarly = early == 0 ? line : Math.min(firstEarly, line);
    early++;
    if (line == next || early >= PASSED_OVER_BY) {
      Arrays.fill(done, at, line == next ? line : firstEarly, true);
    }
  }

  /** Who takes back the last switching is asked for it again. */
  private void takeBackSwitch() {
    for (int i = at - 1; i >= 0; i--) {
      if (switches(lines.get(i))) {
        if (!switchedAlready(lines.get(i))) {
          done[i] = false;
          at = i;
        }
        return;
      }
    }
  }

  /** The first line from here on that is neither done nor already as it wants to have it. */
  private int undone(int from) {
    int i = from;
    while (i < done.length && (done[i] || switchedAlready(lines.get(i)))) {
      i++;
    }
    return i;
  }

  /**
   * Whether the last change asked for before a line was made: a second look at the screen is not
   * the one after the repair.
   */
  private boolean changedBefore(int line) {
    for (int i = line - 1; i >= 0; i--) {
      if (!onlyLooks(lines.get(i)) && !switches(lines.get(i))) {
        return done[i];
      }
    }
    return true;
  }

  private boolean switchedAlready(GuideLine line) {
    return switches(line) && switchesOn(line) == powered;
  }

  private static boolean switches(GuideLine line) {
    return switchesOn(line) || line.done().contains(Moves.POWER_OFF.word());
  }

  private static boolean switchesOn(GuideLine line) {
    return line.done().contains(Moves.POWER_ON.word());
  }

  private static boolean onlyLooks(GuideLine line) {
    return line.done().stream()
        .allMatch(a -> a.equals(GuideLine.STRIP) || a.startsWith(Moves.LOOK.word() + ": "));
  }
}
