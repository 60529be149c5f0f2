package faultfinch.cli;

import faultfinch.desk.Statement;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.Sight;
import faultfinch.diagnosis.Tally;
import java.util.List;
import java.util.stream.Collectors;

/** How a phrase was taken: which looks, which outcomes. */
final class Taken {
  private static final int SHOWN = 3;
  private static final int LONGEST = 60;

  private Taken() {}

  /** Of a whole screen its beginning tells which it is. */
  private static String shortened(String outcome) {
    return outcome.length() <= LONGEST ? outcome : outcome.substring(0, LONGEST) + "...";
  }

  static String words(Statement.Tried tried, Words words) {
    return words.say("taken.tried." + tried.came(), String.join(", ", tried.parts()));
  }

  static String words(Statement.Past past, Words words) {
    return words.say("taken.history." + past.history());
  }

  static String words(Observation observation, Words words) {
    List<Sight> sights = observation.reach().sights();
    List<String> outcomes = sights.stream().flatMap(s -> s.outcomes().stream()).distinct().toList();
    String shown =
        outcomes.stream().limit(SHOWN).map(Taken::shortened).collect(Collectors.joining(" / "));
    String more = outcomes.size() > SHOWN ? words.say("taken.more", outcomes.size() - SHOWN) : "";
    String where =
        sights.size() == 1
            ? observation.look()
            : words.say(
                observation.reach().every() ? "taken.every" : "taken.some",
                observation.look(),
                sights.size());
    Tally tally = observation.reach().tally();
    String often =
        tally.equals(Tally.ONCE)
            ? ""
            : tally.equals(Tally.NOW_AND_THEN)
                ? words.say("taken.now-and-then")
                : words.say("taken.times", tally.times(), tally.of());
    String doubt =
        observation.doubt() == Observation.Doubt.SURE
            ? ""
            : words.say("taken." + observation.doubt());
    return words.say("taken", where, shown + more) + often + doubt;
  }
}
