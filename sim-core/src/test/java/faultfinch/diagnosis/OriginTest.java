package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Run with {@code -Dorigins.write=true} it writes the files of the shipped boards anew. */
class OriginTest {
  private static final String FOLDER = "src/main/resources/faultfinch/boards";
  private static final String MODELS = ShippedDictionaries.MODELS;

  static Stream<String> boards() {
    return BoardReader.shippedVariants().stream();
  }

  @ParameterizedTest
  @MethodSource("boards")
  void shippedOrigin_isWhatTheBoardGives(String name) throws IOException {
    Board board = BoardReader.shipped(name);
    Origin computed = Origin.computed(board, MODELS);
    if (Boolean.getBoolean("origins.write")) {
      int laid = name.indexOf('+');
      Path folder =
          laid < 0 ? Path.of(FOLDER, name) : Path.of(FOLDER, name.substring(0, laid), "overlays");
      Files.writeString(
          folder.resolve(Origin.fileName(board)),
          Origin.text(board, MODELS, computed),
          StandardCharsets.UTF_8);
    }
    assertEquals(Optional.of(computed), Origin.shipped(board, MODELS));
  }

  @Test
  void origin_ofABoardThatWasChanged_isWorkedOut() {
    Board board = BoardReader.shipped("sorrel");
    Board idle = board.exercised(List.of());
    assertEquals(Optional.empty(), Origin.shipped(idle, MODELS));
    assertNotEquals(Origin.of(board, MODELS), Origin.of(idle, MODELS));
  }

  @Test
  void origin_ofOtherModels_isWorkedOut() {
    Board board = BoardReader.shipped("sorrel");
    assertEquals(Optional.empty(), Origin.shipped(board, "other models"));
    assertNotEquals(Origin.of(board, MODELS), Origin.of(board, "other models"));
  }

  @Test
  void origin_ofFilesThatDiffer_isWorkedOut(@TempDir Path folder) throws IOException {
    Path shipped = Path.of(FOLDER, "sorrel");
    Files.createDirectories(folder.resolve("firmware"));
    for (String file : List.of("board.json", "routes.json")) {
      Files.copy(shipped.resolve(file), folder.resolve(file));
    }
    for (String file : List.of("sorrel.bin", "sorrel.lbl")) {
      Files.copy(shipped.resolve("firmware/" + file), folder.resolve("firmware/" + file));
    }
    Path file = folder.resolve("board.json");
    assertTrue(Origin.shipped(BoardReader.read(file), MODELS).isPresent());
    // A blank more says nothing of the board, and is another file all the same.
    Files.writeString(file, Files.readString(file) + " ");
    Board board = BoardReader.read(file);
    assertEquals(Optional.empty(), Origin.shipped(board, MODELS));
    assertEquals(Origin.of(BoardReader.shipped("sorrel"), MODELS), Origin.of(board, MODELS));
  }
}
