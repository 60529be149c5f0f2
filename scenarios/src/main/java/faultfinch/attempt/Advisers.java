package faultfinch.attempt;

import faultfinch.bench.Price;
import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.diagnosis.DictionaryFile;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Origin;
import faultfinch.fault.FaultUniverse;
import faultfinch.format.Case;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Finds the dictionary of a board; a board without one is played without advice. */
final class Advisers {
  private static final String MODELS = "1";
  private static final String SUFFIX = ".dictionary";

  private Advisers() {}

  /** Takes seconds: the fault list of the board is made. */
  static Adviser of(Board board, Prices prices) {
    Optional<FaultDictionary> dictionary =
        shipped(board).filter(d -> d.origin().equals(Origin.of(board, MODELS)));
    return dictionary.isEmpty()
        ? new Silent()
        : new DictionaryAdviser(dictionary.get(), FaultUniverse.of(board), prices);
  }

  private static Optional<FaultDictionary> shipped(Board board) {
    String name = board.name() + SUFFIX;
    try (InputStream in =
        Board.class.getResourceAsStream("/faultfinch/boards/" + board.name() + "/" + name)) {
      return in == null ? Optional.empty() : Optional.of(DictionaryFile.read(name, in));
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own " + name + " cannot be read", e);
    }
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
