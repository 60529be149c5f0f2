package faultfinch.cli;

import faultfinch.bench.Look;
import faultfinch.board.NearNames;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Observation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.apache.commons.cli.Options;

/** Observations as they are typed: a look, a colon and a blank, what it showed. */
final class Seen {
  private static final String SAW = "saw";
  private static final String TOLD = "told";
  private static final String BETWEEN = ": ";

  private final FaultDictionary dictionary;
  private final Words words;
  private final List<String> remarks = new ArrayList<>();

  Seen(FaultDictionary dictionary, Words words) {
    this.dictionary = dictionary;
    this.words = words;
  }

  static void addTo(Options options) {
    options.addOption(Given.values(SAW, "SEEN")).addOption(Given.values(TOLD, "SEEN"));
  }

  /**
   * All that was seen and told.
   *
   * @throws Misuse if a look is none, tells nothing or is given twice with different outcomes
   */
  Evidence evidence(Given given) {
    List<Observation> all = new ArrayList<>();
    for (String text : given.texts(SAW)) {
      add(observation(text, Observation.Source.BENCH), all);
    }
    for (String text : given.texts(TOLD)) {
      add(observation(text, Observation.Source.TOLD), all);
    }
    return new Evidence(all, List.of());
  }

  /** What should be said of the observations, one line each. */
  List<String> remarks() {
    return List.copyOf(remarks);
  }

  private void add(Observation observation, List<Observation> all) {
    for (Observation other : all) {
      if (other.look().equals(observation.look())) {
        throw words.misuse("seen.twice", observation.look());
      }
    }
    all.add(observation);
  }

  private Observation observation(String text, Observation.Source source) {
    int colon = text.indexOf(BETWEEN);
    if (colon < 1 || colon + BETWEEN.length() >= text.length()) {
      throw words.misuse("seen.no-colon", text);
    }
    String look = look(text.substring(0, colon));
    String seen = text.substring(colon + BETWEEN.length()).strip();
    return new Observation(look, outcome(look, seen), source);
  }

  private String look(String text) {
    String look;
    try {
      look = Look.parse(text).text();
    } catch (IllegalArgumentException e) {
      throw new Misuse(e.getMessage());
    }
    if (dictionary.dropped().contains(look)) {
      throw words.misuse("seen.dropped", look);
    }
    if (dictionary.look(look).isEmpty()) {
      throw words.misuse("seen.unknown", look, NearNames.of(look, dictionary.looks()));
    }
    return look;
  }

  /** The outcome as the dictionary words it; capitals do not matter. */
  private String outcome(String look, String seen) {
    OptionalInt index = dictionary.look(look);
    List<String> outcomes = dictionary.outcomes(index.orElseThrow());
    Optional<String> meant =
        outcomes.contains(seen)
            ? Optional.of(seen)
            : outcomes.stream().filter(o -> o.equalsIgnoreCase(seen)).findFirst();
    if (meant.isEmpty()) {
      remarks.add(words.say("seen.nobodys", look, seen, NearNames.of(seen, outcomes)));
    }
    return meant.orElse(seen);
  }
}
