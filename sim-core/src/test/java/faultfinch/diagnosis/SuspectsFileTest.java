package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultUniverse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Run with {@code -Dsuspects.write=true} it writes the files of the shipped boards anew. */
class SuspectsFileTest {
  private static final String FOLDER = "src/main/resources/faultfinch/boards";

  @ParameterizedTest
  @ValueSource(strings = {"sorrel", "tamarisk"})
  void shippedSuspects_areThoseOfTheFaultList(String name) throws IOException {
    Board board = BoardReader.shipped(name);
    Origin origin = Origin.of(board, ShippedDictionaries.MODELS);
    Suspects computed = Suspects.of(FaultUniverse.of(board));
    byte[] bytes = SuspectsFile.bytes(origin, computed);
    if (Boolean.getBoolean("suspects.write")) {
      Files.write(Path.of(FOLDER, name, SuspectsFile.fileName(board)), bytes);
    }
    Suspects shipped = SuspectsFile.shipped(board, origin).orElseThrow();
    assertEquals(computed.all(), shipped.all());
    assertEquals(computed.actions(), shipped.actions());
    assertEquals(computed.hypotheses(), shipped.hypotheses());
    for (int i = 0; i < computed.all().size(); i++) {
      // The order of cures decides the order of actions, which equal maps do not tell.
      assertEquals(
          new ArrayList<>(computed.all().get(i).cures().entrySet()),
          new ArrayList<>(shipped.all().get(i).cures().entrySet()));
    }
    assertArrayEquals(bytes, SuspectsFile.bytes(origin, shipped));
  }

  @ParameterizedTest
  @ValueSource(strings = {"sorrel", "tamarisk"})
  void shippedSuspects_ofABoardThatWasChanged_areNotThose(String name) {
    Board board = BoardReader.shipped(name);
    assertTrue(SuspectsFile.shipped(board, Origin.of(board, "other models")).isEmpty());
  }
}
