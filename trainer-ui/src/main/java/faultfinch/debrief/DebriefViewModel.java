package faultfinch.debrief;

import faultfinch.attempt.Debrief;
import faultfinch.attempt.Decision;
import faultfinch.bench.Breach;
import faultfinch.fx.Words;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/** A debrief in the words of the screen. */
public final class DebriefViewModel {

  /**
   * One line of a way: a move, what it showed, what it cost.
   *
   * @param cost longest of both ways is 1
   */
  record Step(String move, String showed, String price, double cost, OptionalInt field) {}

  private final Debrief debrief;
  private final Words words = Words.of(DebriefViewModel.class);
  private final double dearest;

  public DebriefViewModel(Debrief debrief) {
    this.debrief = debrief;
    double most = 1;
    for (Debrief.Leg leg : debrief.route()) {
      most = Math.max(most, leg.price().total());
    }
    for (Debrief.Leg leg : debrief.best().route()) {
      most = Math.max(most, leg.price().total());
    }
    dearest = most;
  }

  Words words() {
    return words;
  }

  String headline() {
    return words.say(debrief.solved() ? "head.solved" : "head.open");
  }

  /** Marks out of a hundred; empty if the case gives none. */
  String marks() {
    return debrief.marks().isPresent()
        ? words.say("head.marks", Integer.toString(debrief.marks().getAsInt()))
        : "";
  }

  List<String> doneRight() {
    return debrief.doneRight();
  }

  List<String> faults() {
    return debrief.faults().isEmpty() ? List.of(words.say("faults.none")) : debrief.faults();
  }

  List<String> stillWrong() {
    return debrief.stillWrong();
  }

  List<Step> yours() {
    return debrief.route().stream().map(this::step).toList();
  }

  List<Step> best() {
    return debrief.best().route().stream().map(this::step).toList();
  }

  /** Why there is no best route; empty if there is one. */
  String whyNoBest() {
    return debrief.best().why().orElse("");
  }

  String yourTotal() {
    return total(debrief.spent().total());
  }

  String bestTotal() {
    return total(debrief.best().price().total());
  }

  /** How many causes were left after each of your moves, where it is known. */
  List<Integer> field() {
    return debrief.route().stream()
        .filter(l -> l.field().isPresent())
        .map(l -> l.field().getAsInt())
        .toList();
  }

  List<String> decisions() {
    return debrief.decisions().stream().map(this::say).toList();
  }

  List<String> toldNothing() {
    return debrief.toldNothing();
  }

  List<String> tooEarly() {
    return debrief.tooEarly();
  }

  List<String> breaches() {
    return debrief.breaches().stream().map(Breach::reason).distinct().toList();
  }

  List<String> notReached() {
    return debrief.notReached();
  }

  String notes() {
    return debrief.notes();
  }

  /** As Markdown. */
  String jobSheet() {
    return debrief.jobSheet();
  }

  private String say(Decision decision) {
    return words.say(
        "decision",
        decision.text(),
        words.say("result." + decision.result().name().toLowerCase(Locale.ROOT)),
        minutes(decision.price().total()));
  }

  private Step step(Debrief.Leg leg) {
    return new Step(
        leg.move(),
        leg.showed(),
        minutes(leg.price().total()),
        leg.price().total() / dearest,
        leg.field());
  }

  private String total(double total) {
    return words.say("route.total", minutes(total));
  }

  private String minutes(double total) {
    boolean round = total == Math.rint(total);
    return words.say("minutes", String.format(Locale.ROOT, round ? "%.0f" : "%.1f", total));
  }
}
