package faultfinch.desk;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.diagnosis.Sight;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What somebody means who puts a probe on after the board was switched on, or holds it there for
 * long. The looks of the list are had from the moment of switching on, for short times: reset
 * pulses there on every good board, and the sync of a frame stands still. Nor do they show the
 * strobes that are taken for granted in each half of a cycle.
 */
final class ProbedLater {
  private static final String PROBE = "probe ";
  private static final String PULSING = "pulsing";

  /** Volts below which a meter shows what a probe calls low; above twice as many it is high. */
  private static final double LOW_BELOW = 0.9;

  private final Board board;
  private final Lookbook lookbook;
  private final Vocabulary vocabulary;

  ProbedLater(Board board, Lookbook lookbook, Vocabulary vocabulary) {
    this.board = board;
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
  }

  /** All pads of the nets that have such a name, or such a pin: a type and a name. */
  private Set<Pad> pads(String key) {
    List<String> which = vocabulary.words(key);
    Map<Pad, Net> netOfPad = board.netOfPad();
    Stream<Net> named =
        board.nets().stream()
            .filter(n -> which.stream().anyMatch(w -> w.equals("net " + n.name())));
    Stream<Net> pinned =
        board.parts().stream()
            .flatMap(
                part ->
                    part.type().part().pinout().pins().stream()
                        .filter(pin -> which.contains(part.type().type() + " " + pin.name()))
                        .flatMap(
                            pin ->
                                Stream.ofNullable(netOfPad.get(new Pad(part.ref(), pin.name())))));
    return Stream.concat(named, pinned)
        .flatMap(net -> net.pads().stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  /** A sight at one line, with what else may have been seen there. */
  Sight of(Sight sight, String text) {
    return sight.looks().get(0).startsWith(PROBE) ? probed(sight, text) : sight;
  }

  private Sight probed(Sight sight, String text) {
    Set<Pad> once = pads("probe.once");
    Set<Pad> seldom = pads("probe.seldom");
    boolean never = Vocabulary.in(text, vocabulary.words("probe.from-the-start")).isPresent();
    List<String> looks = new ArrayList<>(sight.looks());
    List<String> outcomes = new ArrayList<>(sight.outcomes());
    for (String look : sight.looks()) {
      Optional<Pad> pad = pad(look);
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
      if (pad.filter(seldom::contains).isPresent() && outcomes.contains(PULSING)) {
        outcomes.add(good);
      }
    }
    return new Sight(looks.stream().distinct().toList(), outcomes.stream().distinct().toList());
  }

  private static Optional<Pad> pad(String look) {
    String[] words = look.split(" ");
    int dot = words[Math.min(1, words.length - 1)].indexOf('.');
    return look.startsWith(PROBE) && dot > 0
        ? Optional.of(new Pad(words[1].substring(0, dot), words[1].substring(dot + 1)))
        : Optional.empty();
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
