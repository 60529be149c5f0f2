package faultfinch.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** What was done to parts, piece by piece: what came of it may stand in a piece behind it. */
final class Tries {
  /** Where one sentence ends and another begins: what came of a deed stands close behind it. */
  private static final Pattern SENTENCES = Pattern.compile("[a-zA-Z0-9)][.!?] +[A-Z0-9]");

  private final Deeds deeds;
  private final Plain plain;
  private final Notes notes;

  /** Something of which it is not said yet what came of it, and in which words. */
  private Optional<Deeds.Deed> open = Optional.empty();

  private String openSaid = "";

  Tries(Deeds deeds, Plain plain, Notes notes) {
    this.deeds = deeds;
    this.plain = plain;
    this.notes = notes;
  }

  /**
   * Whether a whole entry tells of something done to a part and what came of it, and of nothing
   * else.
   *
   * @param phrases says whether a piece speaks of pins
   */
  boolean whole(
      String says, Conditions when, Function<String, List<String>> pieces, Phrases phrases) {
    Optional<Deeds.Deed> deed = deeds.of(plain.of(says));
    if (deed.isEmpty() || deed.get().result() == Deeds.Result.NOT_SAID) {
      return false;
    }
    if (SENTENCES.matcher(says).find()) {
      return false;
    }
    List<String> apart = pieces.apply(says);
    if (apart.stream().filter(p -> deeds.of(plain.of(p)).isPresent()).count() > 1) {
      return false;
    }
    if (apart.stream().anyMatch(p -> phrases.isAtPins(p) && deeds.of(plain.of(p)).isEmpty())) {
      return false;
    }
    settle(when);
    came(says, when, deed.get());
    return true;
  }

  /** Whether words say that all is as it was before something was done. */
  boolean isInVain(String words) {
    return deeds.isResult(words) && deeds.result(words) == Deeds.Result.NOTHING;
  }

  /**
   * Whether a piece is something done to a part, or what came of the piece before.
   *
   * @param saysNothing whether plain words are a look at nothing
   */
  boolean one(String piece, Conditions when, Predicate<String> saysNothing) {
    if (open.isPresent() && deeds.isResult(plain.of(piece))) {
      closed(piece, when, deeds.result(plain.of(piece)));
      return true;
    }
    boolean passing = open.isPresent() && !open.get().kind().lasts();
    if (passing && deeds.result(plain.of(piece)) == Deeds.Result.HELPED) {
      // "A good one on top of U11, pressed hard: comes up with the banner".
      closed(piece, when, Deeds.Result.HELPED);
      return true;
    }
    if (open.isPresent() && deeds.isTheSame(plain.of(piece))) {
      // "new U34, still mute": nothing came of it, and the piece may be a look besides.
      closed(piece, when, Deeds.Result.NOTHING);
      return saysNothing.test(plain.of(piece));
    }
    Optional<Deeds.Deed> deed = deeds.of(plain.of(piece));
    boolean known = deed.isPresent() && deed.get().result() != Deeds.Result.NOT_SAID;
    if (deed.isEmpty()) {
      return false;
    }
    settle(when);
    if (known) {
      came(piece, when, deed.get());
    } else {
      open = deed;
      openSaid = piece;
    }
    return true;
  }

  private void closed(String piece, Conditions when, Deeds.Result result) {
    Deeds.Deed before = open.orElseThrow();
    open = Optional.empty();
    came(openSaid + ", " + piece, when, before.came(result));
  }

  /** A repair of which nothing more is said was done; what follows was seen after it. */
  void settle(Conditions when) {
    if (open.isPresent()) {
      Deeds.Deed deed = open.get();
      open = Optional.empty();
      if (deed.kind().lasts()) {
        came(openSaid, when, deed);
      } else {
        Phrases.Trouble trouble =
            new Phrases.Trouble(Statement.Why.NOT_UNDERSTOOD, openSaid, List.of());
        notes.keep(openSaid, when, trouble);
      }
    }
  }

  private void came(String said, Conditions when, Deeds.Deed deed) {
    notes.came(said, when, deed, deeds.repairs(deed));
  }
}
