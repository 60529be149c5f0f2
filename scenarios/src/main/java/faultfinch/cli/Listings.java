package faultfinch.cli;

import faultfinch.bench.Instruments;
import faultfinch.bench.Look;
import faultfinch.bench.Looks;
import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Tick;
import faultfinch.board.Variants;
import faultfinch.desk.Saying;
import faultfinch.fault.FaultUniverse;
import faultfinch.format.Case;
import faultfinch.library.Library;
import faultfinch.signal.Pin;
import faultfinch.symptom.HandsOn;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The rows of each thing that can be listed. */
final class Listings {
  private static final Pattern REFERENCE = Pattern.compile("[A-Z]+\\d+");
  private static final MathContext SHOWN = new MathContext(3);

  private Listings() {}

  static Listing boards(List<Board> boards) {
    List<List<Object>> rows = new ArrayList<>();
    for (Board b : boards) {
      rows.add(
          List.of(b.name(), b.title(), b.maker(), b.parts().size(), b.nets().size(), b.about()));
    }
    return new Listing(List.of("name", "title", "maker", "parts", "nets", "about"), rows);
  }

  static Listing parts(Board board, Predicate<String> wanted) {
    List<List<Object>> rows = new ArrayList<>();
    for (PlacedPart p : board.parts()) {
      if (wanted.test(p.ref())) {
        rows.add(List.of(p.ref(), p.type().type(), p.socketed(), p.value(), p.role()));
      }
    }
    return new Listing(List.of("part", "type", "socketed", "value", "role"), rows);
  }

  static Listing pins(Board board, Predicate<String> wanted, Words words) {
    Map<Pad, Net> nets = board.netOfPad();
    List<List<Object>> rows = new ArrayList<>();
    for (PlacedPart part : board.parts()) {
      if (wanted.test(part.ref())) {
        for (Pin pin : part.type().part().pinout().pins()) {
          Pad pad = new Pad(part.ref(), pin.name());
          String net = nets.containsKey(pad) ? nets.get(pad).name() : "";
          String role = words.say("role." + pin.role());
          String way = words.say("way." + pin.direction());
          rows.add(List.of(pad.text(), pin.number(), way, role, net));
        }
      }
    }
    return new Listing(List.of("pin", "number", "way", "role", "net"), rows);
  }

  static Listing nets(Board board, Predicate<List<Pad>> wanted) {
    List<List<Object>> rows = new ArrayList<>();
    for (Net net : board.nets()) {
      if (wanted.test(net.pads())) {
        rows.add(List.of(net.name(), net.pads().stream().map(Pad::text).toList()));
      }
    }
    return new Listing(List.of("net", "pins"), rows);
  }

  static Listing faults(Board board, Predicate<String> wanted) {
    List<List<Object>> rows = new ArrayList<>();
    for (FaultUniverse.Entry e : FaultUniverse.of(board).entries()) {
      if (names(e.fault().spot(), wanted) || names(e.fault().place(), wanted)) {
        rows.add(
            List.of(
                e.fault().text(),
                perMille(e.weight()),
                e.fault().kind().title(),
                e.repair().text()));
      }
    }
    return new Listing(List.of("fault", "perMille", "kind", "cure"), rows);
  }

  static Listing observations(Board board, Predicate<String> wanted) {
    Prices prices = Prices.shipped();
    List<List<Object>> rows = new ArrayList<>();
    for (Look look : Looks.passive(board)) {
      if (names(look.place(), wanted)) {
        rows.add(
            List.of(
                look.text(),
                prices.of(look).minutes(),
                look.kind().unpowered(),
                look.kind().says()));
      }
    }
    if (wanted.test("")) {
      rows.addAll(sayings(Looks.passive(board), prices));
    }
    for (Moves move : Moves.values()) {
      if (move != Moves.LOOK && !move.says().isEmpty() && wanted.test("")) {
        rows.add(
            List.of(
                move.form().isEmpty() ? move.word() : move.word() + ": " + move.form(),
                prices.of(new Move(move, move.form())).minutes(),
                move == Moves.MILLIOHMS,
                move.says()));
        boolean offered =
            Moves.handsOn(move.word()).isEmpty()
                || HandsOn.of(board).stream().anyMatch(h -> h.name().equals(move.word()));
        if (offered) {
          Object minutes = prices.of(new Move(move, move.form())).minutes();
          rows.addAll(examples(move.word(), minutes, move == Moves.MILLIOHMS));
        }
      }
    }
    return new Listing(List.of("look", "minutes", "unpowered", "tells"), rows);
  }

  /** Ways to say what a look showed, of the kinds of look that the board offers. */
  private static List<List<Object>> sayings(List<Look> looks, Prices prices) {
    List<List<Object>> rows = new ArrayList<>();
    for (Saying saying : Saying.shipped()) {
      looks.stream()
          .filter(l -> l.kind().word().equals(saying.kind()))
          .findFirst()
          .ifPresent(
              look ->
                  rows.add(
                      List.of(
                          saying.beside() ? "... " + saying.words() : saying.words(),
                          prices.of(look).minutes(),
                          look.kind().unpowered(),
                          saying.kind() + ": " + saying.shows())));
    }
    for (Instruments kind : Instruments.values()) {
      looks.stream()
          .filter(l -> l.kind() == kind)
          .findFirst()
          .ifPresent(
              l -> rows.addAll(examples(kind.word(), prices.of(l).minutes(), kind.unpowered())));
    }
    return rows;
  }

  /** Examples of what is said of a kind of look that has no ways by rote. */
  private static List<List<Object>> examples(String kind, Object minutes, boolean unpowered) {
    return Saying.examples(kind).stream()
        .map(saying -> List.of(saying.words(), minutes, unpowered, kind))
        .toList();
  }

  /** Each question with its answers and what the boards say that have another than the first. */
  static Listing ticks(Variants variants) {
    List<List<Object>> rows = new ArrayList<>();
    for (Tick tick : variants.ticks()) {
      String here = variants.boards().get(0).ticks().get(tick.name());
      List<String> others =
          variants.boards().stream()
              .filter(b -> !b.ticks().get(tick.name()).equals(here))
              .map(Variants.Variant::name)
              .toList();
      String answers = String.join(" / ", tick.answers());
      rows.add(List.of(tick.name(), answers, here, others, tick.asks()));
    }
    return new Listing(List.of("tick", "answers", "here", "otherwise", "asks"), rows);
  }

  static Listing cases(Optional<String> board) {
    List<List<Object>> rows = new ArrayList<>();
    for (Case.Label label : Library.labels()) {
      if (board.isEmpty() || board.get().equals(label.board())) {
        rows.add(List.of(label.number(), label.name(), label.board(), label.title()));
      }
    }
    return new Listing(List.of("case", "name", "board", "title"), rows);
  }

  /** Whether a place names one of the wanted parts; a place without a part is wanted with all. */
  private static boolean names(String place, Predicate<String> wanted) {
    Matcher m = REFERENCE.matcher(place);
    boolean any = false;
    while (m.find()) {
      any = true;
      if (wanted.test(m.group())) {
        return true;
      }
    }
    return !any && wanted.test("");
  }

  private static double perMille(double weight) {
    return BigDecimal.valueOf(weight).movePointRight(3).round(SHOWN).doubleValue();
  }
}
