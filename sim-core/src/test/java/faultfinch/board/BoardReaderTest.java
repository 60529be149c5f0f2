package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import faultfinch.signal.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** That whatever is wrong with a description is said with its place. */
class BoardReaderTest {

  @TempDir Path folder;

  static List<BadBoard> badBoards() {
    return BadBoard.all();
  }

  @BeforeEach
  void copyFirmware() throws IOException {
    Files.createDirectory(folder.resolve("firmware"));
    for (String file : List.of("firmware/sorrel.bin", "firmware/sorrel.lbl")) {
      Files.copy(BadBoard.SORREL.resolve(file), folder.resolve(file));
    }
  }

  @ParameterizedTest
  @MethodSource("badBoards")
  void read_badBoard_saysWhereWhatAndWhatWouldBeRight(BadBoard bad) throws IOException {
    Path file = Files.writeString(folder.resolve("board.json"), bad.text());
    assertEquals(
        file + ":" + bad.place() + ": found " + bad.found() + ", right would be " + bad.right(),
        messageOf(file));
  }

  @Test
  void read_unchangedCopy_isSorrel() throws IOException {
    Path file = folder.resolve("board.json");
    Files.copy(BadBoard.SORREL.resolve("board.json"), file);
    assertEquals(BoardReader.shipped("sorrel").nets(), BoardReader.read(file).nets());
  }

  @Test
  void read_nestedBranches_eachLeavesFromThePadBeforeItsBracket() throws IOException {
    // U2 has a branch U9, which has a branch U3; after both the line goes on from U2.
    String text =
        Files.readString(BadBoard.SORREL.resolve("board.json"))
            .replace("U2.D0 (U9.D0) U3.D0 U8.D0", "U2.D0 (U9.D0 (U3.D0)) U8.D0");
    Path file = Files.writeString(folder.resolve("board.json"), text);
    assertEquals(
        List.of("U1.D0-U2.D0", "U2.D0-U9.D0", "U9.D0-U3.D0", "U2.D0-U8.D0", "U8.D0-U10.1Y1"),
        BoardReader.read(file).net("D0").orElseThrow().segments().stream()
            .map(Net.Segment::text)
            .toList());
  }

  @Test
  void read_pinsOnNoNet_namesThemWhereThePartStands() throws IOException {
    String text =
        Files.readString(BadBoard.SORREL.resolve("board.json"))
            .replace("U1.A11 U2.A11", "U1.A11")
            .replace("U1.A12 U2.A12", "U1.A12");
    Path file = Files.writeString(folder.resolve("board.json"), text);
    assertEquals(
        file
            + ":43:5: found U2.A11 U2.A12 on no net,"
            + " right would be every pin on a net or under 'unconnected'",
        messageOf(file));
  }

  @Test
  void read_noSuchFile_saysSo() {
    Path file = folder.resolve("bord.json");
    assertEquals(file + ":1:1: found no file, right would be a board file", messageOf(file));
  }

  @Test
  void read_folder_saysSo() {
    assertEquals(
        folder + ":1:1: found a folder or damaged file, right would be a board file",
        messageOf(folder));
  }

  @Test
  void read_emptyFile_saysSo() throws IOException {
    Path file = Files.writeString(folder.resolve("board.json"), " \n");
    assertEquals(file + ":1:1: found an empty file, right would be a JSON object", messageOf(file));
  }

  @Test
  void read_listForABoard_saysSo() throws IOException {
    Path file = Files.writeString(folder.resolve("board.json"), "\n [1]");
    assertEquals(file + ":2:2: found a list of 1, right would be an object", messageOf(file));
  }

  @Test
  void read_labelLineWithoutAddress_namesTheLabelFileAndTheLine() throws IOException {
    String address =
        "an address in four hexadecimal digits, a blank, a name, for example E234 M_READY";
    assertEquals(":2:1: found 'M_PORTS', right would be " + address, labels("E000 a\nM_PORTS\n"));
    assertEquals(":1:1: found 'E00 a', right would be " + address, labels("E00 a\n"));
    assertEquals(":2:1: found an empty line, right would be " + address, labels("E000 a\n\nE1 b"));
  }

  @Test
  void read_labelTwice_pointsAtTheSecond() throws IOException {
    assertEquals(
        ":3:6: found label 'a' again, right would be each label once",
        labels("E000 a\nE000 b\nE001 a\n"));
  }

  /** The message about Sorrel with these labels, from behind the file's name. */
  private String labels(String text) throws IOException {
    Files.copy(BadBoard.SORREL.resolve("board.json"), folder.resolve("board.json"));
    Path labels = Files.writeString(folder.resolve("firmware/sorrel.lbl"), text);
    String message = messageOf(folder.resolve("board.json"));
    Files.delete(folder.resolve("board.json"));
    assertEquals(labels.toString(), message.substring(0, labels.toString().length()));
    return message.substring(labels.toString().length());
  }

  private static String messageOf(Path file) {
    return assertThrows(BadInput.class, () -> BoardReader.read(file)).getMessage();
  }
}
