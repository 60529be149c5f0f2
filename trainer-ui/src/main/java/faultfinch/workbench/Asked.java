package faultfinch.workbench;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The act that a guided case asks for. Its line ends with the words to type in a terminal; here
 * they stand apart, as the name of the act, and tell where to point.
 *
 * @param says the line without the words to type
 * @param typed the words to type; empty if the line has none
 */
record Asked(String says, String typed) {
  private static final Pattern TYPED = Pattern.compile("(.*?[:.?!]) [Tt]ype (.+?)\\.?");

  /** Where the window shows that something is to be done, beside the board. */
  enum Beside {
    NOWHERE,
    POWER,
    LOOK,
    BITS,
    DECIDE
  }

  static final Asked NOTHING = new Asked("", "");

  static Asked of(String line) {
    Matcher matcher = TYPED.matcher(line);
    return matcher.matches() ? new Asked(matcher.group(1), matcher.group(2)) : new Asked(line, "");
  }

  /** What to point at beside the board. */
  Beside beside() {
    return switch (first()) {
      case "power" -> Beside.POWER;
      case "screen" -> Beside.LOOK;
      case "bits" -> Beside.BITS;
      case "decide" -> Beside.DECIDE;
      default -> Beside.NOWHERE;
    };
  }

  /** What to point at on the board. */
  Optional<Spot> spot(BoardPlan plan) {
    if (typed.isEmpty() || beside() != Beside.NOWHERE) {
      return Optional.empty();
    }
    for (String word : typed.split(" ")) {
      Optional<Spot> found = plan.find(word).filter(s -> !(s instanceof Spot.OnTrack));
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.of(typed.contains("supply") ? new Spot.OnBrick() : new Spot.OnBoard());
  }

  private String first() {
    return typed.split(" ", 2)[0];
  }
}
