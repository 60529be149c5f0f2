package faultfinch.cli;

import faultfinch.attempt.Attempt;
import faultfinch.attempt.Decision;
import faultfinch.attempt.Hunch;
import faultfinch.attempt.JobCard;
import faultfinch.attempt.Note;
import faultfinch.attempt.Slip;
import faultfinch.attempt.Status;
import faultfinch.attempt.Suspect;
import faultfinch.bench.Breach;
import faultfinch.bench.Look;
import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.bench.Offer;
import faultfinch.bench.Reading;
import faultfinch.format.Case;
import faultfinch.library.Library;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Plays cases in the terminal: reads a line, does it, tells what came of it, asks again. */
final class TextTrainer {
  private static final int SUSPECTS_SHOWN = 8;
  private static final int DIFFERENCES_SHOWN = 3;

  private final Terminal terminal;
  private Attempt attempt;
  private Optional<Look> lastLook = Optional.empty();
  private boolean left;

  TextTrainer(Terminal terminal) {
    this.terminal = terminal;
  }

  /** Plays this case, and then the next ones if they are asked for, until the learner leaves. */
  void play(Case first) {
    begin(first);
    while (!left) {
      Optional<String> line = ask("train.prompt");
      if (line.isEmpty()) {
        terminal.out().println();
        leave();
      } else {
        heed(line.get());
      }
    }
  }

  private void begin(Case job) {
    attempt = Attempt.begin(job);
    lastLook = Optional.empty();
    card();
    guide();
  }

  private Optional<String> ask(String prompt) {
    terminal.out().print(terminal.words().say(prompt));
    terminal.out().flush();
    try {
      return Optional.ofNullable(terminal.in().readLine()).map(String::strip);
    } catch (IOException e) {
      throw new UncheckedIOException("what is typed cannot be read", e);
    }
  }

  private void heed(String line) {
    try {
      if (!talk(line)) {
        work(line);
      }
    } catch (Slip slip) {
      slip(slip);
    } catch (Misuse misuse) {
      terminal.out().println(misuse.getMessage());
    }
  }

  /** Words that ask or tell, without a hand on the board. */
  private boolean talk(String line) {
    String small = line.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    if (small.startsWith("?")) {
      offers(line.substring(1).strip());
      return true;
    }
    switch (small) {
      case "" -> {}
      case "help" -> offers("");
      case "card", "case" -> card();
      case "notes" -> notes();
      case "suspects" -> suspects();
      case "status" -> status();
      case "bits", "strip", "compare bits" -> strip();
      case "why" -> why();
      case "next case", "next" -> nextCase();
      case "leave", "quit", "exit" -> leave();
      case "same on a healthy board", "same", "healthy" -> twinOfLast();
      default -> {
        return false;
      }
    }
    return true;
  }

  private void work(String line) {
    String small = line.toLowerCase(Locale.ROOT);
    if (small.startsWith("decide ")) {
      decide(line.substring("decide ".length()));
    } else if (small.startsWith("healthy ")) {
      twin(look(line.substring("healthy ".length())));
    } else {
      move(line);
    }
  }

  private void move(String line) {
    Optional<String> text = Typed.move(line);
    if (text.isEmpty()) {
      told(attempt.act(line)); // most likely a slip that names what is near
      return;
    }
    List<Move> offers = attempt.possible().stream().map(Offer::move).toList();
    Optional<Move> move = Typed.offered(text.get(), offers);
    if (move.isEmpty()) {
      told(attempt.act(text.get()));
    } else if (confirmed(move.get()) && hunched(move.get())) {
      told(attempt.act(move.get()));
    }
  }

  /** A rule that would be broken is named once; after that it is your hand. */
  private boolean confirmed(Move move) {
    List<Breach> breaches = attempt.warnings(move);
    if (breaches.isEmpty()) {
      return true;
    }
    breaches.forEach(b -> terminal.say("train.breach", b.reason()));
    Optional<String> answer = ask("train.all-the-same");
    boolean yes =
        answer.map(a -> a.equalsIgnoreCase("yes") || a.equalsIgnoreCase("y")).orElse(false);
    if (!yes) {
      terminal.say("train.not-done");
    }
    return yes;
  }

  private boolean hunched(Move move) {
    if (!attempt.asksHunch(move)) {
      return true;
    }
    terminal.say("train.hunch");
    while (true) {
      Optional<String> answer = ask("train.hunch.prompt");
      if (answer.isEmpty() || answer.get().equalsIgnoreCase("skip")) {
        attempt.noHunch();
        return answer.isPresent();
      }
      Optional<Hunch> hunch = hunch(answer.get());
      if (hunch.isPresent()) {
        attempt.hunch(hunch.get());
        return true;
      }
      terminal.say("train.hunch.again", answer.get());
    }
  }

  private Optional<Hunch> hunch(String answer) {
    String[] halves = answer.split("[, ]+", 2);
    for (Hunch.Expectation e : Hunch.Expectation.values()) {
      if (halves.length == 2
          && e.words().equalsIgnoreCase(halves[1])
          && attempt.card().board().part(halves[0].toUpperCase(Locale.ROOT)).isPresent()) {
        return Optional.of(new Hunch(halves[0].toUpperCase(Locale.ROOT), e));
      }
    }
    return Optional.empty();
  }

