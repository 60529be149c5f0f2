package faultfinch.desk;

import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.Sight;
import faultfinch.diagnosis.Tally;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What goes without saying: who tells in words what is wrong to hear or to load, and has not one
 * for the set, hardly sees anything odd on it.
 */
final class UnspokenSet {
  /** What an owner finds out without looking at the set, or besides. */
  private static final List<String> BESIDE_IT = List.of("listen", "tape", "sticks");

  /** What is on it, in words of which no more may have been read. */
  private static final Pattern ITS =
      Pattern.compile(
          "(?i)\\b(?:screen|picture|display|monitor|raster|characters?|letters?|cursor|colou?rs?|banner)\\b");

  private UnspokenSet() {}

  /** That the set shows what it should; empty where it is spoken of, or nothing of its kind is. */
  static Optional<Observation> of(
      Lookbook lookbook, List<Observation> seen, List<Statement> statements) {
    boolean told = seen.stream().anyMatch(o -> isBesideIt(o, lookbook));
    boolean spokenOf =
        seen.stream().anyMatch(o -> isOfIt(o.look()))
            || statements.stream()
                .anyMatch(
                    s ->
                        s instanceof Statement.Kept k
                            && (isOfIt(k.about()) || ITS.matcher(k.said()).find()));
    if (!told || spokenOf || !lookbook.looks().contains(Phrases.SCREEN)) {
      return Optional.empty();
    }
    List<String> all = lookbook.outcomes(Phrases.SCREEN);
    Comparison.Normal normal = new Comparison.Normal(all.get(0), all.get(0));
    List<String> started = all.stream().filter(o -> Comparison.STARTED.holds(o, normal)).toList();
    Sight sight = new Sight(List.of(Phrases.SCREEN), started);
    return Optional.of(
        new Observation(
            Phrases.SCREEN + ", not spoken of",
            "not a word of the set",
            Observation.Source.WORDS,
            Observation.Doubt.HARDLY,
            new Observation.Reach(List.of(sight), true, Tally.ONCE),
            0));
  }

  /** Whether something else is odd, in somebody's words: what a look writes down speaks of all. */
  private static boolean isBesideIt(Observation o, Lookbook lookbook) {
    if (o.source() == Observation.Source.BENCH || !BESIDE_IT.contains(o.look())) {
      return false;
    }
    String good = lookbook.outcomes(o.look()).get(0);
    return !o.reach().sights().get(0).outcomes().contains(good);
  }

  /** Also of a board that stood otherwise: "screen with U34 out". */
  private static boolean isOfIt(String look) {
    return look.startsWith(Phrases.SCREEN)
        || LookPlaces.ON_THE_SET.stream().anyMatch(look::startsWith);
  }
}
