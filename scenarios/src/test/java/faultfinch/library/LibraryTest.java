package faultfinch.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.format.Case;
import faultfinch.signal.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LibraryTest {
  private static final Path FOLDER = Path.of("src/main/resources/faultfinch/library");

  @Test
  void labels_ofTheFolder_areAllItsFilesInOrder() throws IOException {
    List<Case.Label> labels = Library.labels();
    try (Stream<Path> files = Files.list(FOLDER)) {
      assertEquals(
          IntStream.rangeClosed(1, labels.size()).mapToObj(Library::file).toList(),
          files.map(f -> f.getFileName().toString()).sorted().toList());
    }
    for (int i = 0; i < labels.size(); i++) {
      assertEquals(i + 1, labels.get(i).number());
    }
    assertEquals(
        labels.size(), new HashSet<>(labels.stream().map(Case.Label::name).toList()).size());
  }

  @Test
  void find_byNumberAndByName_isTheSameCase() {
    String name = Library.labels().get(1).name();
    assertEquals(name, Library.find("2").label().name());
    assertEquals(2, Library.find(name).label().number());
  }

  @Test
  void find_misspelt_namesTheNearestInOneLine() {
    BadInput bad = assertThrows(BadInput.class, () -> Library.find("wrong-leters"));
    assertTrue(bad.getMessage().contains("wrong-letters"), bad.getMessage());
    assertEquals(1, bad.getMessage().lines().count());
  }
}
