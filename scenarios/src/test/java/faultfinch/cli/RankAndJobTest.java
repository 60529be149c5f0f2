package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import faultfinch.board.BoardReader;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ranks and keeps jobs of the board whose dictionary is shipped. */
class RankAndJobTest {
  private static final Words WORDS = new Words();
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-02-03T09:30:00Z"), ZoneOffset.UTC);

  private static Known known;

  @TempDir Path folder;

  @BeforeAll
  static void read() {
    known =
        new Dictionaries(terminal(new StringWriter()), Path.of("none"))
            .of(BoardReader.shipped("sorrel"));
  }

  private static Terminal terminal(StringWriter out) {
    return new Terminal(
        new BufferedReader(new StringReader("")),
        new PrintWriter(out, true),
        new PrintWriter(out, true),
        arguments -> OptionalInt.empty(),
        WORDS);
  }

  private static String ask(Command command, String... args) {
    StringWriter out = new StringWriter();
    command.run(Given.of(command.options(), List.of(args), WORDS), terminal(out));
    return out.toString();
  }

  private static String rank(String... args) {
    return ask(
        new RankCommand((board, terminal) -> known, (board, terminal) -> Optional.of(known)), args);
  }

  private static String job(String... args) {
    return ask(new JobCommand((board, terminal) -> known, CLOCK), args);
  }

  private static JsonNode json(String text) throws IOException {
    return new ObjectMapper().readTree(text);
  }

  @Test
  void rank_ofAnEntryThatOneChipExplains_putsItsExchangeFirst() throws IOException {
    JsonNode json = json(rank("--saw", "display reads RNRRDL", "--json"));
    assertEquals("exchange U9", json.get("candidates").get(0).get("repair").textValue());
    assertEquals("U9", json.get("parts").get(0).get("part").textValue());
    assertEquals(1, json.get("weighed").size());
    assertEquals(0, json.get("notWeighed").size());
  }

  @Test
  void beliefs_ofAllRepairsAndOutsideAndCured_addUpToOne() throws IOException {
    JsonNode json =
        json(
            rank(
                "--saw",
                "display is dark",
                "--repaired",
                "exchange U9",
                "--saw",
                "display shows garbage",
                "--most",
                "10000",
                "--json"));
    double sum = json.get("outside").doubleValue() + json.get("cured").doubleValue();
    for (JsonNode row : json.get("candidates")) {
      sum += row.get("belief").doubleValue();
    }
    assertEquals(1, sum, 1e-9);
  }

  @Test
  void rank_afterARepairThatHelped_saysThatItIsCured() throws IOException {
    JsonNode json =
        json(
            rank(
                "--saw",
                "display reads RNRRDL",
                "--repaired",
                "exchanged U9",
                "--saw",
                "display is fine",
                "--saw",
                "it beeps normally",
                "--json"));
    assertTrue(json.get("cured").doubleValue() > 0.4, json.toString());
  }

  @Test
  void rank_ofTwoSignsThatNoFaultShares_findsPairsThatPredictBoth() throws IOException {
    String text = rank("--saw", "display reads RNRRDL", "--saw", "silent", "--pairs", "--json");
    JsonNode pairs = json(text.substring(text.indexOf('{'))).get("pairs");
    JsonNode best = pairs.get(0);
    assertEquals("predicted", best.get("finding").asText(), text);
    assertTrue(best.get("odds").asDouble() > 1, text);
    assertEquals(2, best.get("repairs").size(), text);
    for (int i = 1; i < pairs.size(); i++) {
      assertTrue(pairs.get(i - 1).get("odds").asDouble() >= pairs.get(i).get("odds").asDouble());
    }
  }

  @Test
  void rank_ofOneSign_findsNoPairsThatOneFaultDoesNotExplain() {
    String text = rank("--saw", "silent", "--pairs");
    assertTrue(text.contains("No two faults explain together"), text);
  }

