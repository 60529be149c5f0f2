package faultfinch.desk;

import faultfinch.board.Pad;
import faultfinch.diagnosis.Sight;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What somebody means who puts a probe on after the board was switched on, or holds it there for
 * long. The looks of the list are had from the moment of switching on, for short times: reset
 * pulses there on every good board, and the sync of a frame stands still. A processor that has run
 * into a wall has moved its lines before, and the list shows them pulsing: that they have come to
 * rest is to be read off the meter, which is put on late. Nor do the looks show the strobes that
 * are taken for granted in each half of a cycle.
 */
final class ProbedLater {
  private static final String PROBE = "probe ";
  private static final String PULSING = "pulsing";

  /** Volts below which a meter shows what a probe calls low; above twice as many it is high. */
  private static final double LOW_BELOW = 0.9;

  /** A line that stays low reads so many volts at most: one that also pulses reads more. */
  private static final double RESTS_LOW = 0.3;

  /** One that stays high reads so many at least. */
  private static final double RESTS_HIGH = 3.3;

  private final Places places;
  private final Lookbook lookbook;
  private final Vocabulary vocabulary;

  ProbedLater(Places places, Lookbook lookbook, Vocabulary vocabulary) {
    this.places = places;
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
  }

  /** A sight at one line, with what else may have been seen there. */
  Sight of(Sight sight, String text) {
    return sight.looks().get(0).startsWith(PROBE) ? probed(sight, text) : sight;
  }

  private Sight probed(Sight sight, String text) {
    Set<Pad> once = places.padsOn(vocabulary.words("probe.once"));
    Set<Pad> seldom = places.padsOn(vocabulary.words("probe.seldom"));
    boolean never = Vocabulary.in(text, vocabulary.words("probe.from-the-start")).isPresent();
    List<String> looks = new ArrayList<>(sight.looks());
    List<String> outcomes = new ArrayList<>(sight.outcomes());
    for (String look : sight.looks()) {
      Optional<Pad> pad = LookPlaces.padOf(look);
      String good = lookbook.outcomes(look).get(0);
      if (pad.filter(once::contains).isPresent() && good.equals(PULSING) && !never) {
        String meter = "meter " + pad.get().text();
        resting(meter, sight.outcomes())
            .ifPresent(
                volts -> {
                  looks.add(meter);
                  outcomes.add(volts);
                });
      }
      if (pad.isPresent() && good.equals(PULSING)) {
        String meter = "meter " + pad.get().text();
        List<String> rests = cameToRest(meter, sight.outcomes());
        if (!rests.isEmpty()) {
          looks.add(meter);
          outcomes.addAll(rests);
        }
      }
      if (pad.filter(seldom::contains).isPresent() && outcomes.contains(PULSING)) {
        outcomes.add(good);
      }
    }
    return new Sight(looks.stream().distinct().toList(), outcomes.stream().distinct().toList());
  }

  /**
   * Whether a sight at a line that moves on a good board tells that it has come to rest: not if
   * that stands at one of these levels too whenever a meter is put on.
   */
  boolean tells(Sight sight) {
    return sight.outcomes().contains(PULSING)
        || sight.looks().stream()
            .filter(look -> look.startsWith(PROBE))
            .filter(look -> lookbook.outcomes(look).get(0).equals(PULSING))
            .flatMap(look -> LookPlaces.padOf(look).stream())
            .map(pad -> "meter " + pad.text())
            .filter(lookbook.looks()::contains)
            .noneMatch(m -> sight.outcomes().contains(level(lookbook.outcomes(m).get(0))));
  }

  /**
   * What a meter shows of a line that has come to rest at a level that was seen. The level at which
   * a good board is found there too, such as that of a select that is seldom low, tells nothing.
   */
  private List<String> cameToRest(String meter, List<String> seen) {
    if (seen.contains(PULSING) || !lookbook.looks().contains(meter)) {
      return List.of();
    }
    List<String> all = lookbook.outcomes(meter);
    String good = level(all.get(0));
    return all.stream()
        .filter(shown -> seen.contains(level(shown)) && !level(shown).equals(good))
        .toList();
  }

  /** The level at which a line with this reading stands; none if it may leave it. */
  private static String level(String shown) {
    double volts = Double.parseDouble(shown.split(" ")[0]);
    return volts <= RESTS_LOW ? "low" : volts >= RESTS_HIGH ? "high" : "";
  }

  /** What a meter shows of a good board there, if that is the one level that was seen. */
  private Optional<String> resting(String meter, List<String> seen) {
    if (seen.contains(PULSING) || !lookbook.looks().contains(meter)) {
      return Optional.empty();
    }
    String good = lookbook.outcomes(meter).get(0);
    double volts = Double.parseDouble(good.split(" ")[0]);
    String level = volts < LOW_BELOW ? "low" : volts > 2 * LOW_BELOW ? "high" : "mid";
    return Optional.of(good).filter(v -> seen.contains(level));
  }
}
