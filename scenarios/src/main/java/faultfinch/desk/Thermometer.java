package faultfinch.desk;

import faultfinch.board.Board;
import faultfinch.diagnosis.Sight;
import faultfinch.machine.Finger;
import faultfinch.machine.Heat;
import faultfinch.machine.Power;
import faultfinch.machine.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Degrees that were read of a part, as what a finger says to somebody who knows how warm the part
 * of a good board gets: 58 degrees are much for one chip and usual for another.
 */
final class Thermometer {
  private static final String FINGER = "finger ";
  private static final String WARM = "warm";
  private static final String HOT = "hot";

  /** Tenths of a degree: a hand has 34 degrees itself, and at 50 it is drawn back. */
  private static final int WARM_FROM = 400;

  private static final int HOT_FROM = 500;

  private static final Pattern DEGREES =
      Pattern.compile(
          "(?i)(?<![\\w.])(\\d{2,3})(?:\\.\\d)? ?(?:° ?c?|deg(?:s|rees?)?(?: c(?:elsius)?)?|celsius)(?![\\w])");

  private static final long BOARD_SEED = 1;

  /**
   * Tenths of a degree by which a good part may be off: what its signals add is not counted, and
   * instruments differ.
   */
  private static final int GIVE = 40;

  private final Board board;
  private final Lookbook lookbook;
  private final Places places;

  /** Worked out when somebody first reads degrees. */
  private Optional<Heat> good = Optional.empty();

  Thermometer(Board board, Lookbook lookbook, Places places) {
    this.board = board;
    this.lookbook = lookbook;
    this.places = places;
  }

  /** What a phrase says of how warm parts are, if it has degrees and a part in it. */
  Optional<Phrases.Finding> find(String text) {
    Matcher degrees = DEGREES.matcher(text);
    if (!degrees.find()) {
      return Optional.empty();
    }
    Place place =
        places.find(text.substring(0, degrees.start()) + text.substring(degrees.end()), true);
    int tenths = 10 * Integer.parseInt(degrees.group(1));
    List<Sight> sights = new ArrayList<>();
    for (String ref : place.refs()) {
      String look = FINGER + ref;
      if (lookbook.looks().contains(look)) {
        sights.add(new Sight(List.of(look), feels(ref, tenths)));
      }
    }
    boolean one = sights.size() == 1;
    return sights.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Phrases.Finding(
                one ? sights.get(0).looks().get(0) : FINGER.strip(), text, sights, true));
  }

  /** Whether a part of a good board feels warm, or hot, to somebody who does not know it. */
  boolean isUsually(String look, String outcome) {
    int from = outcome.equals(HOT) ? HOT_FROM : WARM_FROM;
    return look.startsWith(FINGER)
        && (outcome.equals(HOT) || outcome.equals(WARM))
        && usual(look.substring(FINGER.length())) >= from;
  }

  private int usual(String ref) {
    if (good.isEmpty()) {
      Setup healthy = Setup.healthy(board, BOARD_SEED);
      good = Optional.of(Heat.of(Power.of(healthy), healthy));
    }
    return good.get().caseTenths(ref, Finger.SETTLED_SECONDS);
  }

  private List<String> feels(String ref, int tenths) {
    int usual = usual(ref);
    TreeSet<Finger> feels = new TreeSet<>();
    feels.add(Finger.of(tenths, usual));
    feels.add(Finger.of(tenths, usual + GIVE));
    return feels.stream().map(f -> f.name().toLowerCase(Locale.ROOT)).toList();
  }
}