  @Test
  void rank_ofWordsThatSayNothing_keepsThemAndSaysSo() {
    String text = rank("--saw", "smells burnt", "--saw", "display is dark");
    assertTrue(text.contains("Of 2 things said, 1 could be weighed."), text);
    assertTrue(text.contains("Not weighed: \"smells burnt\""), text);
  }

  @Test
  void job_keptInAFile_answersLikeTheSameEntriesTyped() throws IOException {
    String file = folder.resolve("a.job").toString();
    job("new", file, "--owner", "Mr Pell", "--complaint", "the display is dark");
    job("note", file, "U9 is cold");
    job("repaired", file, "exchange U9", "--part", "used display");
    job("note", file, "display shows garbage", "smells of rain");
    String typed =
        rank(
            "--told",
            "the display is dark",
            "--saw",
            "U9 is cold",
            "--repaired",
            "exchange U9",
            "--saw",
            "display shows garbage",
            "--saw",
            "smells of rain",
            "--json");
    assertEquals(json(typed), json(rank("--job", file, "--json")));
  }

  /** What a fault shows with a chip out is run when it is asked for, not when it is noted. */
  @Test
  void job_seenWithAPartOut_isRunSo_unlessSomebodyIsInAHurry() {
    String file = folder.resolve("out.job").toString();
    job("new", file);
    String noted = job("note", file, "with U8 out the display is blank");
    String unknown = "it is not known what faults show with U8 out";
    assertTrue(noted.contains(unknown), noted);
    String quick = job("show", file, "--quick");
    assertTrue(quick.contains(unknown), quick);
    String run = job("show", file);
    // Without U8 nothing starts, whatever else is wrong.
    assertTrue(run.contains("'screen' shows that with every fault of the list"), run);
    assertFalse(run.contains(unknown), run);
  }

  @Test
  void sheet_ofAJob_hasFindingsReadingsPartsAcceptanceAndCautions() {
    String file = folder.resolve("b.job").toString();
    job("new", file, "--owner", "Mr Pell", "--complaint", "the display is dark");
    job("note", file, "about 1.2 V on one data line");
    job("repaired", file, "exchange U4", "--part", "new 74LS138");
    job("accept", file, "all keys tried, soaked for an hour");
    job("caution", file, "the lid screw is worn");
    String sheet = job("sheet", file);
    for (String part :
        List.of(
            "# Job sheet: Sorrel",
            "Owner: Mr Pell",
            "- about 1.2 V on one data line",
            "chip at U4; fitted: new 74LS138",
            "- all keys tried, soaked for an hour",
            "- the lid screw is worn",
            "lead")) {
      assertTrue(sheet.contains(part), part + " in\n" + sheet);
    }
  }

  @Test
  void job_cutInTheMiddleOfALine_saysSoAndGoesOn() throws IOException {
    Path file = folder.resolve("c.job");
    job("new", file.toString());
    job("note", file.toString(), "display is dark");
    byte[] whole = Files.readAllBytes(file);
    Files.write(file, java.util.Arrays.copyOf(whole, whole.length - 10));
    String text = job("note", file.toString(), "display is dark");
    assertTrue(text.contains("only half written"), text);
    assertEquals(2, Files.readAllLines(file).size());
  }

  @Test
  void job_askedWrongly_isRefusedInOneLine() {
    String file = folder.resolve("d.job").toString();
    for (String[] args :
        new String[][] {
          {}, {"burn"}, {"note"}, {"new", file, "extra"}, {"note", file}, {"show", file}
        }) {
      RuntimeException refused = assertThrows(RuntimeException.class, () -> job(args));
      assertEquals(1, refused.getMessage().lines().count());
      assertTrue(
          refused.getMessage().toLowerCase(java.util.Locale.ROOT).contains("right would be")
              || refused.getMessage().contains("nothing more is expected"),
          refused.getMessage());
    }
  }
}
