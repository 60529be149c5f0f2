package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.signal.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Overlays laid over a copy of Sorrel, and what is said of those that are not right. */
class OverlayTest {
  private static final String HEAD =
      "{\"format\": 1, \"name\": \"x\", \"title\": \"X\", \"about\": \"x\", \"ticks\": {},\n";
  private static final String A_LATCH =
      "\"parts\": [{\"ref\": \"U20\", \"type\": \"74LS00\", \"role\": \"gates\", \"at\": [5, 5],"
          + " \"turn\": 0, \"socketed\": false, \"class\": \"LS\"}]";

  @TempDir Path folder;

  @BeforeEach
  void copySorrel() throws IOException {
    Files.createDirectories(folder.resolve("firmware"));
    Files.createDirectories(folder.resolve("overlays"));
    for (String file :
        List.of("board.json", "routes.json", "firmware/sorrel.bin", "firmware/sorrel.lbl")) {
      Files.copy(BadBoard.SORREL.resolve(file), folder.resolve(file));
    }
    Files.writeString(
        folder.resolve("overlays/overlays.json"),
        "{\"format\": 1, \"ticks\": {}, \"duties\": {}, \"overlays\": [\"x\"]}");
  }

  private Board laid(String rest) throws IOException {
    Files.writeString(folder.resolve("overlays/x.json"), HEAD + rest + "}\n");
    return BoardReader.read(folder.resolve("board.json"), "x");
  }

  private static List<String> pieces(Board board, String net) {
    return board.net(net).orElseThrow().segments().stream().map(Net.Segment::text).toList();
  }

  @Test
  void overlay_ofNothing_isTheBoardUnderAnotherName() throws IOException {
    Board sorrel = BoardReader.shipped("sorrel");
    Board laid = laid("\"takes\": []");
    assertEquals("sorrel+x", laid.name());
    assertEquals("X", laid.title());
    assertEquals(sorrel.parts(), laid.parts());
    assertEquals(sorrel.nets(), laid.nets());
    assertEquals(sorrel.tracks(), laid.tracks());
    assertTrue(laid.runsAs(sorrel));
  }

  @Test
  void takes_aPart_itsTracksGoOnFromThePadBefore() throws IOException {
    // "D0": "U1.D0 U2.D0 (U9.D0) U3.D0 U8.D0 U10.1Y1" without U3.
    Board laid = laid("\"takes\": [\"U3\"]");
    assertTrue(laid.part("U3").isEmpty());
    assertEquals(
        List.of("U1.D0-U2.D0", "U2.D0-U9.D0", "U2.D0-U8.D0", "U8.D0-U10.1Y1"), pieces(laid, "D0"));
    Set<String> laidTracks =
        Set.copyOf(laid.tracks().stream().map(t -> t.segment().text()).toList());
    assertTrue(laidTracks.contains("U1.D0-U2.D0"));
    assertFalse(laidTracks.contains("U2.D0-U8.D0"), "nobody laid the new piece");
    assertFalse(laid.runsAs(BoardReader.shipped("sorrel")));
  }

  @Test
  void takes_thePartATrackBeginsAt_theNextPadIsItsBeginning() throws IOException {
    // "Y5/": "U4.Y5/ U9.CS/"; without the decoder one pad is left.
    Board laid = laid("\"takes\": [\"U4\"]");
    assertEquals(List.of(new Pad("U9", "CS/")), laid.net("Y5/").orElseThrow().pads());
    assertEquals(List.of(), pieces(laid, "Y5/"));
  }

  @Test
  void joins_aTrack_leavesFromAPadOfTheNet() throws IOException {
    Board laid =
        laid(
            A_LATCH
                + ", \"joins\": {\"D0\": [\"U9.D0 U20.1A (U20.1B)\"], \"GND\": [\"U2.GND U20.GND U20.2A"
                + " U20.2B U20.3A U20.3B U20.4A U20.4B\"], \"5V\": [\"U2.VCC U20.VCC\"]},"
                + " \"unconnected\": [\"U20.1Y\", \"U20.2Y\", \"U20.3Y\", \"U20.4Y\"]");
    List<String> d0 = pieces(laid, "D0");
    assertEquals(List.of("U9.D0-U20.1A", "U20.1A-U20.1B"), d0.subList(5, 7));
    assertEquals(7, d0.size());
  }