  private void told(Note note) {
    if (note.move().kind() == Moves.LOOK) {
      lastLook = Optional.of(note.move().asLook());
    }
    if (note.reading() instanceof Reading.Report report) {
      report.lines().forEach(terminal.out()::println);
      terminal.out().println(cost(note).strip());
    } else {
      terminal.out().println(note.reading().text() + cost(note));
    }
    note.breaches().forEach(b -> terminal.say("train.broken", b.reason()));
    field();
    guide();
  }

  private String cost(Note note) {
    if (!attempt.card().shown().prices()) {
      return "";
    }
    return terminal
        .words()
        .say("train.cost", Pricing.words(note.price(), terminal.words()), note.minutesSoFar());
  }

  private void field() {
    attempt
        .status()
        .field()
        .ifPresent(f -> terminal.say(f == 0 ? "train.no-single" : "train.still-possible", f));
  }

  private void guide() {
    attempt.guide().ifPresent(g -> Paragraph.print(terminal, "train.guide", g));
  }

  private void decide(String text) {
    Decision decision = attempt.decide(text);
    terminal.say("train.repair", decision.repair());
    retest(decision.retest());
    terminal.out().println(decision.says());
    if (attempt.over()) {
      new DebriefPage(terminal, attempt.card().shown().prices()).print(attempt.close());
    } else {
      field();
      guide();
    }
  }

  private void retest(Reading reading) {
    if (reading instanceof Reading.Check check && !check.passed()) {
      terminal.say("train.retest.failed");
      List<String> all = check.differences();
      all.stream().limit(DIFFERENCES_SHOWN).forEach(d -> terminal.out().println("  " + d));
      if (all.size() > DIFFERENCES_SHOWN) {
        terminal.say("train.retest.more", all.size() - DIFFERENCES_SHOWN);
      }
    }
  }

  private Look look(String typed) {
    String text =
        Typed.move(typed)
            .filter(t -> t.startsWith(Moves.LOOK.word() + ": "))
            .orElseThrow(() -> terminal.words().misuse("train.no-look", typed));
    List<Move> offers = attempt.possible().stream().map(Offer::move).toList();
    return Typed.offered(text, offers).orElseGet(() -> Move.parse(text)).asLook();
  }

  private void twinOfLast() {
    if (lastLook.isEmpty()) {
      terminal.say("train.twin.nothing");
    } else {
      twin(lastLook.get());
    }
  }

  private void twin(Look look) {
    terminal.say("train.twin", Typed.words(Move.look(look).text()), attempt.twin(look).text());
  }

  private void strip() {
    new StripPage(terminal).print(attempt.strip());
    guide();
  }

  private void offers(String about) {
    OfferPage page = new OfferPage(attempt, terminal);
    if (attempt.over()) {
      terminal.say("train.after");
    } else if (about.isEmpty()) {
      page.kinds();
    } else {
      page.about(about);
    }
  }

  private void card() {
    JobCard card = attempt.card();
    terminal.say("train.title", card.number(), card.title(), card.board().title());
    Paragraph.print(terminal, "train.complaint", card.complaint());
    if (!card.shown().guided()) {
      Paragraph.print(terminal, "train.goal", card.goal());
      terminal.say("train.how");
    }
  }

  private void notes() {
    for (Note n : attempt.notebook()) {
      terminal.say(
          "train.note", n.number(), Typed.words(n.move().text()), n.reading().text() + cost(n));
    }
  }

  private void suspects() {
    List<Suspect> suspects = attempt.suspects();
    if (suspects.isEmpty()) {
      terminal.say("train.suspects.none");
    }
    suspects.stream()
        .limit(SUSPECTS_SHOWN)
        .forEach(
            s ->
                terminal.say(
                    "train.suspect",
                    s.place(),
                    String.format(Locale.ROOT, "%.0f", 100 * s.share())));
  }

  private void status() {
    Status s = attempt.status();
    terminal.say(s.powered() ? "train.on" : "train.off", s.minutes(), s.pulls());
    field();
  }

  private void why() {
    if (attempt.over()) {
      new DebriefPage(terminal, attempt.card().shown().prices()).why(attempt.close());
    } else {
      terminal.say("train.why.not-yet");
    }
  }

  private void nextCase() {
    finish();
    Optional<Case> next = Library.numbered(attempt.card().number() + 1);
    if (next.isEmpty()) {
      terminal.say("train.last");
    } else {
      begin(next.get());
    }
  }

  private void leave() {
    finish();
    left = true;
  }

  private void finish() {
    if (attempt.notebook().isEmpty()) {
      terminal.say("train.untouched");
    } else if (!attempt.over()) {
      new DebriefPage(terminal, attempt.card().shown().prices()).print(attempt.close());
    }
  }

  private void slip(Slip slip) {
    terminal.out().println(slip.getMessage());
    if (!slip.nearest().isEmpty()) {
      terminal.say(
          "train.nearest", String.join(", ", slip.nearest().stream().map(Typed::words).toList()));
    }
  }
}
