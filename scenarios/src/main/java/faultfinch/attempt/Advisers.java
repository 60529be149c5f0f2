package faultfinch.attempt;

import faultfinch.bench.Price;
import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.ShippedDictionaries;
import faultfinch.fault.FaultUniverse;
import faultfinch.format.Case;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Finds the dictionary of a board; a board without one is played without advice. */
final class Advisers {
  private Advisers() {}

  /** Takes seconds: the fault list of the board is made. */
  static Adviser of(Board board, Prices prices) {
    Optional<FaultDictionary> dictionary = ShippedDictionaries.of(board);
    return dictionary.isEmpty()
        ? new Silent()
        : new DictionaryAdviser(dictionary.get(), FaultUniverse.of(board), prices);
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
