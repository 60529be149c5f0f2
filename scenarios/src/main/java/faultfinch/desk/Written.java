package faultfinch.desk;

import faultfinch.bench.Instruments;
import faultfinch.board.Drill;
import faultfinch.board.NearNames;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.Sight;
import faultfinch.diagnosis.Tally;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** Entries as the program itself writes them: a look, a colon, what it showed. */
final class Written {
  static final String BETWEEN = ": ";

  /** Looks that can show what nobody has thought of. */
  private static final Set<String> OPEN_KINDS =
      Set.of("screen", "listen", "key", "current", "meter", "counter");

  private final Circumstances circumstances;

  Written(Circumstances circumstances) {
    this.circumstances = circumstances;
  }

  /**
   * What such an entry comes to.
   *
   * @param seen what can be weighed
   * @param trouble why nothing can; one of the two is there
   * @param unheard what faults show there, where none shows this
   * @param when how the board stands from here on
   */
  record Told(
      Optional<Observation> seen,
      Optional<Phrases.Trouble> trouble,
      List<String> unheard,
      Conditions when) {

    static Told not(Statement.Why why, String look, List<String> nearest, Conditions when) {
      return new Told(
          Optional.empty(), Optional.of(new Phrases.Trouble(why, look, nearest)), List.of(), when);
    }

    static Told of(Observation seen, List<String> unheard, Conditions when) {
      return new Told(Optional.of(seen), Optional.empty(), unheard, when);
    }
  }

  /**
   * Reads an entry; empty if it is none of these.
   *
   * @param repairs done before
   */
  Optional<Told> of(
      String says,
      Entry.Who who,
      Observation.Doubt doubt,
      Stand stand,
      Conditions before,
      int repairs) {
    int colon = says.indexOf(BETWEEN);
    if (colon < 1) {
      return Optional.empty();
    }
    Lookbook lookbook = stand.lookbook();
    String look = look(lookbook, says.substring(0, colon).strip());
    String shown = says.substring(colon + BETWEEN.length()).strip();
    if (lookbook.differing().contains(look)) {
      return Optional.of(Told.not(Statement.Why.DIFFERS_ANYWAY, look, List.of(), before));
    }
    if (!lookbook.looks().contains(look)) {
      return Optional.empty();
    }
    Circumstances.Bared bared = circumstances.of(shown, before, doubt);
    List<String> outcomes = lookbook.outcomes(look);
    Optional<String> known = same(outcomes, shown).or(() -> same(outcomes, bared.text()));
    boolean told = bared.owner() || who == Entry.Who.OWNER;
    if (known.isPresent()) {
      boolean whole = same(outcomes, shown).isPresent();
      Observation.Source source = told ? Observation.Source.TOLD : Observation.Source.BENCH;
      Observation seen =
          new Observation(
              look,
              known.get(),
              source,
              whole ? doubt : bared.doubt(),
              reach(look, known.get(), whole ? Tally.ONCE : bared.tally()),
              repairs);
      return Optional.of(Told.of(seen, List.of(), whole ? before : bared.when()));
    }
    if (look.endsWith(RoundWithLeads.SUFFIX)) {
      return Optional.empty();
    }
    if (bared.undecided()) {
      return Optional.of(Told.not(Statement.Why.UNDECIDED, look, List.of(), before));
    }
    return Optional.of(inWords(look, shown, bared, told, stand, repairs));
  }

  /** A look with a colon behind it, and what it showed in somebody's own words. */
  private static Told inWords(
      String look,
      String shown,
      Circumstances.Bared bared,
      boolean told,
      Stand stand,
      int repairs) {
    List<String> outcomes = stand.lookbook().outcomes(look);
    Supplier<Optional<Phrases.Finding>> written = () -> stand.phrases().at(look, bared.text());
    Supplier<Optional<Phrases.Finding>> free =
        () -> isShapedLike(outcomes, shown) ? Optional.empty() : spoken(look, bared, stand);
    // What is tried by hand is told in words of its own: "tape: all good".
    Optional<Phrases.Finding> finding =
        Drill.NAMES.contains(look) ? free.get().or(written) : written.get().or(free);
    if (finding.isPresent()) {
      Observation.Source source = told ? Observation.Source.TOLD : Observation.Source.WORDS;
      Observation seen =
          Phrases.observation(finding.get(), source, bared.doubt(), bared.tally(), repairs);
      return Told.of(seen, List.of(), bared.when());
    }
    String kind = look.split(" ", 2)[0];
    if (!OPEN_KINDS.contains(kind) && !stand.phrases().canShow(kind, bared.text())) {
      List<String> examples = stand.lookbook().examples(look);
      return Told.not(Statement.Why.NOBODY_SHOWS_IT, look, examples, bared.when());
    }
    Observation seen =
        new Observation(
            look,
            bared.text(),
            told ? Observation.Source.TOLD : Observation.Source.BENCH,
            bared.doubt(),
            reach(look, bared.text(), bared.tally()),
            repairs);
    return Told.of(seen, List.of(NearNames.of(bared.text(), outcomes)), bared.when());
  }

  private static Observation.Reach reach(String look, String outcome, Tally tally) {
    return new Observation.Reach(List.of(new Sight(List.of(look), List.of(outcome))), true, tally);
  }

  /** What is said of a look that its own outcomes do not say, as if there were no colon. */
  private static Optional<Phrases.Finding> spoken(
      String look, Circumstances.Bared said, Stand stand) {
    return List.of(look + " " + said.text(), said.text()).stream()
        .flatMap(phrase -> stand.phrases().read(phrase).findings().stream())
        .filter(finding -> finding.look().equals(look))
        .findFirst();
  }

  /** Whether it is written as an outcome is, but for figures and what is read. */
  private static boolean isShapedLike(List<String> outcomes, String shown) {
    String shape = shape(shown);
    return outcomes.stream().anyMatch(o -> shape(o).equals(shape));
  }

  private static String shape(String outcome) {
    return outcome.replaceAll("'.*'", "''").replaceAll("[0-9.]+", "0");
  }

  private static Optional<String> same(List<String> outcomes, String shown) {
    return outcomes.contains(shown)
        ? Optional.of(shown)
        : outcomes.stream().filter(o -> o.equalsIgnoreCase(shown)).findFirst();
  }

  /** A look as the dictionary writes it; a probe without a side is at the pin. */
  private static String look(Lookbook lookbook, String text) {
    String small = text.toLowerCase(Locale.ROOT);
    for (String look : List.of(text, text + " at the pin")) {
      if (lookbook.looks().contains(look)) {
        return look;
      }
    }
    if (Instruments.named(small.split(" ", 2)[0]).isEmpty()) {
      return text;
    }
    return lookbook.looks().stream()
        .filter(l -> l.equalsIgnoreCase(text) || l.equalsIgnoreCase(text + " at the pin"))
        .findFirst()
        .orElse(text);
  }
}
