package faultfinch.bench;

import faultfinch.board.Located;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What every kind of move costs and what chance does at the bench: a list a bench may replace. */
public final class Prices {
  private static final String FILE = "prices.json";
  private static final double MILLE = 1000;

  /** What chance decides, in the words of the list. */
  enum Chances {
    RESEATING_CURES("reseating cures a contact"),
    CLEANING_CURES("cleaning cures a contact"),
    PRESSING_CLOSES("pressing closes a contact"),
    NEW_PART_BAD("a new part is bad"),
    NEW_PART_UNSUITABLE("a new part is of too slow a grade"),
    HOT_CHIP_LOST("a chip moved with the power on is lost"),
    PAD_TEARS("a pad tears when a chip is desoldered");

    private final String words;

    Chances(String words) {
      this.words = words;
    }
  }

  private record Row(int minutes, int wholeMinutes, int pulls, int riskPerMille) {}

  private final int minutesAPull;
  private final int damageMinutes;
  private final Map<String, Row> rows = new LinkedHashMap<>();
  private final Map<Chances, Integer> chances = new LinkedHashMap<>();

  /** By kind: whoever plans asks for those of thousands. */
  private final Map<Instruments, Price> looks = new EnumMap<>(Instruments.class);

  private Prices(Located list) {
    list.keys(List.of("minutesAPull", "damageMinutes", "moves", "chances"), List.of());
    minutesAPull = list.get("minutesAPull").whole(0, 1000);
    damageMinutes = list.get("damageMinutes").whole(0, 10_000);
    Located moves = list.get("moves").keys(words(), List.of());
    moves.entries().forEach(e -> rows.put(e.key().text(), row(e.value())));
    Located odds = list.get("chances");
    for (Chances c : Chances.values()) {
      chances.put(c, odds.get(c.words).whole(0, 100));
    }
    for (Instruments kind : Instruments.values()) {
      looks.put(kind, price(rows.get(Moves.LOOK.word() + ": " + kind.word()), false));
    }
  }

  private static Row row(Located row) {
    row.keys(List.of("minutes"), List.of("wholeMinutes", "pulls", "riskPerMille"));
    int minutes = row.get("minutes").whole(0, 1000);
    return new Row(
        minutes,
        row.find("wholeMinutes").map(v -> v.whole(0, 1000)).orElse(minutes),
        row.find("pulls").map(v -> v.whole(0, 10)).orElse(0),
        row.find("riskPerMille").map(v -> v.whole(0, 1000)).orElse(0));
  }

  private static List<String> words() {
    List<String> words = new ArrayList<>();
    for (Instruments i : Instruments.values()) {
      words.add(Moves.LOOK.word() + ": " + i.word());
    }
    for (Moves m : Moves.values()) {
      if (m != Moves.LOOK) {
        words.add(m.word());
      }
    }
    return Collections.unmodifiableList(words);
  }

  /** The list that comes with the program. */
  public static Prices shipped() {
    try (InputStream in = Prices.class.getResourceAsStream(FILE)) {
      return of(Located.read(FILE, in.readAllBytes()));
    } catch (IOException e) {
      throw new IllegalStateException(FILE + " cannot be read", e);
    }
  }

  /**
   * A list of one's own, in the form of the shipped one.
   *
   * @throws faultfinch.signal.BadInput if a move lacks its price, or anything is not as it should
   *     be
   */
  public static Prices of(Located list) {
    return new Prices(list);
  }

  /** The price of a look. */
  public Price of(Look look) {
    return looks.get(look.kind());
  }

  /** The price of a move. */
  public Price of(Move move) {
    String word =
        move.kind() == Moves.LOOK
            ? Moves.LOOK.word() + ": " + move.asLook().kind().word()
            : move.kind().word();
    return price(rows.get(word), move.place().isEmpty());
  }

  private Price price(Row row, boolean whole) {
    int minutes = whole ? row.wholeMinutes() : row.minutes();
    double damage = row.riskPerMille() * damageMinutes / MILLE;
    return new Price(minutes, row.pulls(), damage, minutes + minutesAPull * row.pulls() + damage);
  }

  /** Chance of something, in per cent. */
  int chance(Chances what) {
    return chances.get(what);
  }
}
