package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import faultfinch.diagnosis.Observation;
import faultfinch.format.CaseReader;
import faultfinch.signal.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EntryFileTest {
  private static final String WHOLE =
      """
      {"format": 1, "board": "sorrel", "entries": [
        {"says": "garbage, still", "who": "owner", "sure": "fairly"},
        {"look": "probe U9.D0", "shows": "no light", "who": "instrument",
         "when": {"out": ["U8"], "volts": 4.75, "climate": "cold"}},
        {"repaired": "exchange U9"},
        {"says": "boots", "times": [1, 5], "when": {}}
      ]}
      """;

  private static EntryFile read(String json) {
    return EntryFile.read("e.json", json.getBytes(StandardCharsets.UTF_8));
  }

  private static JsonSchema schema() throws IOException {
    try (InputStream in = CaseReader.class.getResourceAsStream("entries.schema.json")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(text);
    }
  }

  @Test
  void file_withEverything_isReadInOrder() throws IOException {
    EntryFile file = read(WHOLE);
    assertTrue(schema().validate(WHOLE, InputFormat.JSON).isEmpty());
    assertEquals("sorrel", file.board());
    assertEquals(4, file.lines().size());
    Entry told = ((EntryFile.Line.Noted) file.lines().get(0)).entry();
    assertEquals(Entry.Who.OWNER, told.who());
    assertEquals(Observation.Doubt.FAIRLY, told.doubt());
    Entry probe = ((EntryFile.Line.Noted) file.lines().get(1)).entry();
    assertEquals("probe U9.D0: no light", probe.says());
    assertEquals(List.of("U8"), probe.when().orElseThrow().out());
    assertEquals("e.json:3:3", probe.where().orElseThrow());
    assertEquals("boots 1 of 5 times", ((EntryFile.Line.Noted) file.lines().get(3)).entry().says());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"say\": \"dark\"}                                  | 1:47: found unknown key 'say'",
        "{\"says\": \"\"}                                     | 1:55: found ''",
        "{\"says\": \"dark\", \"who\": \"me\"}                | 1:70: found 'me', right would be own eyes, instrument or owner",
        "{\"says\": \"dark\", \"times\": [3, 2]}              | 1:73: found 3, right would be a whole number from 0 to 2",
        "{\"look\": \"screen\"}                               | without 'shows'",
        "{\"says\": \"dark\", \"when\": {\"volts\": \"low\"}} | right would be a number from 0 to 30",
      })
  void mistake_inAFile_isPointedAtAndAgainstTheSchema(String entry, String says)
      throws IOException {
    // The entry begins in column 46.
    String json = "{\"format\": 1, \"board\": \"sorrel\", \"entries\": [" + entry.strip() + "]}";
    BadInput bad = assertThrows(BadInput.class, () -> read(json));
    assertTrue(bad.getMessage().contains(says), bad.getMessage());
    boolean schemaKnows = !entry.contains("[3, 2]");
    assertEquals(schemaKnows, !schema().validate(json, InputFormat.JSON).isEmpty());
    assertFalse(bad.getMessage().contains("\n"));
  }
}
