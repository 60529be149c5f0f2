package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Asks about a board of which three faults are known. */
class WeighAndNextTest {
  private static final Words WORDS = new Words();

  private static Known known;

  @BeforeAll
  static void build() {
    known = SmallDictionary.of(BoardReader.shipped("sorrel"));
  }

  private static Played ask(Command command, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Terminal terminal =
        new Terminal(
            new BufferedReader(new StringReader("")),
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            arguments -> OptionalInt.empty(),
            WORDS);
    int code = command.run(Given.of(command.options(), List.of(args), WORDS), terminal);
    return new Played(code, out.toString(), err.toString());
  }

  private static Played weigh(String... args) {
    return ask(new WeighCommand((board, terminal) -> known), args);
  }

  private static Played next(String... args) {
    return ask(new NextCommand((board, terminal) -> known), args);
  }

  @Test
  void suspect_thatPredictsAllSeen_isFoundSo() {
    Played played = weigh("--suspect", "U9.D0: open contact", "--saw", "screen: reads 'RNRRDL'");
    assertEquals(0, played.code());
    assertTrue(
        played.out().startsWith("U9.D0: open contact predicts all that was seen (fit 1"),
        played.out());
  }

  @Test
  void suspect_againstWhatWasSeen_isContradictedWithExpectedBesideSeen() {
    // A display that reads something at all has a board with a clock behind it.
    Played played =
        weigh(
            "--suspect",
            "X1: dead",
            "--saw",
            "screen: reads 'RNRRDL'",
            "--saw",
            "listen: short 880 Hz, short 1319 Hz");
    assertEquals(1, played.code(), played.out());
    assertTrue(played.out().contains("X1: dead is contradicted"), played.out());
    assertTrue(
        played.out().contains("it would show 'silent'") || played.out().contains("'dark"),
        played.out());
    assertTrue(played.out().contains("seen was '"), played.out());
  }

  @Test
  void verdict_asJson_hasStableKeys() throws IOException {
    JsonNode json =
        new ObjectMapper()
            .readTree(
                weigh("--suspect", "X1: dead", "--saw", "screen: reads 'RNRRDL'", "--json").out());
    assertEquals("X1: dead", json.get("suspect").textValue());
    assertEquals("screen", json.get("mismatches").get(0).get("look").textValue());
    assertEquals("reads 'RNRRDL'", json.get("mismatches").get(0).get("seen").textValue());
  }

  @Test
  void twoSuspects_together_areRunTogether() {
    Played played =
        weigh(
            "--suspect",
            "U9.D0: open contact",
            "--suspect",
            "R2: open",
            "--saw",
            "screen: reads 'RNRRDL'",
            "--saw",
            "listen: silent");
    assertEquals(0, played.code(), played.out());
    assertTrue(played.out().contains("U9.D0: open contact and R2: open predicts"), played.out());
  }

  @Test
  void next_withNothingSeen_proposesALookThatParts() throws IOException {
    JsonNode json = new ObjectMapper().readTree(next("--json").out());
    assertEquals(3, json.get("groups").intValue());
    JsonNode first = json.get("next").get(0);
    assertEquals("look", first.get("kind").textValue());
    double chances = 0;
    for (JsonNode outcome : first.get("outcomes")) {
      chances += outcome.get("chance").doubleValue();
    }
    assertEquals(1, chances, 1e-9);
    String text = next().out();
    assertTrue(text.contains("1. look: " + first.get("step").textValue()), text);
  }

  @Test
  void next_tellsTheBoundTheGapAndWhatTheOwnerMayExpect() throws IOException {
    // Three faults on three parts are worked out exactly: then no way can cost less.
    JsonNode json = new ObjectMapper().readTree(next("--json").out());
    assertEquals(
        json.get("expectedPrice").doubleValue(), json.get("lowerBound").doubleValue(), 1e-9);
    assertEquals(0, json.get("gap").doubleValue(), 1e-9);
    assertEquals("exact", json.get("method").textValue());
    // Looks tell the three apart, so that no chip is taken out in vain.
    assertEquals(0, json.get("innocentChips").doubleValue(), 1e-9);
    JsonNode owner = json.get("owner");
    int half = owner.get("halfWithinMinutes").intValue();
    assertTrue(half > 0 && half <= owner.get("oneInEightOverMinutes").intValue());
    // None of them asks for the exchange of a custom part.
    assertEquals(0, owner.get("customPart").doubleValue(), 1e-9);
    // A bad contact goes with a reseat half of the time, and nothing tells beforehand.
    JsonNode order = json.get("notParted").get(0).get("order");
    assertEquals(1, json.get("notParted").size());
    assertEquals("reseat U9", order.get(0).get("repair").textValue());
    assertEquals(0.5, order.get(0).get("chance").doubleValue(), 1e-9);
    assertEquals("fit a new socket at U9", order.get(1).get("repair").textValue());
    String text = next().out();
    assertTrue(text.contains("No way to go on costs less."), text);
    assertTrue(text.contains("half of such jobs take up to " + half + " min"), text);
    assertTrue(text.contains("and 0 of a hundred need a custom part"), text);
  }

