package faultfinch.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
    List<String> command = new ArrayList<>();
    command.add(script.toString());
    command.addAll(List.of(args));
    Path out = elsewhere.resolve("out");
    Path err = elsewhere.resolve("err");
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(elsewhere.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    builder.environment().remove("DISPLAY");
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    Process process = builder.start();
    assertTrue(process.waitFor(60, TimeUnit.SECONDS), "still running after 60 s");
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
    assertEquals(2, run.exitCode());
  }

  @Test
  void window_withoutAScreen_isRefusedInOneLine() throws Exception {
    Run run = start(SCRIPT);
    assertEquals(1, run.err().lines().count(), run.err());
    assertEquals(1, run.exitCode());
  }
}
