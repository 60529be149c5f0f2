package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The schema is a second, independent statement of the format: it and the reader must agree. */
class BoardSchemaTest {
  private static final Path BOARDS = BadBoard.SORREL.getParent();
  private static final JsonSchema SCHEMA = schema();

  static List<BadBoard> badBoards() {
    return BadBoard.all();
  }

  @Test
  void schema_shippedBoards_areRight() throws IOException {
    for (String name : BoardReader.shippedNames()) {
      String text = Files.readString(BOARDS.resolve(name).resolve("board.json"));
      assertEquals(Set.of(), SCHEMA.validate(text, InputFormat.JSON), name);
    }
  }

  @ParameterizedTest
  @MethodSource("badBoards")
  void schema_badBoard_isRefusedWhereASchemaCanSee(BadBoard bad) throws IOException {
    boolean refused = !SCHEMA.validate(bad.text(), InputFormat.JSON).isEmpty();
    assertEquals(bad.schema(), refused);
  }

  private static JsonSchema schema() {
    try {
      return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
          .getSchema(Files.readString(BOARDS.resolve("board.schema.json")));
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