  @Test
  void fits_aSocketedPartSoldered_changesWhatFailsAndNotWhatRuns() throws IOException {
    Board laid = laid("\"fits\": {\"U1\": {\"socketed\": false}}");
    assertFalse(laid.part("U1").orElseThrow().socketed());
    assertTrue(laid.runsAs(BoardReader.shipped("sorrel")));
    Map<Pad, Net> nets = laid.netOfPad();
    assertEquals("D0", nets.get(new Pad("U1", "D0")).name());
  }

  @Test
  void fits_aPartElsewhere_leavesItsTracksUnlaid() throws IOException {
    // R1 stands at [39.5, 37]; its pins have tracks to other parts.
    Board sorrel = BoardReader.shipped("sorrel");
    Board laid = laid("\"fits\": {\"R1\": {\"at\": [41, 37]}}");
    assertEquals(41, laid.part("R1").orElseThrow().x());
    assertTrue(laid.tracks().stream().noneMatch(t -> t.segment().text().matches("(.*-)?R1\\..*")));
    assertTrue(sorrel.tracks().stream().anyMatch(t -> t.segment().text().matches("(.*-)?R1\\..*")));
  }

  @Test
  void addedPart_onLaidTracks_thoseAreLaidNoLonger() throws IOException {
    // Pad 1 of U20 is put where the first track of D0 begins, which is under U1.
    Board sorrel = BoardReader.shipped("sorrel");
    Track first = sorrel.tracks().get(0);
    Track.Leg leg = first.legs().get(first.legs().size() - 1);
    String at = "[" + (leg.fromX() + leg.toX()) / 2 + ", " + (leg.fromY() + leg.toY()) / 2 + "]";
    Board laid =
        laid(
            A_LATCH.replace("[5, 5]", at)
                + ", \"unconnected\": [\"U20.1A\", \"U20.1B\", \"U20.1Y\", \"U20.2A\", \"U20.2B\","
                + " \"U20.2Y\", \"U20.3A\", \"U20.3B\", \"U20.3Y\", \"U20.4A\", \"U20.4B\","
                + " \"U20.4Y\", \"U20.GND\", \"U20.VCC\"]");
    assertTrue(laid.net(first.net()).isPresent());
    assertTrue(laid.track(first.segment()).isEmpty());
    assertTrue(laid.tracks().size() < sorrel.tracks().size());
  }

