package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever is typed wrong: one line that says what would be right, and exit code 2. */
class BadWordsTest {

  @TempDir Path folder;

  private static void refused(String says, String... args) {
    Played played = Played.of(args);
    assertEquals(1, played.err().lines().count(), played.err());
    assertTrue(played.err().startsWith("faultfinch: "), played.err());
    assertTrue(played.err().contains(says), played.err());
    assertFalse(played.err().contains("defect of the program"), played.err());
    assertEquals("", played.out());
    assertEquals(2, played.code());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "run --out U99| no part 'U99' on Sorrel; nearest: U",
        "run --out U8,U8| U8 is taken out twice",
        "run --fault| right would be --fault FAULT",
        "run --fault U9.D0:low| right would be",
        "run --seed x| right would be a whole number",
        "run --seed 1 --seed 2| given twice",
        "run --power-on -1| right would be a whole number from 0",
        "run --seconds 0.2| right would be at least 2",
        "run --seconds soon| right would be a number",
        "run --machine slow| right would be fast or plain",
        "run --frob| no option --frob; nearest: --",
        "run extra| found 'extra'",
        "run --board sorel| right would be sorrel",
        "list parts --board tamarisk+sold| no overlay 'sold' of tamarisk; right would be tamarisk+sol",
        "list parts --board sorrel+sold| no overlay 'sold' of sorrel; right would be sorrel",
        "run --board missing.json| missing.json:1:1: found no file",
        "run --pins U1.D0| --pins is given without --trace",
        "run --trace-at 1| --trace-at is given without --trace",
        "list| Right would be boards, parts, pins",
        "list fauls| nearest: faults",
        "list parts pins| found 'pins'",
        "list cases --part U1| --part does not go with 'list cases'",
        "list boards --part U1| --part does not go with 'list boards'",
        "list pins --part U99| no part 'U99'",
      })
  void words_thatDoNotFit_areRefused(String args, String says) {
    refused(says, args.split(" "));
  }

  @Test
  void faults_thatContradict_areRefusedTogether() {
    refused(
        "'U9.D0: reads low' and 'U9.D0: reads high' cannot both be",
        "run",
        "--fault",
        "U9.D0: reads low",
        "--fault",
        "U9.D0: reads high");
  }

  @Test
  void fault_inAPartThatIsOut_isRefused() {
    refused(
        "'U8: dead' is in U8, which --out takes out", "run", "--out", "U8", "--fault", "U8: dead");
  }

  @Test
  void fault_ofAnAbsentPin_isRefusedWithTheColumn() {
    refused("'U9.D9: reads low', column ", "run", "--fault", "U9.D9: reads low");
  }

  @Test
  void trace_ofUnknownPins_isRefused() {
    String file = folder.resolve("t.vcd").toString();
    refused("no pin 'D9' at U1; nearest: D", "run", "--trace", file, "--pins", "U1.D9");
    refused("no part 'U77'", "run", "--trace", file, "--pins", "U1.D0,U77.D0");
    refused("a part and a pin", "run", "--trace", file, "--pins", "D0");
    refused("U1.D0 is given twice", "run", "--trace", file, "--pins", "U1.D0,U1.D0");
    refused("found 0 pins", "run", "--trace", file);
    assertFalse(Files.exists(Path.of(file)));
  }

  @Test
  void file_thatCannotBe_isRefusedBeforeTheRun() throws IOException {
    refused("is a directory", "run", "--picture", folder.toString());
    refused("there is no directory", "run", "--sound", folder.resolve("no/s.wav").toString());
    String twice = folder.resolve("x").toString();
    refused("given for two files", "run", "--picture", twice, "--sound", twice);
    try (var left = Files.list(folder)) {
      assertEquals(0, left.count());
    }
  }

  @Test
  void boardFile_withAMistake_isPointedAt() throws IOException {
    Path file = folder.resolve("board.json");
    Files.writeString(file, "{\"format\": 1,\n \"nam\": \"x\"}\n");
    // The unknown key begins at the second character of line 2.
    refused("board.json:2:2: found unknown key 'nam'", "run", "--board", file.toString());
  }
}
