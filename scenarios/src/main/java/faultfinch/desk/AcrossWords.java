package faultfinch.desk;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.diagnosis.Hint;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import faultfinch.fault.Joins;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * An ohmmeter from one line to another, which the list of looks has not, for there are too many
 * pairs: "0.3 ohm between D3 and D4", "A12 and A13 are shorted together". What joins the two is
 * told from the faults themselves.
 */
final class AcrossWords {
  private static final Pattern OHMS =
      Pattern.compile("(?<![\\w.])(\\d+(?:\\.\\d+)?) ?(k)?(?:ohms?)?\\b(?<=k|ohm|ohms)");

  private static final Pattern CONDUCTS =
      Pattern.compile(
          "\\b(?:shorted|short|bridged|bridge|joined|connected|conducts?|beeps?|buzzes|buzz|rings?|continuity|connection)\\b");

  private static final Pattern TWO =
      Pattern.compile(
          "\\b(?:between|across|from|together|to each other|with each other|to one another)\\b");

  /** Lines that were named before. */
  private static final Pattern THEM =
      Pattern.compile(
          "\\b(?:between (?:them|the two|these|those|both)|from one (?:line |pin |leg )?to the other|to each other|to one another)\\b");

  private static final Pattern NOT =
      Pattern.compile("\\b(?:no|not|never|nothing|n't|open|infinite|neither|without)\\b");
  private static final Pattern GROUND = Pattern.compile("\\b(?:ground|gnd|earth|0 ?v|supply)\\b");

  /** What follows is of other lines. */
  private static final Pattern ELSE = Pattern.compile(",? (?:while|whereas|but) ");

  /** Ohms up to which lines are joined, and from which on they are not. */
  private static final double JOINED_TO = 10;

  private static final double APART_FROM = 1000;
  private static final double KILO = 1000;

  private final Board board;
  private final Map<Pad, Net> netOfPad;
  private List<Fault> universe = List.of();

  AcrossWords(Board board) {
    this.board = board;
    netOfPad = board.netOfPad();
  }

  /**
   * What is said of two lines; empty if it is nothing of the sort.
   *
   * @param pieces of an entry, up to the one that is asked about
   */
  Optional<Hint> find(List<String> pieces, Phrases phrases) {
    int last = pieces.size() - 1;
    String one = ELSE.split(pieces.get(last))[0];
    String small = one.toLowerCase(Locale.ROOT);
    Optional<Boolean> joined = joined(small);
    boolean them = THEM.matcher(small).find();
    if (joined.isEmpty() || !TWO.matcher(small).find() && !them || GROUND.matcher(small).find()) {
      return Optional.empty();
    }
    List<List<Pad>> named = phrases.lines(one);
    // "Between them" goes on of the two that were named last.
    for (int i = last - 1; them && named.size() != 2 && i >= 0; i--) {
      named = phrases.lines(pieces.get(i));
    }
    Set<String> nets = nets(named);
    if (nets.size() != 2 || nets.stream().anyMatch(board.supply()::feeds)) {
      return Optional.empty();
    }
    Joins joins = new Joins(board);
    Set<String> faults =
        universe().stream()
            .filter(f -> joins.are(f, nets))
            .map(Fault::text)
            .collect(Collectors.toSet());
    return Optional.of(new Hint(Hint.How.ACROSS, String.join(" and ", nets), joined.get(), faults));
  }

  /** Whether lines are said to be joined; empty if neither that nor the contrary is. */
  private static Optional<Boolean> joined(String small) {
    Matcher ohms = OHMS.matcher(small);
    if (ohms.find()) {
      double value = Double.parseDouble(ohms.group(1)) * (ohms.group(2) == null ? 1 : KILO);
      return value < JOINED_TO
          ? Optional.of(true)
          : value >= APART_FROM ? Optional.of(false) : Optional.empty();
    }
    return CONDUCTS.matcher(small).find()
        ? Optional.of(!NOT.matcher(small).find())
        : Optional.empty();
  }

  private Set<String> nets(List<List<Pad>> lines) {
    return lines.size() != 2
        ? Set.of()
        : lines.stream()
            .flatMap(List::stream)
            .map(netOfPad::get)
            .filter(n -> n != null)
            .map(Net::name)
            .collect(Collectors.toCollection(TreeSet::new));
  }

  /** All faults, put together when two lines are first spoken of. */
  private List<Fault> universe() {
    if (universe.isEmpty()) {
      universe = List.copyOf(FaultUniverse.of(board).faults());
    }
    return universe;
  }
}
