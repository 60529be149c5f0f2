package faultfinch.workbench;

import faultfinch.bench.Instruments;
import faultfinch.bench.Look;
import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.bench.Offer;
import faultfinch.bench.Price;
import faultfinch.fx.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Sorts what can be done now by where the hand is, and says each move in words. */
final class Choices {
  private static final Set<Moves> WITH_THE_BRICK =
      Set.of(
          Moves.POWER_ON,
          Moves.POWER_OFF,
          Moves.POWER_CYCLE,
          Moves.SUPPLY_OFF_LOAD,
          Moves.SUPPLY_ON_DUMMY,
          Moves.BENCH_SUPPLY,
          Moves.SWAP_SUPPLY,
          Moves.OWN_SUPPLY,
          Moves.NEW_SUPPLY);

  private final Words words;
  private final boolean prices;

  Choices(Words words, boolean prices) {
    this.words = words;
    this.prices = prices;
  }

  /** What can be done at a spot: looks before moves, what belongs to the spot itself first. */
  List<Choice> at(Spot spot, List<Offer> offers) {
    List<Choice> choices = new ArrayList<>();
    offers.stream().filter(o -> belongs(spot, o.move())).map(this::choice).forEach(choices::add);
    if (spot instanceof Spot.OnPin pin) {
      choices.addAll(at(new Spot.OnPart(pin.place().pad().ref()), offers));
    }
    choices.sort(Comparator.comparing(Choice::kind));
    return List.copyOf(choices);
  }

  private static boolean belongs(Spot spot, Move move) {
    if (spot instanceof Spot.OnPin pin) {
      return names(where(move), pin.place().pad().text());
    }
    if (spot instanceof Spot.OnPart part) {
      return where(move).equals(part.ref())
          || move.kind() == Moves.EXCHANGE_TWO && names(where(move), part.ref());
    }
    if (spot instanceof Spot.OnTrack track) {
      return where(move).startsWith(track.segment().text());
    }
    if (spot instanceof Spot.OnBrick) {
      return WITH_THE_BRICK.contains(move.kind()) || looks(move, Instruments.CURRENT);
    }
    if (spot instanceof Spot.OnMonitor) {
      return looks(move, Instruments.SCREEN);
    }
    if (spot instanceof Spot.OnOwner) {
      return move.kind() == Moves.ASK;
    }
    return spot instanceof Spot.OnBoard
        && !WITH_THE_BRICK.contains(move.kind())
        && move.kind() != Moves.ASK
        && whole(move);
  }

  private static boolean looks(Move move, Instruments kind) {
    return move.kind() == Moves.LOOK && move.asLook().kind() == kind;
  }

  /** Whether a move is about no part, pin or track of its own. */
  private static boolean whole(Move move) {
    return !where(move).matches("[A-Z]+\\d+(\\b.*)?");
  }

  private static String where(Move move) {
    return move.kind() == Moves.LOOK ? move.asLook().place() : move.place();
  }

  /** Whether a place, such as {@code U9.D0 at the pin} or {@code U1.D0-U2.D0}, names a pad. */
  private static boolean names(String place, String pad) {
    return place.equals(pad)
        || place.startsWith(pad + " ")
        || place.startsWith(pad + "-")
        || place.endsWith("-" + pad);
  }

  private Choice choice(Offer offer) {
    return new Choice(
        say(offer.move()),
        price(offer.price()),
        !offer.breaches().isEmpty(),
        offer.move(),
        kind(offer.move().kind()));
  }

  private static Choice.Kind kind(Moves kind) {
    return switch (kind.use()) {
      case LOOK -> Choice.Kind.LOOK;
      case HANDLE, MEND -> Choice.Kind.HANDLE;
      case REPAIR -> Choice.Kind.REPAIR;
    };
  }

  /** A move as the card says it. */
  String say(Move move) {
    if (move.kind() == Moves.LOOK) {
      Look look = move.asLook();
      String side =
          look.place().endsWith(" at the pad")
              ? ".pad"
              : look.place().endsWith(" at the pin") ? ".pin" : "";
      return words.say("look." + look.kind().word() + side, look.place());
    }
    String key = "move." + move.kind().word().replace(' ', '.');
    if (!words.has(key)) {
      return move.text();
    }
    int side = move.place().indexOf(" to ");
    String to = side < 0 ? "" : move.place().substring(side + 4);
    return words.say(key, move.place(), to);
  }

  /** A price as the card says it; empty if this case shows none. */
  String price(Price price) {
    return prices ? plain(price) : "";
  }

  /** A price in words, whatever the case shows. */
  String plain(Price price) {
    List<String> says = new ArrayList<>();
    says.add(words.say("price.minutes", Integer.toString(price.minutes())));
    if (price.pulls() > 0) {
      says.add(words.say(price.pulls() == 1 ? "price.pull" : "price.pulls", price.pulls()));
    }
    if (price.damage() > 0) {
      says.add(words.say("price.risk", String.format(Locale.ROOT, "%.1f", price.damage())));
    }
    return String.join(", ", says);
  }

  /** The place of a move; of a look, its own place. */
  static String place(Move move) {
    return where(move);
  }

  /** A move as a note heads it: without the word look. */
  static String brief(Move move) {
    return move.kind() == Moves.LOOK ? move.place() : move.text();
  }
}
