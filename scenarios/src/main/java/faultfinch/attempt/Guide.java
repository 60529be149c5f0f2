package faultfinch.attempt;

import faultfinch.bench.Moves;
import faultfinch.format.GuideLine;
import java.util.List;
import java.util.Optional;

/** Asks for one act after the other, and notices when it is done, also a little out of order. */
final class Guide {
  private final List<GuideLine> lines;
  private final boolean[] done;

  Guide(List<GuideLine> lines) {
    this.lines = lines;
    this.done = new boolean[lines.size()];
  }

  /** The act asked for now. */
  Optional<String> asks() {
    int next = next();
    return next == lines.size() ? Optional.empty() : Optional.of(lines.get(next).says());
  }

  /**
   * Something was done. Looks may come early, as long as nothing that changes the board stands
   * between: a second look at the screen is not the one after the repair.
   */
  void did(String act) {
    for (int i = next(); i < lines.size(); i++) {
      if (!done[i] && lines.get(i).done().contains(act)) {
        done[i] = true;
        return;
      }
      if (!done[i] && !onlyLooks(lines.get(i))) {
        return;
      }
    }
  }

  private int next() {
    int i = 0;
    while (i < done.length && done[i]) {
      i++;
    }
    return i;
  }

  private static boolean onlyLooks(GuideLine line) {
    return line.done().stream()
        .allMatch(a -> a.equals(GuideLine.STRIP) || a.startsWith(Moves.LOOK.word() + ": "));
  }
}
