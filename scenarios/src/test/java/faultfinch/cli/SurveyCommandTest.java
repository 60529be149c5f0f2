package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Supply;
import faultfinch.diagnosis.BenchPrices;
import faultfinch.diagnosis.Diagnosis;
import faultfinch.diagnosis.DictionaryBuild;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Origin;
import faultfinch.diagnosis.SurveyRows;
import faultfinch.diagnosis.Suspect;
import faultfinch.diagnosis.Suspects;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.RepairAction;
import faultfinch.part.PartCatalog;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Surveys two inverters in a row, small enough for paper. The input of the first is tied high, so
 * it drives low; the second reads that and drives high into nothing. A third has its input tied low
 * and drives high into nothing too.
 */
class SurveyCommandTest {
  private static final Words WORDS = new Words();

  /** Faults with their weights, which are powers of two: a sum tells what is in it. */
  private static final Map<String, Integer> WEIGHTS = new LinkedHashMap<>();

  static {
    WEIGHTS.put("U1.1A: reads high", 1); // as it does anyway
    WEIGHTS.put("U1.1A: reads low", 2); // drives 1Y high: excited, and the probe sees it
    WEIGHTS.put("U1.2A: reads low", 4); // as it does anyway
    WEIGHTS.put("U1.2A: reads high", 8); // drives 2Y low, where no look is offered: excited
    WEIGHTS.put("U1.1Y: drives low", 16); // as it does anyway
    WEIGHTS.put("U1.1Y: drives high", 32); // excited; 1A apart, which no look sees, as the second
    WEIGHTS.put("U1.3A: reads low", 64); // as it does anyway
    WEIGHTS.put("U1.3A: reads high", 128); // drives 3Y low, where no look is offered: excited
  }

  private static Known known;

  @BeforeAll
  static void build() {
    Board board = inverters();
    List<Fault> faults =
        WEIGHTS.keySet().stream().map(text -> FaultKinds.parse(text, board)).toList();
    FaultDictionary dictionary =
        new DictionaryBuild(Origin.of(board, "test"), faults, new SurveyRows(board))
            .run(1, (done, all) -> true)
            .orElseThrow();
    RepairAction exchange = RepairAction.curing(faults.get(0), board);
    List<Suspect> suspects = new ArrayList<>();
    WEIGHTS.forEach((text, weight) -> suspects.add(Suspect.of(text, "U1", weight, exchange)));
    known =
        new Known(
            board,
            dictionary,
            Diagnosis.of(dictionary, new Suspects(suspects), new BenchPrices(Prices.shipped())));
  }

  private static Board inverters() {
    return new Board(
        "inverters",
        "Inverters",
        "us",
        "for tests",
        1_000_000,
        "X1",
        List.of(200, 200, 100, 200, 200, 100),
        100,
        80,
        List.of(
            part("J1", "JACK", "connector"),
            part("VR1", "7805", "regulator"),
            part("U1", "74LS04", "LS"),
            part("X1", "OSC", "clock"),
            part("U2", "6502", "CPU")),
        List.of(
            net("9V", "J1.+ VR1.IN"),
            net("5V", "VR1.OUT U1.VCC U1.1A X1.VCC U2.VCC U2.RDY U2.IRQ/ U2.NMI/ U2.SO"),
            net(
                "GND",
                "J1.- VR1.GND U1.GND U1.3A U1.4A U1.5A U1.6A X1.GND U2.VSS1 U2.VSS2 U2.RES/"),
            net("CLK", "X1.OUT U2.PHI0"),
            net("MID", "U1.1Y U1.2A")),
        new Supply(11_500, 3_000, "9V", "J1", "5V", "VR1", "GND"),
        List.of(),
        List.of(),
        List.of(),
        "",
        List.of());
  }

  private static PlacedPart part(String ref, String type, String share) {
    return new PlacedPart(
        ref, PartCatalog.named(type).orElseThrow(), ref, 0, 0, 0, false, "", share);
  }

  private static Net net(String name, String track) {
    List<Pad> pads =
        Arrays.stream(track.split(" "))
            .map(p -> new Pad(p.substring(0, p.indexOf('.')), p.substring(p.indexOf('.') + 1)))
            .toList();
    List<Net.Segment> segments = new ArrayList<>();
    for (int i = 1; i < pads.size(); i++) {
      segments.add(new Net.Segment(pads.get(i - 1), pads.get(i)));
    }
    return new Net(name, pads, segments);
  }

  private static String survey(String... args) {
    StringWriter out = new StringWriter();
    Terminal terminal =
        new Terminal(
            new BufferedReader(new StringReader("")),
            new PrintWriter(out, true),
            new PrintWriter(new StringWriter(), true),
            arguments -> OptionalInt.empty(),
            WORDS);
    SurveyCommand command = new SurveyCommand((board, t) -> known, (board, t) -> known);
    assertEquals(0, command.run(Given.of(command.options(), List.of(args), WORDS), terminal));
    return out.toString();
  }

