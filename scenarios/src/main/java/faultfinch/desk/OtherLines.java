package faultfinch.desk;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.diagnosis.Sight;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What goes without saying: who names a line of a bus that stands still, or stands wrong, has seen
 * others move. Of a board on which none does another thing would have been said.
 */
final class OtherLines {
  private static final String PROBE = "probe ";
  private static final String METER = "meter ";
  private static final String PULSING = "pulsing";

  /** A bus has more lines of one name with numbers behind it. */
  private static final int FEWEST = 6;

  /** Who names more of them speaks of all. */
  private static final int MOST_NAMED = 3;

  private final Board board;
  private final Lookbook lookbook;

  /** By bus the lines that were named so far. */
  private final Map<String, Set<Net>> namedOf = new LinkedHashMap<>();

  OtherLines(Board board, Lookbook lookbook) {
    this.board = board;
    this.lookbook = lookbook;
  }

  private static String stem(Net net) {
    return net.name().replaceAll("\\d+/?$", "");
  }

  /**
   * What is said of a bus so far.
   *
   * @param look by which it is known that another line moves
   * @param another that one does; empty if so many lines stand still that it may be all of them
   */
  record Bus(String look, Optional<Phrases.Finding> another) {}

  /** What is to be had beside a finding that is of lines of a bus which are not as they should. */
  Optional<Bus> beside(Phrases.Finding finding) {
    List<String> looks = finding.sights().stream().flatMap(s -> s.looks().stream()).toList();
    boolean atPins = looks.stream().allMatch(l -> l.startsWith(PROBE) || l.startsWith(METER));
    boolean good = finding.sights().stream().anyMatch(this::isOfAGoodBoard);
    // "One of the data lines" names none.
    boolean open = !finding.every() && finding.sights().size() > 1;
    if (!atPins || good || open) {
      return Optional.empty();
    }
    Map<Pad, Net> netOfPad = board.netOfPad();
    Set<Net> said =
        looks.stream()
            .flatMap(look -> LookPlaces.padOf(look).map(netOfPad::get).stream())
            .collect(Collectors.toSet());
    Set<String> stems = said.stream().map(OtherLines::stem).collect(Collectors.toSet());
    if (stems.size() != 1) {
      return Optional.empty();
    }
    String stem = stems.iterator().next();
    List<Net> bus =
        board.nets().stream()
            .filter(net -> stem(net).equals(stem) && !stem.equals(net.name()))
            .toList();
    Set<Net> named = namedOf.computeIfAbsent(stem, s -> new LinkedHashSet<>());
    named.addAll(said);
    List<String> others =
        bus.stream()
            .filter(net -> !named.contains(net))
            .flatMap(net -> probed(net).stream())
            .toList();
    String look = PROBE + "another of the " + stem + " lines";
    // Lines of a port are numbered too, but each goes its own way.
    boolean together = others.size() == bus.size() - named.size() && bus.size() > FEWEST;
    return Optional.of(
        new Bus(
            look,
            Optional.of(named)
                .filter(n -> together && n.size() <= MOST_NAMED && !others.isEmpty())
                .map(n -> new Sight(others, List.of(PULSING)))
                .map(s -> new Phrases.Finding(look, finding.seen(), List.of(s), true))));
  }

  private boolean isOfAGoodBoard(Sight sight) {
    return sight.looks().stream()
        .anyMatch(look -> sight.outcomes().contains(lookbook.outcomes(look).get(0)));
  }

  /** A look with a probe at a line, if the line moves on a good board. */
  private Optional<String> probed(Net net) {
    return net.pads().stream()
        .map(pad -> PROBE + pad.text() + " at the pin")
        .filter(lookbook.looks()::contains)
        .filter(look -> lookbook.outcomes(look).get(0).equals(PULSING))
        .findFirst();
  }
}
