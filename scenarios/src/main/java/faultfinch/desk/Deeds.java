package faultfinch.desk;

import faultfinch.board.Board;
import faultfinch.board.PlacedPart;
import faultfinch.fault.RepairAction;
import faultfinch.part.Element;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what was done to parts out of a phrase, and what came of it: "new U1, no change". */
final class Deeds {
  private static final List<String> SUPPLIES = List.of("brick", "lead");

  private static final Pattern STOPS = Pattern.compile("[:;.!?]+(?= |$)");

  private static final Pattern AND = Pattern.compile("(?i),? and |, | & | \\+ ");

  /** A bank of memories and one more. */
  private static final int MOST_ALIKE = 9;

  private final Board board;
  private final Vocabulary vocabulary;
  private final Places places;

  Deeds(Board board, Vocabulary vocabulary) {
    this.board = board;
    this.vocabulary = vocabulary;
    places = new Places(board, vocabulary);
  }

  /** What can be done to a part, by its words in the vocabulary. */
  enum Kind {
    /** Before good ones: "a known good one on top of U4" tells nothing good of U4. */
    PIGGYBACK("tried.piggyback"),
    /** Found good by itself, in another board or a tester. */
    GOOD("tried.good"),
    SPRAY("tried.spray"),
    RESEAT("tried.reseat"),
    PRESS("tried.press"),
    SOCKET("tried.socket"),
    EXCHANGE("tried.exchange"),
    /** Several taken out together, and all is as it was; last, for who exchanges takes out too. */
    PULL("tried.pull");

    private final String key;

    Kind(String key) {
      this.key = key;
    }

    /** Whether the board is otherwise from then on. */
    boolean lasts() {
      return this == EXCHANGE || this == RESEAT || this == SOCKET;
    }
  }

  /** What came of it. */
  enum Result {
    NOT_SAID,
    NOTHING,
    HELPED
  }

  /**
   * Something done.
   *
   * @param refs the parts it was done to, or the brick or its lead
   */
  record Deed(Kind kind, List<String> refs, Result result) {
    Deed {
      refs = List.copyOf(refs);
    }

    Deed came(Result of) {
      return new Deed(kind, refs, of);
    }
  }

  /** The deed that a phrase tells of, if it tells of one and of a part of this board. */
  Optional<Deed> of(String phrase) {
    String bare = STOPS.matcher(phrase).replaceAll(" ").strip();
    String small = bare.toLowerCase(Locale.ROOT);
    if (Vocabulary.in(small, vocabulary.words("tried.compared")).isPresent()) {
      return Optional.empty();
    }
    for (Kind kind : Kind.values()) {
      Optional<String> words = Vocabulary.in(small, vocabulary.words(kind.key));
      List<String> refs = words.map(w -> refs(kind, w, bare, small)).orElse(List.of());
      if (words.isEmpty() && kind == Kind.EXCHANGE) {
        refs = renewed(bare, small);
      }
      Result result = kind == Kind.GOOD ? Result.NOTHING : result(small);
      boolean alone = refs.size() == 1 && isPassive(refs.get(0));
      if (kind == Kind.PULL && refs.size() < 2 && !alone) {
        // What one chip taken out shows is a look of its own.
        continue;
      }
      boolean others =
          result == Result.NOT_SAID
              && Vocabulary.in(small, vocabulary.words("tried.by-others")).isPresent();
      if (words.isPresent() || !refs.isEmpty()) {
        return refs.isEmpty() || others
            ? Optional.empty()
            : Optional.of(new Deed(kind, refs, result));
      }
    }
    return Optional.empty();
  }

  /** A capacitor, a resistor, a diode: nothing goes on without it that would be looked at. */
  private boolean isPassive(String ref) {
    return board.part(ref).filter(p -> p.type().part() instanceof Element).isPresent();
  }

  private List<String> refs(Kind kind, String words, String typed, String small) {
    List<String> supplies = supplies(small);
    boolean supply = !supplies.isEmpty() && (kind == Kind.GOOD || kind == Kind.EXCHANGE);
    List<String> named = supply ? List.of() : parts(Vocabulary.masked(small, words), typed);
    boolean every =
        (kind == Kind.RESEAT || kind == Kind.PULL)
            && named.isEmpty()
            && Vocabulary.in(small, vocabulary.words("tried.every-socket")).isPresent();
    if (every) {
      return board.parts().stream().filter(PlacedPart::socketed).map(PlacedPart::ref).toList();
    }
    return supply ? supplies : named;
  }

