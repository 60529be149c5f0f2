package faultfinch.board;

import faultfinch.signal.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads a described board, one that comes with the program or an author's own, and checks all that
 * a run relies on. Whatever is not right is a {@link BadInput}.
 */
public final class BoardReader {
  private static final String FILE = "board.json";
  private static final String BOARDS = "/faultfinch/boards/";
  private static final String LAID_OVER = "+";
  private static final List<String> SHIPPED = List.of("sorrel", "tamarisk");

  private BoardReader() {}

  /** Names of the boards that come with the program, simplest first. */
  public static List<String> shippedNames() {
    return SHIPPED;
  }

  /** Names of those boards with all that overlays make of them, each behind its own. */
  public static List<String> shippedVariants() {
    return SHIPPED.stream()
        .flatMap(name -> Stream.concat(Stream.of(name), overlaid(name).stream()))
        .toList();
  }

  /** Names of what overlays make of one of those boards. */
  public static List<String> overlaid(String board) {
    List<String> overlays =
        VariantsFile.in(new Shipped(board)).map(VariantsFile::names).orElse(List.of());
    return overlays.stream().map(overlay -> overlaid(board, overlay)).toList();
  }

  /** The name of a board with an overlay. */
  static String overlaid(String board, String overlay) {
    return board + LAID_OVER + overlay;
  }

  /**
   * A board that comes with the program, or one with an overlay.
   *
   * @param name such as {@code tamarisk} or {@code tamarisk+soldered}
   * @throws BadInput if there is none of this name
   */
  public static Board shipped(String name) {
    int laid = name.indexOf(LAID_OVER);
    String board = laid < 0 ? name : name.substring(0, laid);
    if (!SHIPPED.contains(board)) {
      throw new BadInput(
          board + "/" + FILE, 1, 1, "no board '" + board + "'", NearNames.alternatives(SHIPPED));
    }
    BoardFolder folder = new Shipped(board);
    return laid < 0
        ? new BoardFile(new Sources(folder), FILE, Optional.empty()).board()
        : overlaid(folder, FILE, name.substring(laid + 1));
  }

  /** The shipped board that the board of this name has an overlay of, if it has one. */
  public static Optional<Board> under(String name) {
    int laid = name.indexOf(LAID_OVER);
    return laid < 0 || !SHIPPED.contains(name.substring(0, laid))
        ? Optional.empty()
        : Optional.of(shipped(name.substring(0, laid)));
  }

  private static Board overlaid(BoardFolder folder, String file, String overlay) {
    Sources sources = new Sources(folder);
    VariantsFile variants =
        VariantsFile.in(sources)
            .orElseThrow(
                () ->
                    new BadInput(
                        folder.shown(VariantsFile.FILE),
                        1,
                        1,
                        "no file, so no overlay '" + overlay + "'",
                        "a board with overlays"));
    return new BoardFile(sources, file, Optional.of(variants.overlay(overlay))).board();
  }

  /** What overlays make of a board that comes with the program. */
  public static Variants variants(String name) {
    BoardFolder folder = new Shipped(name);
    return VariantsFile.in(folder).map(f -> f.variants(shipped(name))).orElse(Variants.NONE);
  }

  /** The same of an author's board. */
  public static Variants variants(Path boardJson) {
    return VariantsFile.in(new OnDisk(boardJson))
        .map(f -> f.variants(read(boardJson)))
        .orElse(Variants.NONE);
  }

  /** A file that comes with the program beside a board of this name, such as its dictionary. */
  public static Optional<InputStream> beside(String name, String file) {
    int laid = name.indexOf(LAID_OVER);
    String folder = laid < 0 ? name + "/" : name.substring(0, laid) + "/" + VariantsFile.FOLDER;
    String resource = BOARDS + folder + file;
    return Optional.ofNullable(BoardReader.class.getResourceAsStream(resource));
  }

  /**
   * An author's board.
   *
   * @param boardJson its description; images and labels are looked for beside it
   * @throws BadInput naming file, line and column of what is not right
   */
  public static Board read(Path boardJson) {
    String file = String.valueOf(boardJson.getFileName());
    return new BoardFile(new Sources(new OnDisk(boardJson)), file, Optional.empty()).board();
  }

  /** The same with an overlay that lies in the folder {@code overlays} beside it. */
  public static Board read(Path boardJson, String overlay) {
    String file = String.valueOf(boardJson.getFileName());
    return overlaid(new OnDisk(boardJson), file, overlay);
  }

  private record Shipped(String board) implements BoardFolder {
    @Override
    public byte[] bytes(String name) throws IOException {
      String resource = BOARDS + board + "/" + name;
      try (InputStream in = BoardReader.class.getResourceAsStream(resource)) {
        if (in == null) {
          throw new NoSuchFileException(shown(name));
        }
        return in.readAllBytes();
      }
    }

    @Override
    public String shown(String name) {
      return board + "/" + name;
    }

    @Override
    public boolean isProven() {
      return true;
    }
  }

  private record OnDisk(Path boardJson) implements BoardFolder {
    @Override
    public byte[] bytes(String name) throws IOException {
      try {
        return Files.readAllBytes(boardJson.resolveSibling(name));
      } catch (InvalidPathException e) {
        throw new NoSuchFileException(name);
      }
    }

    @Override
    public String shown(String name) {
      try {
        return boardJson.resolveSibling(name).toString();
      } catch (InvalidPathException e) {
        return name;
      }
    }
  }
}
