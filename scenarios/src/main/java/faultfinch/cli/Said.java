package faultfinch.cli;

import faultfinch.desk.Statement;
import java.util.List;

/** Tells how a few things said were taken, each in a line. */
final class Said {
  private Said() {}

  static void print(Noted noted, List<Statement> statements, Terminal terminal) {
    for (Statement statement : statements) {
      if (statement instanceof Statement.Weighed w) {
        terminal.say("rank.taken", w.said(), Taken.words(w.observation(), terminal.words()));
      } else if (statement instanceof Statement.Tried t) {
        terminal.say("rank.taken", t.said(), Taken.words(t, terminal.words()));
      } else if (statement instanceof Statement.Past p) {
        terminal.say("rank.taken", p.said(), Taken.words(p, terminal.words()));
      } else if (statement instanceof Statement.Kept k) {
        terminal.say("seen.kept", k.said(), noted.why(k));
      }
    }
  }
}
