package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import faultfinch.board.BoardReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WhyCommandTest {
  private static final String SORREL = "/faultfinch/boards/sorrel/";

  @TempDir Path folder;

  private static String done(String... args) {
    Played played = Played.of(args);
    assertEquals("", played.err());
    assertEquals(0, played.code());
    return played.out();
  }

  /**
   * The first byte of the program with bit 2 set is the FF of LDX #$FF at E004; without it FB. The
   * part that is asked at E004 is ROM 0.
   */
  @Test
  void keyColumnHoldsADataLine_why_tellsTheWholeChain() {
    assertEquals(
        """
        Tamarisk with U31.1Y3: drives low

        Where it begins
          At power-on (cycle 0, phase V-row) net D2 at U31.1Y3 is low (0.20 V) where a healthy \
        board has it floating (1.40 V). U1.D2, U2.D2, U3.D2 and 6 more pins read 0 instead of \
        1.

        On the processor's bus
          The first cycle that differs is 75640, at 55.010909 ms: the processor reads FB from \
        E004 where FF is right (bit 2 is wrong).
          The address asks U2 (ROM 0: boot); U31 (key columns) drives the lines as well.
          The instruction under way stands at M_STACK (E003).
          The last step reached is "stack": the stack is about to be placed.

        In the processor
          In cycle 75647, at 55.016000 ms, it first goes another way: from M_PORTS+2 (E008) to \
        M_PORTS+4 (E00A), where a healthy one goes to M_PORTS+5 (E00B).
          In the end an opcode that stops it has locked it up.

        Steps of the board's program
          The first not reached is "memory sizing": every page is about to be filled and compared.
          Nor are: stack good, second look, clear, video, page bits, timer, interrupts on, \
        chord, banner, prompt, first tick, first frame.

        What shows and sounds
          Display when the board should be ready: no picture. Healthy: 'Tamarisk      Marrow \
        Lane Works | 256 pages passed | #################################### | #' in red, \
        green, yellow, blue, magenta, cyan, white.
          Lamp: lit. Healthy: dark.
          Sound before any key: silent. Healthy: loud and clear long chord of 311 and 523 Hz.
        """,
        done("why", "--board", "tamarisk", "--fault", "U31.1Y3: drives low"));
  }

  /**
   * The display latches what its pins read: with D0 always 0, S (53) reads R (52), O (4F) N (4E), E
   * (45) D (44); R (52) and L (4C) stay.
   */
  @Test
  void displayContactOpen_why_tellsThatOnlyTheDisplayReadsAnotherBit() {
    assertEquals(
        """
        Sorrel with U9.D0: open contact

        Where it begins
          At power-on (cycle 0, phase C-row) net D0 at U9.D0 is floating (0.00 V) where a \
        healthy board has it high (3.80 V). U9.D0 reads 0 instead of 1.
          Wherever the two boards were held against each other, no other pin read another bit.

        On the processor's bus
          Every cycle is as on a healthy board: the same addresses, the same bytes.

        In the processor
          It runs the same instructions as on a healthy board.

        Steps of the board's program
          All are reached as on a healthy board.

        What shows and sounds
          Display when the board should be ready: reads 'RNRRDL'. Healthy: reads 'SORREL'.
        """,
        done("why", "--fault", "U9.D0: open contact"));
  }

  @Test
  void json_ofAChain_namesItsLinks() throws IOException {
    String out = done("why", "--fault", "U9.D0: open contact", "--json");
    JsonNode json = new ObjectMapper().readTree(out);
    assertEquals("U9.D0", json.get("misreads").get("pin").textValue());
    assertEquals("display", json.get("shows").get(0).get("feature").textValue());
    assertFalse(json.has("bus"));
    assertEquals("runs", json.get("end").textValue());
  }

  @Test
  void boardWithoutLabels_why_givesAddresses() throws IOException {
    String board = new String(sorrel("board.json"), StandardCharsets.UTF_8);
    int from = board.indexOf("\"milestones\"");
    int to = board.indexOf("],", from) + 2;
    String bare = board.substring(0, from) + board.substring(to);
    bare = bare.replace(", \"labels\": \"firmware/sorrel.lbl\"", "");
    Files.writeString(folder.resolve("board.json"), bare);
    Files.createDirectory(folder.resolve("firmware"));
    Files.write(folder.resolve("firmware/sorrel.bin"), sorrel("firmware/sorrel.bin"));
    Files.write(folder.resolve("routes.json"), sorrel("routes.json"));
    String file = folder.resolve("board.json").toString();
    String out = done("why", "--board", file, "--fault", "U2.D5: open pin");
    assertTrue(out.contains("The instruction under way stands at "), out);
    assertFalse(out.contains("M_") || out.contains("Steps of the board's program"), out);
  }

  private static byte[] sorrel(String name) throws IOException {
    try (InputStream in = BoardReader.class.getResourceAsStream(SORREL + name)) {
      return in.readAllBytes();
    }
  }

  @Test
  void nothingWrong_why_isRefusedInOneLine() {
    refused("--fault: found none", "why");
    refused("U9.DO", "why", "--fault", "U9.DO: open contact");
    refused("found 'now' where nothing more is expected", "why", "now");
  }

  private static void refused(String part, String... args) {
    Played played = Played.of(args);
    assertEquals(2, played.code());
    assertEquals("", played.out());
    assertEquals(1, played.err().lines().count(), played.err());
    assertTrue(played.err().contains(part), played.err());
  }
}
