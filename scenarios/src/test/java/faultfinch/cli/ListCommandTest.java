package faultfinch.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.FaultKinds;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ListCommandTest {

  private static JsonNode json(String... args) throws IOException {
    Played played = Played.of(args);
    assertEquals(0, played.code(), played.err());
    return new ObjectMapper().readTree(played.out());
  }

  @Test
  void pins_ofTheDecoder_standWithNumberAndNet() {
    List<String> lines = Played.of("list", "pins", "--part", "U4").out().lines().toList();
    assertEquals(17, lines.size(), "a 74LS138 has 16 pins, and there is a heading");
    // Y0/ is pin 15 of a 74LS138 and selects the memory over the net of the same name.
    assertTrue(lines.stream().anyMatch(l -> l.matches("U4\\.Y0/ +15 +out +output +Y0/")));
  }

  @Test
  void pins_ofEveryShippedBoard_areListed() {
    for (String board : BoardReader.shippedVariants()) {
      Played played = Played.of("list", "pins", "--board", board);
      assertEquals(0, played.code(), played.err());
    }
  }

  @Test
  void parts_asJson_haveStableKeys() throws IOException {
    JsonNode first = json("list", "parts", "--part", "U9", "--json").get(0);
    assertEquals(
        "{\"part\":\"U9\",\"type\":\"DISPLAY\",\"socketed\":true,\"value\":\"\","
            + "\"role\":\"sixteen-cell display\"}",
        first.toString());
  }

  @Test
  void faults_listed_canAllBeGivenToRun() throws IOException {
    Board board = BoardReader.shipped("sorrel");
    JsonNode faults = json("list", "faults", "--part", "U9", "--json");
    assertTrue(faults.size() > 50);
    for (JsonNode fault : faults) {
      String text = fault.get("fault").textValue();
      assertEquals(text, FaultKinds.parse(text, board).text());
      assertTrue(text.contains("U9"), text);
    }
  }

  @Test
  void nets_ofAPart_areThoseOfItsPins() throws IOException {
    JsonNode nets = json("list", "nets", "--part", "R2", "--json");
    assertEquals(2, nets.size());
    assertEquals("BEEP", nets.get(0).get("net").textValue());
    assertEquals("[\"U6.3Y\",\"R2.1\"]", nets.get(0).get("pins").toString());
  }

  @ParameterizedTest
  @EnumSource(Subject.class)
  void everySubject_asTableAndAsJson_hasAsManyRows(Subject subject) throws IOException {
    Played table = Played.of("list", subject.word());
    assertEquals("", table.err());
    JsonNode rows = json("list", subject.word(), "--json");
    assertTrue(rows.size() > 0);
    // A heading, and a row may wrap into more lines.
    assertTrue(table.out().lines().count() >= rows.size() + 1);
  }
}
