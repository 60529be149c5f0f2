package faultfinch.bench;

import faultfinch.board.Located;
import java.util.Map;

/** What every kind of move costs, as a list in data that a bench may replace. */
public final class Prices {
  private final Map<String, Price> byWord;

  private Prices(Map<String, Price> byWord) {
    this.byWord = byWord;
  }

  /** The list that comes with the program. */
  public static Prices shipped() {
    throw new UnsupportedOperationException("to come");
  }

  /** A list of one's own, in the form of the shipped one. */
  public static Prices of(Located list) {
    throw new UnsupportedOperationException("to come");
  }

  /** The price of a look. */
  public Price of(Look look) {
    return byWord.get("look: " + look.kind().word());
  }

  /** The price of a move. */
  public Price of(Move move) {
    return move.kind() == Moves.LOOK ? of(move.asLook()) : byWord.get(move.kind().word());
  }
}
