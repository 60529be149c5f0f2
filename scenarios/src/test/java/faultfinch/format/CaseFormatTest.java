package faultfinch.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import faultfinch.signal.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CaseFormatTest {

  /** Line 7 holds the fault, so that columns can be counted on paper. */
  private static final String RIGHT =
      """
      {
        "format": 1,
        "name": "mine",
        "title": "Mine",
        "board": "sorrel", "seed": 4, "minutes": 30,
        "faults": [
          "U9.D0: open contact"
        ],
        "complaint": "It reads wrong.",
        "shows": {"display": "reads 'RNRRDL'"},
        "tools": ["look", "reseat"],
        "coach": {"guided": false, "prices": true, "suspects": false, "marks": false},
        "goal": "Follow a bit.", "notes": "It was a contact."
      }
      """;

  private static Case read(String json) {
    return CaseReader.read("mine.json", json.getBytes(StandardCharsets.UTF_8));
  }

  private static BadInput refused(String json) {
    return assertThrows(BadInput.class, () -> read(json));
  }

  private static boolean refusedBySchema(String json) throws IOException {
    try (InputStream in = CaseReader.class.getResourceAsStream("case.schema.json")) {
      JsonSchema schema =
          JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
              .getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      return !schema.validate(json, InputFormat.JSON).isEmpty();
    }
  }

  @Test
  void case_right_holdsWhatWasWritten() throws IOException {
    Case job = read(RIGHT);
    assertEquals("mine", job.label().name());
    assertEquals(0, job.label().number());
    assertEquals("U9.D0: open contact", job.faults().get(0).text());
    assertEquals("U9.D0", job.faults().get(0).spot());
    assertEquals("reads 'RNRRDL'", job.shows().get("display"));
    assertEquals(java.util.List.of("look", "reseat"), job.tools().orElseThrow());
    assertEquals(false, refusedBySchema(RIGHT));
  }

  @Test
  void case_writtenAndReadAgain_isTheSameText() {
    String once = CaseWriter.text(read(RIGHT));
    assertEquals(once, CaseWriter.text(read(once)));
    assertTrue(once.contains("\"seed\": 4"), once);
  }

  /** Columns: the fault's quote stands in column 5, its first letter in column 6. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "U99.D0: open contact | 7 | 6 | U99",
        "U9.D9: open contact | 7 | 9 | D9",
        "U9.D0: opened | 7 | 13 | opened",
        "U4.A: open contact | 7 | 6 | soldered",
        "U9.D0 open contact | 7 | 6 | colon",
      })
  void fault_wrong_isRefusedAtItsPlace(String fault, int line, int column, String names) {
    BadInput bad = refused(RIGHT.replace("U9.D0: open contact", fault));
    assertEquals("mine.json", bad.file());
    assertEquals(line, bad.line(), bad.getMessage());
    assertEquals(column, bad.column(), bad.getMessage());
    assertTrue(bad.getMessage().contains(names), bad.getMessage());
    assertEquals(1, bad.getMessage().lines().count());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"name\": \"mine\" | \"nam\": \"mine\" | 3 | 3 | true",
        "\"name\": \"mine\" | \"name\": \"My own\" | 3 | 11 | true",
        "\"sorrel\" | \"sorel\" | 5 | 12 | false",
        "\"seed\": 4 | \"seed\": -4 | 5 | 30 | true",
        "\"minutes\": 30 | \"minutes\": 0 | 5 | 44 | true",
        "\"display\": | \"displai\": | 10 | 13 | true",
        "\"reseat\" | \"reseed\" | 11 | 21 | false",
        "\"guided\": false | \"guided\": true | 12 | 23 | true",
        "\"guided\": false | \"guided\": 1 | 12 | 23 | true",
        "\"complaint\": \"It reads wrong.\" | \"complaint\": \" \" | 9 | 16 | true",
        "\"goal\": \"Follow a bit.\", | \"goal\": \"Follow a bit.\", \"gaol\": 1, | 13 | 28 | true",
      })
  void field_wrong_isRefusedAtItsPlaceAndBySchemaWhereItCanSee(
      String right, String wrong, int line, int column, boolean schema) throws IOException {
    String json = RIGHT.replace(right, wrong);
    BadInput bad = refused(json);
    assertEquals(line, bad.line(), bad.getMessage());
    assertEquals(column, bad.column(), bad.getMessage());
    assertEquals(schema, refusedBySchema(json));
  }

  @Test
  void faults_thatContradict_areRefusedAtTheSecond() {
    BadInput bad =
        refused(
            RIGHT.replace(
                "\"U9.D0: open contact\"", "\"U9.D0: reads low\", \"U9.D0: reads high\""));
    assertEquals(7, bad.line());
    assertEquals(25, bad.column(), bad.getMessage());
  }

  @Test
  void file_cutShort_isRefusedInOneLine() {
    BadInput bad = refused(RIGHT.substring(0, 60));
    assertEquals(1, bad.getMessage().lines().count());
    assertTrue(bad.getMessage().startsWith("mine.json:"), bad.getMessage());
  }

  @Test
  void guide_withAnActThatIsNone_isRefusedThere() {
    String json =
        RIGHT
            .replace("\"guided\": false", "\"guided\": true")
            .replace(
                "  \"goal\"",
                "  \"guide\": [{\"says\": \"Look.\", \"done\": [\"stare at it\"]}],\n  \"goal\"");
    BadInput bad = refused(json);
    assertEquals(13, bad.line(), bad.getMessage());
    // Column: 2 blanks, then  "guide": [{"says": "Look.", "done": [  is 39 characters long.
    assertEquals(40, bad.column(), bad.getMessage());
  }
}
