package faultfinch.diagnosis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.board.BoardReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BuildJournalTest {
  private static final Origin SORREL =
      Origin.of(BoardReader.shipped("sorrel"), ShippedDictionaries.MODELS);
  private static final List<Departure> DARK =
      List.of(new Departure(new TreeMap<>(Map.of("screen", "dark")), true));

  @TempDir Path folder;

  @Test
  void in_fileThatAnotherBuildWrites_isRefusedAndLeftWhole() throws IOException {
    Path file = folder.resolve("a.journal");
    try (BuildJournal first = BuildJournal.in(file, SORREL)) {
      first.add("looks U1: dead", DARK);
      IOException refused =
          assertThrows(IOException.class, () -> BuildJournal.in(file, SORREL).close());
      assertTrue(refused.getMessage().contains("another build"), refused.getMessage());
      first.add("looks U2: dead", DARK);
    }
    try (BuildJournal again = BuildJournal.in(file, SORREL)) {
      assertEquals(2, again.size());
      assertEquals(Optional.of(DARK), again.find("looks U1: dead"));
    }
  }
}
