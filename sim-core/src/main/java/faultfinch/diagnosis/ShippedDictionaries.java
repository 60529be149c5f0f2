package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/** The dictionaries that come with the program, one beside each shipped board. */
public final class ShippedDictionaries {
  /** Version of everything that runs a board and looks at it; a change of behaviour raises it. */
  public static final String MODELS = "1";

  private static final String SUFFIX = ".dictionary";

  private ShippedDictionaries() {}

  /** Its file name beside the board. */
  public static String fileName(Board board) {
    return board.name() + SUFFIX;
  }

  /** The dictionary of just this board and firmware, if one was shipped. */
  public static Optional<FaultDictionary> of(Board board) {
    return of(board, Origin.of(board, MODELS));
  }

  /** The same for whoever knows the origin already. */
  public static Optional<FaultDictionary> of(Board board, Origin origin) {
    return own(board, origin).or(() -> ofTheBoardUnder(board, origin));
  }

  private static Optional<FaultDictionary> own(Board board, Origin origin) {
    Optional<InputStream> file = BoardReader.beside(board.name(), fileName(board));
    try (InputStream in = file.orElse(InputStream.nullInputStream())) {
      return file.isEmpty()
          ? Optional.empty()
          : Optional.of(DictionaryFile.read(fileName(board), in))
              .filter(d -> d.origin().equals(origin));
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own " + fileName(board) + " is unreadable", e);
    }
  }

  /** An overlay that no run can notice leaves the rows what they are, of the faults it leaves. */
  private static Optional<FaultDictionary> ofTheBoardUnder(Board board, Origin origin) {
    return BoardReader.under(board.name())
        .filter(board::runsAs)
        .flatMap(ShippedDictionaries::of)
        .map(
            d ->
                d.ofOthers(
                    origin, FaultUniverse.of(board).faults().stream().map(Fault::text).toList()));
  }
}