  @Test
  void next_whenOneIsLeft_proposesItsRepair() {
    String text = next("--saw", "screen: reads 'RNRRDL'", "--most", "1").out();
    assertTrue(text.contains("U9"), text);
    assertTrue(text.lines().noneMatch(l -> l.contains("{")), text);
  }

  /** The set shows what U9's contact does, but no fault of the three draws so little. */
  @Test
  void next_whenItIsNoneOfTheList_saysWhatIsCloseToWhatFits() throws IOException {
    List<String> lost = List.of("--saw", "screen: reads 'RNRRDL'", "--saw", "current 500 mA");
    String text = next(lost.toArray(String[]::new)).out();
    String order = "by chance for price: reseat U9 16 %, fit a new socket at U9 49 %";
    assertTrue(text.replace('\n', ' ').contains(order), text);
    List<String> asJson = new ArrayList<>(lost);
    asJson.add("--json");
    JsonNode json = new ObjectMapper().readTree(next(asJson.toArray(String[]::new)).out());
    assertTrue(json.get("outside").doubleValue() > 0.5);
    assertEquals("reseat U9", json.get("nearby").get(0).get("repair").textValue());
    JsonNode usual = new ObjectMapper().readTree(next("--json").out());
    assertEquals(0, usual.get("nearby").size());
  }

  @Test
  void entry_thatCannotBeWeighed_isKeptWithTheReasonAndTheNearest() {
    assertKept("no look, place and outcome", "--saw", "smells of fish");
    assertKept("'probe U9.D0 at the pin' cannot show that", "--saw", "probe U9.D0: stare");
    assertKept("there is no look of the kind 'finger' there", "--saw", "R1 hot");
    assertKept("noted before", "--saw", "screen: dark", "--told", "screen: reads 'SORREL'");
    assertKept("with U8 out", "--saw", "with U8 out the display is blank");
    assertKept("could not say", "--saw", "looked at U9 with the probe, could not say");
  }

  private static void assertKept(String says, String... args) {
    String text = next(args).out();
    assertTrue(text.lines().anyMatch(l -> l.startsWith("Not weighed: ") && l.contains(says)), text);
  }

  @Test
  void repair_thatIsNoneOfTheBoards_isRefusedWithTheNearest() {
    Misuse misuse = assertThrows(Misuse.class, () -> next("--repaired", "exchange U99"));
    assertTrue(misuse.getMessage().contains("nearest: exchange U"), misuse.getMessage());
    assertEquals(1, misuse.getMessage().lines().count());
  }

  @Test
  void repair_betweenTwoLooks_makesEachCountForItsTime() {
    // The fault that the exchange cures predicts the display before it and the healthy one after.
    String[] cured = {
      "--suspect", "U9.D0: open contact",
      "--saw", "screen: reads 'RNRRDL'",
      "--repaired", "fit a new socket at U9",
      "--saw", "screen: reads 'SORREL'"
    };
    assertEquals(0, weigh(cured).code());
    assertTrue(weigh(cured).out().contains("predicts all that was seen"), weigh(cured).out());
    String[] still = cured.clone();
    still[7] = "screen: reads 'RNRRDL'";
    assertEquals(1, weigh(still).code(), weigh(still).out());
  }

  @Test
  void partOut_simulated_isWeighedByRunsOfTheBoardSo() throws IOException {
    // A key that is out changes nothing of what stands on the display at the start.
    Played played =
        weigh(
            "--suspect",
            "U9.D0: open contact",
            "--saw",
            "with K1 out the display reads RNRRDL",
            "--json");
    JsonNode json = new ObjectMapper().readTree(played.out());
    assertEquals(0, played.code());
    assertEquals("predicted", json.get("finding").textValue());
    assertEquals("screen with K1 out", json.get("weighed").get(0).get("look").textValue());
    assertEquals(0, json.get("notWeighed").size());
    assertTrue(played.err().contains("4 of 4"), played.err());
    // Without its display U9 nothing stands on the glass, whatever else is wrong: that tells
    // nothing.
    String dark = next("--saw", "with U9 out the display is dark").out();
    assertTrue(dark.contains("shows that with every fault of the list"), dark);
  }

  @Test
  void odds_given_decideWhatCountsAsContradicted() {
    String[] told = {"--suspect", "X1: dead", "--told", "screen: reads 'RNRRDL'"};
    // One told entry counts 1:10.
    assertEquals(0, weigh(told).code());
    assertEquals(
        1,
        weigh("--suspect", "X1: dead", "--told", "screen: reads 'RNRRDL'", "--odds", "5").code());
  }

  @Test
  void examples_ofTheHelp_areTrueOfTheBoard() {
    for (Played played : List.of(weigh(example("weigh")), next(example("next")))) {
      assertEquals(0, played.code());
      assertTrue(!played.out().contains("Mind:"), played.out());
      assertTrue(played.out().contains("U9"), played.out());
    }
  }

  private static String[] example(String word) {
    List<String> words = EveryCommandTest.example(word);
    return words.subList(2, words.size()).toArray(String[]::new);
  }

  @Test
  void outcome_thatNoFaultShows_isKeptAndRemarkedOn() {
    String text = next("--saw", "screen: reads 'SPARROW'").out();
    assertTrue(text.startsWith("Mind: with no fault of the list does 'screen' show"), text);
  }
}
