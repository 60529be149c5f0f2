package faultfinch.diagnosis;

import faultfinch.board.Board;
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
    String path = "/faultfinch/boards/" + board.name() + "/" + fileName(board);
    try (InputStream in = Board.class.getResourceAsStream(path)) {
      return in == null
          ? Optional.empty()
          : Optional.of(DictionaryFile.read(fileName(board), in))
              .filter(d -> d.origin().equals(origin));
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own " + fileName(board) + " is unreadable", e);
    }
  }
}