  /** Words such as "new" tell of an exchange only right before a part, or behind it. */
  private List<String> renewed(String typed, String small) {
    for (String word : vocabulary.words("tried.renewed")) {
      Matcher m =
          Pattern.compile("(?<= |^)" + Pattern.quote(word) + "((?: [^ ]+){1,3})").matcher(small);
      while (m.find()) {
        List<String> refs = refs(Kind.EXCHANGE, word, m.group(1).strip(), m.group(1).strip());
        // "Another multiplexer" is one of four, and nobody knows which.
        // "The other Qs of U22" are no other U22.
        boolean itself = !m.group(1).matches(".* (?:of|on|at) .*");
        boolean single = Vocabulary.in(word, vocabulary.words("tried.one-of-several")).isPresent();
        if (itself && !refs.isEmpty() && (refs.size() == 1 || !single)) {
          return refs;
        }
      }
      Matcher behind =
          Pattern.compile("(?<= |^)([a-z]+\\d+) (?:is )?" + Pattern.quote(word) + "(?= |$)")
              .matcher(small);
      if (behind.find()) {
        return parts(behind.group(1), behind.group(1));
      }
    }
    return List.of();
  }

  /** One of several alike is none in particular, and what is said of all chips is said of none. */
  private List<String> parts(String rest, String typed) {
    List<String> named =
        board.parts().stream()
            .map(PlacedPart::ref)
            .filter(
                // U2.A9 is a pin, at which nothing was done to U2.
                ref -> rest.matches(".*\\b" + ref.toLowerCase(Locale.ROOT) + "\\b(?!\\.\\w).*"))
            .toList();
    if (!named.isEmpty()) {
      return named;
    }
    Set<String> found = new LinkedHashSet<>();
    for (String piece : AND.split(typed)) {
      found.addAll(places.find(piece, true).refs());
    }
    List<String> refs = List.copyOf(found);
    boolean one =
        refs.size() > 1
            && Vocabulary.in(rest, vocabulary.words("tried.one-of-several")).isPresent()
            && Vocabulary.in(rest, vocabulary.words("tried.one-by-one")).isEmpty();
    return one || refs.size() > MOST_ALIKE ? List.of() : refs;
  }

  /** What brings the supply, as a repair names it, if a phrase is of that and of no part. */
  private List<String> supplies(String rest) {
    return SUPPLIES.stream()
        .filter(name -> Vocabulary.in(rest, vocabulary.words("supply." + name)).isPresent())
        .limit(1)
        .toList();
  }

  /** The repairs it was; none where nothing of the board is otherwise after it. */
  List<RepairAction> repairs(Deed deed) {
    return switch (deed.kind()) {
      case SPRAY, PRESS, PIGGYBACK -> List.of();
      case PULL, GOOD, RESEAT, SOCKET, EXCHANGE ->
          deed.refs().stream().map(ref -> repair(deed, ref)).toList();
    };
  }

  /** The repair that a deed to a part is. */
  private RepairAction repair(Deed deed, String ref) {
    if (SUPPLIES.contains(ref)) {
      return new RepairAction(RepairAction.Kind.SUPPLY, ref);
    }
    return switch (deed.kind()) {
      case RESEAT -> new RepairAction(RepairAction.Kind.RESEAT, ref);
      case SOCKET -> new RepairAction(RepairAction.Kind.NEW_SOCKET, ref);
      default -> RepairAction.exchanging(ref, board);
    };
  }

  /** What a phrase says came of something. */
  Result result(String phrase) {
    String small = phrase.toLowerCase(Locale.ROOT).strip();
    if (Vocabulary.in(small, vocabulary.words("tried.nothing")).isPresent()) {
      return Result.NOTHING;
    }
    return Vocabulary.in(small, vocabulary.words("tried.helped")).isPresent()
        ? Result.HELPED
        : Result.NOT_SAID;
  }

  /** Whether a phrase behind a deed says that something is as it was before. */
  boolean isTheSame(String phrase) {
    return Vocabulary.in(phrase.toLowerCase(Locale.ROOT).strip(), vocabulary.words("tried.same"))
        .isPresent();
  }

  /** Whether a phrase says what came of something, and nothing else. */
  boolean isResult(String phrase) {
    String small = phrase.toLowerCase(Locale.ROOT).strip();
    return vocabulary.words("tried.nothing").contains(small)
        || vocabulary.words("tried.helped").contains(small);
  }
}
