package faultfinch.cli;

import faultfinch.attempt.Debrief;
import faultfinch.attempt.Decision;
import faultfinch.bench.Breach;
import java.util.List;
import java.util.stream.Stream;

/** The debrief in the terminal: first what was done right. */
final class DebriefPage {
  private static final int WIDTH = 96;
  private static final int LONGEST = 120;

  private final Terminal terminal;
  private final boolean prices;

  /**
   * For one case.
   *
   * @param prices whether prices are shown
   */
  DebriefPage(Terminal terminal, boolean prices) {
    this.terminal = terminal;
    this.prices = prices;
  }

  void print(Debrief told) {
    terminal.out().println();
    lines(told.solved() ? "train.right.solved" : "train.right.left", told.doneRight());
    lines("train.was", told.faults().isEmpty() ? List.of(say("train.healthy")) : told.faults());
    lines("train.still", told.stillWrong());
    lines("train.decided", told.decisions().stream().map(this::decision).toList());
    route("train.route", told.route());
    best(told.best());
    lines("train.told-nothing", told.toldNothing());
    lines("train.early", told.tooEarly());
    lines("train.breaches", told.breaches().stream().map(Breach::reason).toList());
    if (prices) {
      terminal.say("train.spent", Pricing.words(told.spent(), terminal.words()));
    }
    told.marks().ifPresent(m -> terminal.say("train.marks", m));
    terminal.say("train.after");
  }

  /** What was wrong and what it did; only when the case is over. */
  void why(Debrief told) {
    lines("train.was", told.faults().isEmpty() ? List.of(say("train.healthy")) : told.faults());
    lines("train.not-reached", told.notReached());
    Paragraph.print(terminal, "train.told", told.notes());
  }

  private void lines(String title, List<String> lines) {
    if (!lines.isEmpty()) {
      terminal.say(title);
      lines.forEach(l -> terminal.out().println("  " + l));
    }
  }

  private String decision(Decision d) {
    String cost = prices ? " (" + Pricing.words(d.price(), terminal.words()) + ")" : "";
    return say("train.decision", d.text(), d.says()) + cost;
  }

  private void route(String title, List<Debrief.Leg> legs) {
    if (legs.isEmpty()) {
      return;
    }
    terminal.say(title);
    Columns columns = new Columns();
    for (int i = 0; i < legs.size(); i++) {
      Debrief.Leg leg = legs.get(i);
      String field = leg.field().isPresent() ? say("train.field", leg.field().getAsInt()) : "";
      String price = prices ? Pricing.words(leg.price(), terminal.words()) : "";
      String end = String.join(", ", Stream.of(price, field).filter(s -> !s.isEmpty()).toList());
      columns.row(
          "  " + (i + 1) + "  " + Typed.words(leg.move()),
          end.isEmpty() ? shown(leg) : shown(leg) + "  (" + end + ")");
    }
    columns.print(terminal.out(), WIDTH);
  }

  /** A long list of differences is cut; the notebook has it all. */
  private String shown(Debrief.Leg leg) {
    String text = leg.showed();
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "...";
  }

  private void best(Debrief.Best best) {
    best.why().ifPresent(terminal.out()::println);
    if (!best.route().isEmpty()) {
      terminal.say("train.best", Pricing.words(best.price(), terminal.words()));
      route("train.best.route", best.route());
    }
  }

  private String say(String key, Object... gaps) {
    return terminal.words().say(key, gaps);
  }
}
