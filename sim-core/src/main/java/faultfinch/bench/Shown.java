package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.machine.Setup;
import faultfinch.symptom.Symptoms;
import faultfinch.symptom.Watching;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What an owner would see and hear of one run, in one line. */
final class Shown {
  private Shown() {}

  /** Runs a board and says what shows. */
  static Words of(Setup setup) {
    String says = says(setup);
    return new Words(says, says);
  }

  /** Such as {@code display dark; sound silent; lamp dark}. */
  static String says(Setup setup) {
    Symptoms symptoms = Watching.of(setup).symptoms();
    List<String> says = new ArrayList<>();
    for (String what : List.of(Symptoms.DISPLAY, Symptoms.SOUND, Symptoms.LAMP)) {
      if (!symptoms.feature(what).isEmpty()) {
        says.add(what + " " + symptoms.feature(what));
      }
    }
    return String.join("; ", says);
  }

  /** Several runs that need not show the same: how many showed what, in the order first seen. */
  static Words tally(List<String> runs) {
    Map<String, Integer> times = new LinkedHashMap<>();
    runs.forEach(run -> times.merge(run, 1, Integer::sum));
    List<String> says = new ArrayList<>();
    times.forEach((what, n) -> says.add(n + " of " + runs.size() + ": " + what));
    String text = String.join(" | ", says);
    return new Words(text, text);
  }
}
