package faultfinch.cli;

import faultfinch.attempt.Attempt;
import faultfinch.bench.Look;
import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.bench.Offer;
import faultfinch.bench.Price;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** What can be done now: the kinds first, and for one kind or one part its places. */
final class OfferPage {
  private static final int WIDTH = 96;
  private static final int FEW = 4;

  private final Attempt attempt;
  private final Terminal terminal;

  OfferPage(Attempt attempt, Terminal terminal) {
    this.attempt = attempt;
    this.terminal = terminal;
  }

  /** All kinds, each with a price and, if there are few, its places. */
  void kinds() {
    Map<String, List<Offer>> byKind = new LinkedHashMap<>();
    for (Offer offer : attempt.possible()) {
      byKind.computeIfAbsent(kind(offer.move()), k -> new ArrayList<>()).add(offer);
    }
    Columns columns = new Columns();
    byKind.forEach((kind, offers) -> columns.row("  " + kind, about(kind, offers)));
    terminal.say("train.offers");
    columns.print(terminal.out(), WIDTH);
    terminal.say("train.offers.more");
  }

  /** Such as for an inspection: the whole board has no name. */
  private static String firstNamed(List<String> places) {
    return places.stream().filter(p -> !p.isEmpty()).findFirst().orElse("");
  }

  private String about(String kind, List<Offer> offers) {
    String price = price(offers.get(0).price());
    List<String> places = offers.stream().map(o -> place(o.move())).toList();
    if (places.size() == 1 && places.get(0).isEmpty()) {
      return price;
    }
    String where =
        places.size() <= FEW
            ? String.join(", ", places)
            : say("train.offers.places", places.size(), firstNamed(places), kind);
    return price.isEmpty() ? where : price + "; " + where;
  }

  /** Places of a kind, or what can be done at a part. */
  void about(String word) {
    String wanted = word.toLowerCase(Locale.ROOT);
    List<Offer> ofKind =
        attempt.possible().stream().filter(o -> kind(o.move()).equalsIgnoreCase(wanted)).toList();
    if (!ofKind.isEmpty()) {
      String places = ofKind.stream().map(o -> place(o.move())).collect(Collectors.joining(", "));
      line(places.isEmpty() ? wanted : wanted + ": " + places, price(ofKind.get(0).price()));
      return;
    }
    Map<String, List<String>> here = new LinkedHashMap<>();
    for (Offer offer : attempt.possible()) {
      if (touches(place(offer.move()), wanted)) {
        here.computeIfAbsent(kind(offer.move()), k -> new ArrayList<>()).add(place(offer.move()));
      }
    }
    for (String answer : attempt.decisions(word)) {
      int colon = answer.indexOf(": ");
      String what = say("train.offers.decide", answer.substring(colon + 2));
      here.computeIfAbsent(what, k -> new ArrayList<>()).add(answer.substring(0, colon));
    }
    if (here.isEmpty()) {
      terminal.say("train.offers.none", word);
      return;
    }
    Columns columns = new Columns();
    here.forEach((kind, places) -> columns.row("  " + kind, String.join(", ", places)));
    columns.print(terminal.out(), WIDTH);
  }

  private void line(String what, String price) {
    terminal.out().println(price.isEmpty() ? what : price + "  " + what);
  }

  private static boolean touches(String place, String ref) {
    String small = place.toLowerCase(Locale.ROOT);
    return small.equals(ref) || small.startsWith(ref + ".") || small.startsWith(ref + " ");
  }

  private static String kind(Move move) {
    return move.kind() == Moves.LOOK ? move.asLook().kind().word() : move.kind().word();
  }

  private static String place(Move move) {
    if (move.kind() != Moves.LOOK) {
      return move.place();
    }
    Look look = move.asLook();
    return look.place().replaceFirst(" at the pin$", "").replaceFirst(" at the pad$", " pad");
  }

  private String price(Price price) {
    return attempt.card().shown().prices() ? Pricing.words(price, terminal.words()) : "";
  }

  private String say(String key, Object... gaps) {
    return terminal.words().say(key, gaps);
  }
}
