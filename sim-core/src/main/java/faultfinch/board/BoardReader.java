package faultfinch.board;

import faultfinch.signal.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;

/**
 * Reads a described board, one that comes with the program or an author's own, and checks all that
 * a run relies on. Whatever is not right is a {@link BadInput}.
 */
public final class BoardReader {
  private static final String FILE = "board.json";
  private static final List<String> SHIPPED = List.of("sorrel", "tamarisk");

  private BoardReader() {}

  /** Names of the boards that come with the program, simplest first. */
  public static List<String> shippedNames() {
    return SHIPPED;
  }

  /**
   * A board that comes with the program.
   *
   * @throws BadInput if there is none of this name
   */
  public static Board shipped(String name) {
    if (!SHIPPED.contains(name)) {
      throw new BadInput(
          name + "/" + FILE, 1, 1, "no board '" + name + "'", NearNames.alternatives(SHIPPED));
    }
    return new BoardFile(new Shipped(name), FILE).board();
  }

  /**
   * An author's board.
   *
   * @param boardJson its description; images and labels are looked for beside it
   * @throws BadInput naming file, line and column of what is not right
   */
  public static Board read(Path boardJson) {
    return new BoardFile(new OnDisk(boardJson), String.valueOf(boardJson.getFileName())).board();
  }

  private record Shipped(String board) implements BoardFolder {
    @Override
    public byte[] bytes(String name) throws IOException {
      String resource = "/faultfinch/boards/" + board + "/" + name;
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
