package faultfinch.cli;

import faultfinch.desk.Conditions;
import faultfinch.diagnosis.Observation;
import java.util.ArrayList;
import java.util.List;

/** How a board stood, in words. */
final class Standing {
  private Standing() {}

  /** Such as {@code with U8 out, cold}; as usual says so. */
  static String words(Conditions when, Words words) {
    List<String> parts = new ArrayList<>();
    if (!when.out().isEmpty()) {
      parts.add(words.say("standing.out", String.join(", ", when.out())));
    }
    when.volts().ifPresent(v -> parts.add(words.say("standing.volts", v.toPlainString())));
    if (when.climate() != Observation.Climate.USUAL) {
      parts.add(words.say("standing." + when.climate()));
    }
    when.rom().ifPresent(rom -> parts.add(words.say("standing." + rom)));
    parts.addAll(when.also());
    return parts.isEmpty() ? words.say("standing.usual") : String.join(", ", parts);
  }
}
