package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** That the firmware in the tree is what its source builds, byte for byte. */
class FirmwareImageTest {
  private static final Path BOARDS = Path.of("src/main/resources/faultfinch/boards");

  @TempDir Path built;

  @Test
  void sorrelFirmware_builtAgain_isTheImageInTheTree() throws Exception {
    assertBuiltFromSource("sorrel/firmware", List.of("sorrel.bin", "sorrel.lbl"));
  }

  @Test
  void tamariskFirmware_builtAgain_isTheImagesInTheTree() throws Exception {
    assertBuiltFromSource(
        "tamarisk/firmware",
        List.of(
            "rom0.bin",
            "rom0.lbl",
            "rom1.bin",
            "rom1.lbl",
            "bench.bin",
            "bench.lbl",
            "glyphs.bin"));
  }

  private void assertBuiltFromSource(String folder, List<String> files) throws Exception {
    requireAssembler();
    Path firmware = BOARDS.resolve(folder);
    Path log = built.resolve("log");
    Process build =
        new ProcessBuilder("sh", firmware.resolve("build.sh").toString(), built.toString())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    assertTrue(build.waitFor(60, TimeUnit.SECONDS), "build.sh takes longer than a minute");
    assertEquals(0, build.exitValue(), () -> text(log));
    for (String file : files) {
      assertArrayEquals(
          Files.readAllBytes(firmware.resolve(file)),
          Files.readAllBytes(built.resolve(file)),
          file + " differs from what its source builds: run firmware/build.sh");
    }
  }

  /** On a build server a missing assembler must not pass for a proof. */
  private static void requireAssembler() {
    boolean found = onPath("ca65") && onPath("ld65");
    String missing = "no ca65 and ld65 on the PATH (Debian package cc65): images not rebuilt";
    if (System.getenv("CI") != null) {
      assertTrue(found, missing);
    }
    assumeTrue(found, missing);
  }

  private static boolean onPath(String program) {
    String path = System.getenv().getOrDefault("PATH", "");
    return Arrays.stream(path.split(File.pathSeparator))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      return e.toString();
    }
  }
}
