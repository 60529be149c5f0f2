package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.signal.BadInput;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places counted by hand: lines and columns from 1. */
class LocatedTest {

  @Test
  void read_nestedValues_knowTheirLineColumnAndPath() {
    //                 123456789
    Located root = of("{\"a\": [1,\n  {\"b\": true}]}");
    Located list = root.get("a");
    Located truth = list.items().get(1).get("b");
    assertPlace(1, 1, "", root);
    assertPlace(1, 7, "a", list);
    assertPlace(1, 8, "a[0]", list.items().get(0));
    assertPlace(2, 3, "a[1]", list.items().get(1));
    assertPlace(2, 9, "a[1].b", truth);
    assertTrue(truth.truth());
    assertPlace(1, 2, "", root.entries().get(0).key());
  }

  @Test
  void read_linesEndedTheOtherWay_countTheSame() {
    assertPlace(3, 2, "a", of("{\"a\":\r\n\r\n 1}").get("a"));
  }

  @Test
  void read_lettersBeyondAscii_countAsOneColumnEach() {
    assertPlace(1, 15, "b", of("{\"a\":\"µΩ\",\"b\":1}").get("b")); // {"a":"µΩ","b": is 14
  }

  @Test
  void read_markBeforeUtf8_isPassedOver() {
    assertPlace(1, 1, "", of("\uFEFF{}"));
  }

  @Test
  void wrongAt_afterEscapes_pointsAtTheCharacterAsWritten() {
    // Column 1 is the quote; \n takes two columns and the six of \u0041 one character.
    Located text = of("\"a\\n\\u0041b\"");
    assertEquals("a\nAb", text.text());
    assertEquals(2, text.wrongAt(0, "x", "y").column());
    assertEquals(3, text.wrongAt(1, "x", "y").column());
    assertEquals(5, text.wrongAt(2, "x", "y").column());
    assertEquals(11, text.wrongAt(3, "x", "y").column());
    assertEquals(12, text.wrongAt(4, "x", "y").column());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"a\": }|1:7",
        "{\"a\" 1}|1:6",
        "{\"a\": 1,}|1:9",
        "{\"a\": 1|1:8",
        "{\"a\": tru}|1:7",
        "{\"a\": 01}|1:8",
        "{a: 1}|1:2",
        "{} {}|1:4",
        "[1 2]|1:4",
        "]|1:1",
      })
  void read_malformed_pointsAtTheFirstThingThatCannotBe(String json, String place) {
    BadInput bad = assertThrows(BadInput.class, () -> of(json));
    assertEquals(place, bad.line() + ":" + bad.column(), bad.getMessage());
    assertEquals(1, bad.getMessage().lines().count());
  }

  @Test
  void read_keyTwice_pointsAtTheSecond() {
    assertWrong(
        "t.json:1:9: found key 'a' twice, right would be each key once; the first is in line 1",
        () -> of("{\"a\":1, \"a\":2}"));
  }

  @Test
  void read_notUtf8_saysSo() {
    byte[] latin = {'"', (byte) 0xE9, '"'};
    assertWrong(
        "t.json:1:1: found bytes that are not UTF-8, right would be a text in UTF-8",
        () -> Located.read("t.json", latin));
  }

  @Test
  void read_nestedWithoutEnd_isRefusedAsBadInput() {
    assertThrows(BadInput.class, () -> of("[".repeat(100_000)));
  }

  @Test
  void whole_atItsLimits_isAllowed() {
    assertEquals(1, of("1").whole(1, 3));
    assertEquals(3, of("3.0").whole(1, 3));
    assertWrong(
        "t.json:1:1: found 4, right would be a whole number from 1 to 3",
        () -> of("4").whole(1, 3));
    assertWrong(
        "t.json:1:1: found 2.5, right would be a whole number from 1 to 3",
        () -> of("2.5").whole(1, 3));
  }

  @Test
  void whole_hugeExponent_isRefusedAtOnce() {
    assertThrows(BadInput.class, () -> of("1e999999999").whole(0, 9));
    assertThrows(BadInput.class, () -> of("1e-999999999").whole(0, 9));
    assertThrows(BadInput.class, () -> of("1e99999999999999").whole(0, 9));
  }

  @Test
  void keys_unknown_offersTheNearest() {
    assertWrong(
        "t.json:1:2: found unknown key 'nmae', right would be name",
        () -> of("{\"nmae\": 1}").keys(List.of("name"), List.of("size")));
  }

  @Test
  void message_controlCharactersInWhatWasFound_areTakenOut() {
    assertWrong(
        "t.json:1:1: found 'a b', right would be c or d",
        () -> of("\"a\\n\\u001bb\"").oneOf(List.of("c", "d")));
  }

  private static Located of(String json) {
    return Located.read("t.json", json.getBytes(StandardCharsets.UTF_8));
  }

  private static void assertPlace(int line, int column, String path, Located value) {
    assertEquals(
        line + ":" + column + " " + path, value.line() + ":" + value.column() + " " + value.path());
  }

  private static void assertWrong(String message, org.junit.jupiter.api.function.Executable run) {
    assertEquals(message, assertThrows(BadInput.class, run).getMessage());
  }
}
