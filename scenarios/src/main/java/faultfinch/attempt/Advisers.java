package faultfinch.attempt;

import faultfinch.bench.Price;
import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.format.Case;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Finds the dictionary of a board; a board without one is played without advice. */
final class Advisers {
  private Advisers() {}

  static Adviser of(Board board, Prices prices) {
    return new Silent();
  }

  /** Knows nothing, and says so. */
  private static final class Silent implements Adviser {
    @Override
    public OptionalInt field(Facts facts) {
      return OptionalInt.empty();
    }

    @Override
    public List<Suspect> suspects(Facts facts) {
      return List.of();
    }

    @Override
    public boolean lookFirst(Facts facts) {
      return false;
    }

    @Override
    public Debrief.Best best(Case job) {
      return new Debrief.Best(
          List.of(), Price.NOTHING, Optional.of(Texts.say("best.no-dictionary")));
    }
  }
}
