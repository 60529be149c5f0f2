package faultfinch.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import faultfinch.format.Case;
import faultfinch.format.CaseReader;
import faultfinch.format.CaseWriter;
import faultfinch.machine.Setup;
import faultfinch.symptom.Symptoms;
import faultfinch.symptom.Watching;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What holds for every shipped case, checked by its existing. That each can be solved: see attempt.
 */
class EveryCaseTest {
  private static final Path FOLDER = Path.of("src/main/resources/faultfinch/library");

  static List<Integer> numbers() {
    return Library.labels().stream().map(Case.Label::number).toList();
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void file_readAndWritten_isTheSameText(int number) throws IOException {
    String text = Files.readString(FOLDER.resolve(Library.file(number)));
    Case job = CaseReader.read(Library.file(number), text.getBytes(StandardCharsets.UTF_8));
    assertEquals(text, CaseWriter.text(job));
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void file_heldAgainstTheSchema_isRight(int number) throws IOException {
    try (InputStream in = CaseReader.class.getResourceAsStream("case.schema.json")) {
      String schema = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(
          Set.of(),
          JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
              .getSchema(schema)
              .validate(Files.readString(FOLDER.resolve(Library.file(number))), InputFormat.JSON));
    }
  }

  @ParameterizedTest
  @MethodSource("numbers")
  void complaint_boardRun_isReproduced(int number) {
    Case job = Library.numbered(number).orElseThrow();
    Map<String, String> seen =
        Watching.of(Setup.healthy(job.board(), job.seed()).with(job.faults()))
            .symptoms()
            .features();
    assertFalse(job.shows().isEmpty());
    job.shows().forEach((what, feature) -> assertEquals(feature, seen.get(what), what));
  }

  /** A complaint that a healthy board would also give is none. */
  @ParameterizedTest
  @MethodSource("numbers")
  void complaint_healthyBoard_isNotShown(int number) {
    Case job = Library.numbered(number).orElseThrow();
    Map<String, String> healthy =
        Watching.of(Setup.healthy(job.board(), job.seed())).symptoms().features();
    assertTrue(
        job.shows().entrySet().stream()
            .anyMatch(e -> !e.getValue().equals(healthy.get(e.getKey()))));
    assertTrue(healthy.get(Symptoms.DISPLAY).contains(job.board().rightDisplay()));
  }
}
