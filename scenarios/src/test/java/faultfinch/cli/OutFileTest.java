package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutFileTest {
  private static final Words WORDS = new Words();

  @TempDir Path folder;

  @Test
  void file_written_takesThePlaceOfTheOldOneWhole() throws IOException {
    Path path = folder.resolve("a");
    Files.write(path, new byte[100]);
    OutFile.at(path.toString(), WORDS).write(new byte[] {1, 2, 3});
    assertArrayEquals(new byte[] {1, 2, 3}, Files.readAllBytes(path));
  }

  @Test
  void file_thatCannotBeFinished_leavesTheOldOneAlone() throws IOException {
    Path path = folder.resolve("a");
    Files.write(path, new byte[] {9});
    OutFile file = OutFile.at(path.toString(), WORDS);
    Path unfinished = Files.write(folder.resolve("a.part"), new byte[] {8}); // of another run
    Misuse misuse = assertThrows(Misuse.class, () -> file.write(new byte[] {1}));
    assertEquals(1, misuse.getMessage().lines().count());
    assertArrayEquals(new byte[] {9}, Files.readAllBytes(path));
    assertArrayEquals(new byte[] {8}, Files.readAllBytes(unfinished));
  }

  @Test
  void link_written_changesTheFileItLeadsTo() throws IOException {
    Path path = folder.resolve("a");
    Files.write(path, new byte[] {9});
    Path link = Files.createSymbolicLink(folder.resolve("l"), path);
    OutFile.at(link.toString(), WORDS).write(new byte[] {1});
    assertTrue(Files.isSymbolicLink(link));
    assertArrayEquals(new byte[] {1}, Files.readAllBytes(path));
  }
}
