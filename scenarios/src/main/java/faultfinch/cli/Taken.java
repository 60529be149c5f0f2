package faultfinch.cli;

import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.Sight;
import faultfinch.diagnosis.Tally;
import java.util.List;

/** How a phrase was taken: which looks, which outcomes. */
final class Taken {
  private static final int SHOWN = 3;

  private Taken() {}

  static String words(Observation observation, Words words) {
    List<Sight> sights = observation.reach().sights();
    List<String> outcomes = sights.stream().flatMap(s -> s.outcomes().stream()).distinct().toList();
    String shown = String.join(" / ", outcomes.subList(0, Math.min(SHOWN, outcomes.size())));
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
