package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.NearNames;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.signal.Pin;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.cli.Option;

/** The board a command is about, and names on it that a person may have mistyped. */
final class BoardChoice {
  static final String OPTION = "board";
  private static final String FILE = ".json";
  private static final String LAID_OVER = "+";

  private final Words words;

  BoardChoice(Words words) {
    this.words = words;
  }

  static Option option() {
    return Given.value(OPTION, "BOARD");
  }

  /**
   * The board given: one that comes with the program, or the file of an author's own. The first
   * that comes with the program if none is given.
   */
  Board board(Given given) {
    return board(given, Optional.empty());
  }

  /** The same where a file given may name the board. */
  Board board(Given given, Optional<String> ofFiles) {
    List<String> shipped = BoardReader.shippedNames();
    return named(given.text(OPTION).or(() -> ofFiles).orElse(shipped.get(0)));
  }

  /** The board of this name, or the file of an author's own, be it with an overlay. */
  Board named(String name) {
    int laid = name.indexOf(FILE + LAID_OVER);
    String file = laid < 0 ? name : name.substring(0, laid + FILE.length());
    if (file.endsWith(FILE)) {
      try {
        return laid < 0
            ? BoardReader.read(Path.of(file))
            : BoardReader.read(Path.of(file), name.substring(file.length() + 1));
      } catch (InvalidPathException e) {
        throw words.misuse("board.no-path", name);
      }
    }
    checkShipped(name);
    return BoardReader.shipped(name);
  }

  /** Overlays are asked for only where one is named: to know their names is to read their list. */
  private void checkShipped(String name) {
    List<String> shipped = BoardReader.shippedNames();
    int laid = name.indexOf(LAID_OVER);
    String board = laid < 0 ? name : name.substring(0, laid);
    if (!shipped.contains(board)) {
      String near = NearNames.of(name, BoardReader.shippedVariants());
      throw words.misuse("board.unknown", name, near);
    }
    List<String> overlaid = laid < 0 ? List.of() : BoardReader.overlaid(board);
    if (laid >= 0 && !overlaid.contains(name)) {
      String right = NearNames.alternatives(overlaid.isEmpty() ? List.of(board) : overlaid);
      throw words.misuse("board.no-overlay", name.substring(laid + 1), board, right);
    }
  }

  /** The part of this reference. */
  PlacedPart part(Board board, String ref) {
    return board
        .part(ref)
        .orElseThrow(
            () -> {
              List<String> refs = board.parts().stream().map(PlacedPart::ref).toList();
              return words.misuse("board.no-part", ref, board.title(), NearNames.of(ref, refs));
            });
  }

  /** The pad written as part and pin, such as {@code U9.D0}. */
  Pad pad(Board board, String written) {
    int dot = written.indexOf('.');
    if (dot < 1 || dot == written.length() - 1) {
      throw words.misuse("board.no-pad", written);
    }
    PlacedPart part = part(board, written.substring(0, dot));
    String pin = written.substring(dot + 1);
    List<String> pins = part.type().part().pinout().pins().stream().map(Pin::name).toList();
    if (!pins.contains(pin)) {
      throw words.misuse("board.no-pin", pin, part.ref(), NearNames.of(pin, pins));
    }
    return new Pad(part.ref(), pin);
  }
}