  @Test
  void figures_ofTheInverters_areThoseWorkedOutOnPaper() throws IOException {
    JsonNode json = new ObjectMapper().readTree(survey("--json"));
    double all = 255;
    assertEquals(8, json.get("faultsBeforeCollapse").intValue());
    assertEquals((2 + 8 + 32 + 128) / all, json.get("excited").doubleValue(), 1e-12);
    assertEquals(0, json.get("detected").get("owner").doubleValue());
    assertEquals((2 + 32) / all, json.get("detected").get("poweredLooks").doubleValue(), 1e-12);
    assertEquals((2 + 32) / all, json.get("detected").get("anyLook").doubleValue(), 1e-12);
    assertEquals(1 - (2 + 32) / all, json.get("silent").doubleValue(), 1e-12);
    assertFalse(json.get("detected").has("benchRom"));
    // Both show 1Y high and nothing else: one group of two, which a new chip cures.
    assertEquals(1, json.get("classes").intValue());
    assertEquals(2, json.get("meanGroupByFault").doubleValue());
    assertEquals(1, json.get("meanGroupByAction").doubleValue());
    assertEquals(1, json.get("isolatedToOneAction").doubleValue());
  }

  /**
   * The input that reads low drives its output high, and nobody but 2A hears that output: the
   * collapse counts 1A, 1Y and 2A once.
   */
  @Test
  void faults_thatDoTheSame_areCountedOnce() throws IOException {
    JsonNode json = new ObjectMapper().readTree(survey("--json"));
    // {1A high, 1Y low, 2A low}, {1A low, 1Y high, 2A high}, 3A twice.
    assertEquals(4, json.get("faults").intValue());
  }

  @Test
  void page_forPeople_saysTheSameAndThatThereIsNoBenchRom() {
    String text = survey();
    assertTrue(text.startsWith("Inverters: 8 faults that have a name; 4 if "), text);
    // 170 of 255 and 34 of 255.
    assertTrue(
        text.lines().anyMatch(l -> l.contains("while watched") && l.endsWith("66.7 %")), text);
    assertTrue(text.lines().anyMatch(l -> l.contains("any look") && l.endsWith("13.3 %")), text);
    assertTrue(text.contains("the board has none"), text);
    assertTrue(text.lines().noneMatch(l -> l.contains("{")), text);
  }

  /** Nobody notices anything of the inverters: no job comes of them, and that is said. */
  @Test
  void jobs_whereNobodyNoticesAnything_areNotFollowed() throws IOException {
    JsonNode json = new ObjectMapper().readTree(survey("--json"));
    assertFalse(json.has("advisor"));
    assertTrue(json.get("notComputed").has("advisor"));
    assertTrue(json.get("notComputed").has("pairs"));
  }

  @Test
  void jobs_onSorrel_areToldWithEveryWayAndHowSure() throws IOException {
    Played played =
        Played.of(
            "survey",
            "--board",
            "sorrel",
            "--json",
            "--jobs",
            "40",
            "--weighed",
            "6",
            "--seed",
            "4");
    assertEquals(0, played.code(), played.err());
    JsonNode json = new ObjectMapper().readTree(played.out());
    assertEquals(4, json.get("seed").intValue());
    for (String way :
        List.of(
            "advisor",
            "noPullReference",
            "boardOrder",
            "mostFailingFirst",
            "symptomFirst",
            "probeFirst",
            "perturbed",
            "wrongReadings")) {
      for (String figure : List.of("innocentChips", "minutes", "price")) {
        double at = json.get(way).get(figure).doubleValue();
        JsonNode between = json.get(way).get(figure + "Between");
        assertTrue(between.get(0).doubleValue() <= at && at <= between.get(1).doubleValue(), way);
      }
    }
    assertTrue(json.get("perturbed").has("topThree"));
    assertFalse(json.has("pairs"));
    assertTrue(json.get("notComputed").has("pairs"));
    assertTrue(played.err().lines().anyMatch(l -> l.endsWith(" jobs followed")), played.err());
  }

  @Test
  void jobs_forPeople_areOneTable() {
    Played played = Played.of("survey", "--board", "sorrel", "--jobs", "40", "--weighed", "0");
    assertEquals(0, played.code(), played.err());
    assertTrue(
        played.out().lines().anyMatch(l -> l.startsWith("repair by the symptom")), played.out());
    assertTrue(played.out().lines().noneMatch(l -> l.contains("{")), played.out());
  }

  @Test
  void speed_ofSomeGroups_tellsWhatABuildTakes() throws Exception {
    Played played =
        Played.of("survey", "--board", "sorrel", "--json", "--jobs", "0", "--speed", "3");
    assertEquals(0, played.code(), played.err());
    JsonNode json = new ObjectMapper().readTree(played.out());
    // A build runs every group, and none of them in no time; alone nothing is quicker by much.
    assertTrue(json.get("buildSeconds").doubleValue() > 1, played.out());
    assertTrue(json.get("speedUpOverNaive").doubleValue() > 0.3, played.out());
    assertFalse(json.get("notComputed").has("buildSeconds"));
  }
}
