package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.bench.BenchRom;
import faultfinch.diagnosis.Observation;
import faultfinch.signal.BadInput;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobFileTest {
  private static final String AT = "2026-01-05T10:00";
  private static final Entry COLD =
      new Entry(
          "display d\u00e4rk", // two bytes in the middle of a line can be parted too
          Entry.Who.OWNER,
          Observation.Doubt.FAIRLY,
          Optional.of(
              new Conditions(
                  List.of("U8"),
                  Optional.of(new BigDecimal("4.75")),
                  Observation.Climate.COLD,
                  Optional.of(BenchRom.WITH_LEADS),
                  List.of("on the bench supply"))),
          Optional.empty());

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void write() {
    file = folder.resolve("radio-club.job");
    JobFile.begin(file, "sorrel", Map.of("owner", "Mrs Thrale", "complaint", "blank"), AT);
    JobFile.note(file, COLD, List.of("exchange U9 40 %"), AT);
    JobFile.repaired(file, "exchange U9", List.of("used display"), AT);
    JobFile.add(file, JobFile.Kind.ACCEPT, "all keys tried", AT);
  }

  @Test
  void job_readAgain_holdsWhatWasNoted() {
    JobFile job = JobFile.read(file);
    assertEquals("sorrel", job.board());
    assertEquals("Mrs Thrale", job.intake().get("owner"));
    assertEquals(3, job.items().size());
    Entry read = ((EntryFile.Line.Noted) job.lines().get(0)).entry();
    assertEquals(COLD.says(), read.says());
    assertEquals(COLD.who(), read.who());
    assertEquals(COLD.doubt(), read.doubt());
    assertEquals(COLD.when(), read.when());
    assertEquals("exchange U9", ((EntryFile.Line.Repaired) job.lines().get(1)).words().text());
    assertEquals(Optional.empty(), job.cut());
  }

  @Test
  void job_cutAtAnyByte_reopensWithAllWholeLinesAndGoesOn() throws IOException {
    byte[] whole = Files.readAllBytes(file);
    int firstLine = 0;
    while (whole[firstLine] != '\n') {
      firstLine++;
    }
    for (int length = 0; length <= whole.length; length++) {
      Files.write(file, Arrays.copyOf(whole, length));
      int ends = 0;
      for (int i = 0; i < length; i++) {
        ends += whole[i] == '\n' ? 1 : 0;
      }
      // A line that is all there counts although its line end is not.
      boolean allButEnd = length < whole.length && whole[length] == '\n';
      int lines = ends + (allButEnd ? 1 : 0);
      if (length < firstLine) {
        BadInput nothing = assertThrows(BadInput.class, () -> JobFile.read(file));
        assertTrue(nothing.getMessage().contains("'job new' begins one"), nothing.getMessage());
        JobFile.begin(file, "sorrel", Map.of(), AT);
        assertEquals(List.of(), JobFile.read(file).items());
        continue;
      }
      JobFile job = JobFile.read(file);
      assertEquals(lines - 1, job.items().size(), "at byte " + length);
      boolean half = !allButEnd && length > 0 && whole[length - 1] != '\n';
      assertEquals(half, job.cut().isPresent(), "at byte " + length);
      JobFile.add(file, JobFile.Kind.CAUTION, "mind the lid", AT);
      JobFile on = JobFile.read(file);
      assertEquals(lines, on.items().size(), "at byte " + length);
      assertEquals("mind the lid", on.items().get(lines - 1).text());
      assertEquals(Optional.empty(), on.cut());
    }
  }

  @Test
  void line_changedLostOrMoved_isPointedAt() throws IOException {
    List<String> lines = Files.readAllLines(file);
    String changed = lines.get(1).replace("rk", "rm");
    assertWrong("2:1: found a line that does not agree", lines.get(0), changed, lines.get(2));
    assertWrong("2:1: found a line that does not follow", lines.get(0), lines.get(2));
    assertWrong("2:1: found a line that does not follow", lines.get(0), lines.get(2), lines.get(1));
    assertWrong("1:1: found a line that does not follow", lines.get(1), lines.get(2));
  }

  private void assertWrong(String says, String... lines) throws IOException {
    Files.write(file, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
    BadInput bad = assertThrows(BadInput.class, () -> JobFile.read(file));
    assertTrue(bad.getMessage().contains(says), bad.getMessage());
    assertEquals(1, bad.getMessage().lines().count());
  }

  @Test
  void begin_overAJob_isRefused() {
    BadInput bad = assertThrows(BadInput.class, () -> JobFile.begin(file, "sorrel", Map.of(), AT));
    assertTrue(bad.getMessage().contains("right would be a new name"), bad.getMessage());
    assertEquals(3, JobFile.read(file).items().size());
  }
}
