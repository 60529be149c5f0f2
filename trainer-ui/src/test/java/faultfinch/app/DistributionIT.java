package faultfinch.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Starts the packed program as its user would: another process, no screen, any directory. */
class DistributionIT {

  private static final Path SCRIPT =
      Path.of(System.getProperty("faultfinch.home"), "bin", "faultfinch");

  @TempDir Path elsewhere;

  private record Run(int exitCode, String out, String err) {}

  private Run start(Path script, String... args) throws IOException, InterruptedException {
    return type("", script, args);
  }

  private Run type(String typed, Path script, String... args)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(script.toString());
    command.addAll(List.of(args));
    Path in = Files.writeString(elsewhere.resolve("in"), typed);
    Path out = elsewhere.resolve("out");
    Path err = elsewhere.resolve("err");
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(elsewhere.toFile())
            .redirectInput(in.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    builder.environment().remove("DISPLAY");
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    Process process = builder.start();
    boolean ended = process.waitFor(120, TimeUnit.SECONDS);
    if (!ended) {
      process.destroyForcibly();
    }
    assertTrue(ended, "still running after 120 s");
    return new Run(
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  @Test
  void help_throughALinkFromAnotherDirectory_isPrinted() throws Exception {
    Path link = Files.createSymbolicLink(elsewhere.resolve("ff"), SCRIPT);
    Run run = start(link, "--help");
    Files.delete(link);
    assertEquals("", run.err());
    assertTrue(run.out().startsWith("usage: faultfinch"), run.out());
    assertEquals(0, run.exitCode());
  }

  @Test
  void unknownCommand_twoWordsInOneArgument_isQuotedWhole() throws Exception {
    Run run = start(SCRIPT, "two words");
    assertTrue(run.err().contains("'two words'"), run.err());
    assertEquals(1, run.err().lines().count(), run.err());
    assertEquals("", run.out());
    assertEquals(2, run.exitCode());
  }

  /** Sets of the language are walked in another order at each start: two subjects in one phrase. */
  @Test
  void sameWords_atEachStart_giveTheSameBytes() throws Exception {
    String[] words = {
      "rank",
      "--board",
      "tamarisk",
      "--json",
      "--saw",
      "lamp codes of the test ROM normal, three and one"
    };
    Run first = start(SCRIPT, words);
    assertEquals(0, first.exitCode());
    assertTrue(first.out().contains("\"parts\""), first.out());
    for (int again = 0; again < 4; again++) {
      assertEquals(first.out(), start(SCRIPT, words).out());
    }
  }

  @Test
  void window_withoutAScreen_saysSoInOneLineAndPlaysInTheTerminal() throws Exception {
    Run run = start(SCRIPT);
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(run.err().contains("DISPLAY"), run.err());
    assertTrue(run.out().contains("RNRRDL"), run.out());
    assertEquals(0, run.exitCode());
  }

  @Test
  void pins_ofAPart_areListed() throws Exception {
    Run run = start(SCRIPT, "list", "pins", "--part", "U4");
    assertEquals("", run.err());
    // The heading, and the 16 pins of a 74LS138.
    assertEquals(17, run.out().lines().count(), run.out());
    assertEquals(0, run.exitCode());
  }

  @Test
  void board_withAFault_showsItAndLeavesItsPicture() throws Exception {
    Run run =
        start(SCRIPT, "run", "--fault", "U9.D0: open contact", "--picture", "d.png", "--keys");
    assertEquals("", run.err());
    assertTrue(run.out().contains("reads 'RNRRDL'"), run.out());
    byte[] picture = Files.readAllBytes(elsewhere.resolve("d.png"));
    assertEquals("PNG", new String(picture, 1, 3, StandardCharsets.US_ASCII));
    assertEquals(0, run.exitCode());
  }

  @Test
  void fault_thatIsNone_isRefusedInOneLine() throws Exception {
    Run run = start(SCRIPT, "run", "--fault", "U9.D0: asleep", "--picture", "d.png");
    assertEquals(1, run.err().lines().count(), run.err());
    assertTrue(run.err().contains("'U9.D0: asleep', column 8: found 'asleep'"), run.err());
    assertFalse(Files.exists(elsewhere.resolve("d.png")));
    assertEquals(2, run.exitCode());
  }

  @Test
  void firstCase_typedThroughAPipe_isSolved() throws Exception {
    Run run =
        type(
            String.join(
                "\n",
                "bench supply",
                "power on",
                "screen",
                "bits",
                "probe U1.D0",
                "probe U9.D0",
                "power off",
                "wrist strap",
                "reseat U9",
                "power on",
                "screen",
                "decide U9 contact",
                "leave",
                ""),
            SCRIPT,
            "train",
            "--text",
            "1");
    assertEquals("", run.err());
    assertTrue(run.out().contains("SORREL"), run.out());
    assertFalse(run.out().contains("Not solved"), run.out());
    assertTrue(run.out().contains("Solved"), run.out());
    assertEquals(0, run.exitCode());
  }
}