  /** What is wrong stands in line 2 behind a few characters. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"take\": []|1|unknown key 'take'|takes",
        "\"takes\": [\"U33\"]|11|unknown part 'U33'|U11, U3 or U12",
        "\"drops\": [\"D9\"]|11|unknown net 'D9'|D0, D1 or D2",
        "\"fits\": {\"U33\": {}}|10|unknown part 'U33'|U11, U3 or U12",
        "\"fits\": {\"U1\": {\"sockets\": true}}|17|unknown key 'sockets'|socketed",
        "\"fits\": {\"U1\": {\"ref\": \"U2\"}}|24|another reference|a part that keeps its own",
        "\"joins\": {\"D9\": []}|11|unknown net 'D9'|D0, D1 or D2",
        "\"joins\": {\"D0\": [\"U1.D1\"]}|19|U1.D1|a pad of net D0",
        "\"joins\": {\"D0\": [\"U1.D0 U1.D1\"]}|25|U1.D1 again, after net D1|each pin on one net, once",
        "\"takes\": [\"U3\"], \"joins\": {\"D0\": [\"U1.D0 U3.D0\"]}|42|U3.D0, of a part taken away|a pin"
            + " of a part that stays",
        "\"nets\": {\"NEW\": \"U1.NC1 U77.A\"}|25|unknown part 'U77'|U11, U7 or U12"
      })
  void overlay_notRight_isSaidWithFileLineAndColumn(
      String rest, int column, String found, String right) {
    BadInput e = assertThrows(BadInput.class, () -> laid(rest));
    assertEquals(
        folder.resolve("overlays/x.json")
            + ":2:"
            + column
            + ": found "
            + found
            + ", right would be "
            + right,
        e.getMessage());
  }

  /** The list of overlays stands in one line; what is wrong in the overlay in its line 1. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"ticks\": {\"t\": {\"asks\": \"T?\", \"answers\": [\"a\"], \"here\": \"a\"}}, \"duties\":"
            + " {}|two answers or more",
        "\"ticks\": {\"t\": {\"asks\": \"T?\", \"answers\": [\"a\", \"b\"], \"here\": \"c\"}},"
            + " \"duties\": {}|a or b",
        "\"ticks\": {\"t\": {\"asks\": \"T?\", \"answers\": [\"a\", \"b\"], \"here\": \"a\","
            + " \"concerns\": [\"rom\"]}}, \"duties\": {\"ram\": \"a RAM\"}|ram",
        "\"ticks\": {}, \"duties\": {\"ram\": \" \"}|a text that is not empty"
      })
  void listOfOverlays_notRight_isSaidWithWhatWouldBe(String rest, String right) throws IOException {
    Files.writeString(
        folder.resolve("overlays/overlays.json"),
        "{\"format\": 1, " + rest + ", \"overlays\": [\"x\"]}");
    Files.writeString(folder.resolve("overlays/x.json"), HEAD + "\"takes\": []}");
    BadInput e =
        assertThrows(BadInput.class, () -> BoardReader.variants(folder.resolve("board.json")));
    assertTrue(
        e.getMessage().startsWith(folder.resolve("overlays/overlays.json") + ":1:"),
        e.getMessage());
    assertTrue(e.getMessage().endsWith(", right would be " + right), e.getMessage());
  }

  @Test
  void overlay_ofATickThatIsNotListed_isRefused() throws IOException {
    Files.writeString(
        folder.resolve("overlays/x.json"),
        HEAD.replace("\"ticks\": {}", "\"ticks\": {\"sockets\": \"none\"}") + "\"takes\": []}");
    BadInput e =
        assertThrows(BadInput.class, () -> BoardReader.variants(folder.resolve("board.json")));
    assertTrue(e.getMessage().contains("x.json:1:"), e.getMessage());
    assertTrue(e.getMessage().contains("unknown tick 'sockets'"), e.getMessage());
  }

  @Test
  void overlay_notListed_isRefusedWithThoseThatAre() {
    BadInput e =
        assertThrows(BadInput.class, () -> BoardReader.read(folder.resolve("board.json"), "y"));
    assertTrue(e.getMessage().endsWith("found no overlay 'y', right would be x"), e.getMessage());
  }

  @Test
  void variants_shipped_answerEveryTickWithOneOfItsAnswers() {
    Variants variants = BoardReader.variants("tamarisk");
    assertEquals("tamarisk", variants.boards().get(0).name());
    assertEquals(
        BoardReader.shippedVariants().stream().filter(n -> n.startsWith("tamarisk")).toList(),
        variants.boards().stream().map(Variants.Variant::name).toList());
    for (Variants.Variant board : variants.boards()) {
      for (Tick tick : variants.ticks()) {
        assertTrue(tick.answers().contains(board.ticks().get(tick.name())), board.name());
      }
    }
    assertTrue(variants.ticks().size() <= 10);
  }

  @Test
  void variants_shipped_eachDiffersFromTheBoardInATick() {
    List<Variants.Variant> boards = BoardReader.variants("tamarisk").boards();
    for (Variants.Variant overlaid : boards.subList(1, boards.size())) {
      assertFalse(overlaid.ticks().equals(boards.get(0).ticks()), overlaid.name());
    }
  }

  @Test
  void addedParts_ofShippedOverlays_standClearOfOthers() {
    for (Variants.Variant variant : BoardReader.variants("tamarisk").boards()) {
      List<PlacedPart> parts = BoardReader.shipped(variant.name()).parts();
      for (int i = 0; i < parts.size(); i++) {
        for (PlacedPart other : parts.subList(0, i)) {
          assertFalse(
              Footprint.of(parts.get(i)).body().overlaps(Footprint.of(other).body()),
              variant.name() + ": " + parts.get(i).ref() + " and " + other.ref());
        }
      }
    }
  }
}
