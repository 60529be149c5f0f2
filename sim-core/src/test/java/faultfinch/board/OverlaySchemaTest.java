package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas of overlays say of the shipped ones what the reader says. */
class OverlaySchemaTest {
  private static final Path BOARDS = Path.of("src/main/resources/faultfinch/boards");
  private static final Path OVERLAYS = BOARDS.resolve("tamarisk/overlays");

  private static JsonSchema schema(String name) {
    return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
        .getSchema(SchemaLocation.of(BOARDS.resolve(name).toUri().toString()));
  }

  @Test
  void schema_shippedOverlays_areRight() throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.list(OVERLAYS)) {
      files = all.filter(p -> p.toString().endsWith(".json")).toList();
    }
    assertFalse(files.isEmpty());
    for (Path file : files) {
      boolean list = file.endsWith("overlays.json");
      JsonSchema schema = schema(list ? "overlays.schema.json" : "overlay.schema.json");
      assertEquals(
          Set.of(), schema.validate(Files.readString(file), InputFormat.JSON), file.toString());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"format\": 1, \"name\": \"x\", \"title\": \"X\", \"about\": \"x\"}",
        "{\"format\": 2, \"name\": \"x\", \"title\": \"X\", \"about\": \"x\", \"ticks\": {}}",
        "{\"format\": 1, \"name\": \"X\", \"title\": \"X\", \"about\": \"x\", \"ticks\": {}}",
        "{\"format\": 1, \"name\": \"x\", \"title\": \"X\", \"about\": \"x\", \"ticks\": {},"
            + " \"fits\": {\"U1\": {\"socket\": false}}}",
        "{\"format\": 1, \"name\": \"x\", \"title\": \"X\", \"about\": \"x\", \"ticks\": {},"
            + " \"joins\": {\"GND\": \"U1.VSS1 U2.GND\"}}",
        "{\"format\": 1, \"name\": \"x\", \"title\": \"X\", \"about\": \"x\", \"ticks\": {},"
            + " \"parts\": [{\"ref\": \"U50\"}]}"
      })
  void schema_badOverlay_isRefused(String overlay) {
    assertFalse(schema("overlay.schema.json").validate(overlay, InputFormat.JSON).isEmpty());
  }
}
