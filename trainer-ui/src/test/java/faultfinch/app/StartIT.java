package faultfinch.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a command loads before it answers, counted and not timed: a start is slow by what is loaded
 * and linked. The limits are a tenth above what is loaded now; whoever has a reason raises them.
 */
class StartIT {
  private static final Path SCRIPT =
      Path.of(System.getProperty("faultfinch.home"), "bin", "faultfinch");

  @TempDir Path folder;

  /** Names of the classes, lambdas included. */
  private List<String> loaded(String... args) throws IOException, InterruptedException {
    Path log = folder.resolve("classes");
    List<String> command = new ArrayList<>(List.of(SCRIPT.toString()));
    command.addAll(List.of(args));
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD);
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().put("JAVA_TOOL_OPTIONS", "-Xlog:class+load:file=" + log + ":none");
    Process process = builder.start();
    boolean ended = process.waitFor(120, TimeUnit.SECONDS);
    if (!ended) {
      process.destroyForcibly();
    }
    assertTrue(ended, "still running after 120 s");
    assertEquals(0, process.exitValue());
    return Files.readAllLines(log).stream().map(line -> line.split(" ")[0]).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "--help, 25",
    "list parts --board tamarisk, 210",
    "list boards, 245",
    "rank --board tamarisk --saw garbage, 645",
    "next --board tamarisk, 540"
  })
  void command_loadsFewClassesOfOurs(String args, int most) throws Exception {
    long ours = loaded(args.split(" ")).stream().filter(c -> c.startsWith("faultfinch.")).count();
    assertTrue(ours > 0 && ours <= most, ours + " loaded");
  }

  @Test
  void rank_ofAShippedBoard_readsNoTracksAndDigestsNothing() throws Exception {
    List<String> loaded = loaded("rank", "--board", "tamarisk", "--saw", "garbage");
    assertTrue(loaded.contains("faultfinch.diagnosis.Belief"), "nothing was ranked");
    assertEquals(
        List.of(),
        loaded.stream()
            .filter(
                c ->
                    c.equals("faultfinch.board.RouteFile")
                        || c.equals("faultfinch.board.TrackNeighbours")
                        || c.equals("java.security.MessageDigest"))
            .toList());
  }
}
