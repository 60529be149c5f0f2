package faultfinch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A record that the table does not list is found by nobody. */
class DecisionsTest {
  private static final Path DOCS = Path.of("docs");

  @Test
  void everyRecord_isListedInTheTable() throws IOException {
    String table = Files.readString(DOCS.resolve("README.md"));
    try (Stream<Path> records = Files.list(DOCS.resolve("decisions"))) {
      List<String> names = records.map(r -> r.getFileName().toString()).sorted().toList();
      assertFalse(names.isEmpty());
      assertEquals(
          List.of(),
          names.stream().filter(n -> !table.contains("](decisions/" + n + ")")).toList());
    }
  }
}
