package faultfinch.board;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import faultfinch.signal.BadInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The quick reader against the thorough one, of which it must be a part. */
class WellFormedTest {

  private static final String ODD =
      "{}[]\",:\\/ \t\r\n0123456789-+.eEtruefalsn\u0000\u0007\u00b5\ud83d\ude00uaF'#";

  private static Located.Source source(String file) throws IOException {
    try (InputStream in = WellFormedTest.class.getResourceAsStream("/faultfinch/boards/" + file)) {
      return new Located.Source(file, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }

  private static Located thorough(Located.Source source) {
    byte[] utf8 = source.text().getBytes(StandardCharsets.UTF_8);
    return new LocatedParser(source.file(), utf8).thoroughly();
  }

  private static void assertSame(Located expected, Located actual) {
    assertEquals(expected.kind(), actual.kind());
    assertEquals(expected.path(), actual.path());
    assertEquals(
        expected.wrong("this", "that").getMessage(), actual.wrong("this", "that").getMessage());
    switch (expected.kind()) {
      case OBJECT -> {
        assertEquals(expected.entries().size(), actual.entries().size());
        for (int i = 0; i < expected.entries().size(); i++) {
          assertSame(expected.entries().get(i).key(), actual.entries().get(i).key());
          assertSame(expected.entries().get(i).value(), actual.entries().get(i).value());
        }
      }
      case ARRAY -> {
        assertEquals(expected.items().size(), actual.items().size());
        for (int i = 0; i < expected.items().size(); i++) {
          assertSame(expected.items().get(i), actual.items().get(i));
        }
      }
      case TEXT -> {
        assertEquals(expected.text(), actual.text());
        int end = expected.text().length();
        assertEquals(
            expected.wrongAt(end, "this", "that").getMessage(),
            actual.wrongAt(end, "this", "that").getMessage());
      }
      case NUMBER -> assertEquals(expected.number("-1e99", "1e99"), actual.number("-1e99", "1e99"));
      case TRUTH -> assertEquals(expected.truth(), actual.truth());
      case NOTHING -> assertEquals(expected.path(), actual.path());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sorrel/board.json",
        "sorrel/routes.json",
        "tamarisk/board.json",
        "tamarisk/bench.json",
        "tamarisk/routes.json",
        "tamarisk/overlays/overlays.json",
        "tamarisk/overlays/bus-buffers.json",
        "board.schema.json"
      })
  void document_thatIsWellFormed_isReadAsTheThoroughReaderDoes(String file) throws IOException {
    Located.Source source = source(file);
    assertSame(thorough(source), WellFormed.document(source).orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"a\": [1, -2.5e+3, 0, 1E9], \"b\": {\"c\": [true, false, null], \"d\": {}}, \"e\": []}",
        "\r\n [\"\\u00b5\\n\\t\\\"\\\\\\/\", \"\"] \r ",
        "\n\r\n\r\"\u00b5\ud83d\ude00\"",
        "0"
      })
  void document_ofEverySortOfValue_isReadAsTheThoroughReaderDoes(String text) {
    Located.Source source = new Located.Source("x", text);
    assertSame(thorough(source), WellFormed.document(source).orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "{",
        "[1,]",
        "[1 2]",
        "{\"a\" 1}",
        "{\"a\":1,}",
        "{\"a\":1,\"a\":2}",
        "{a:1}",
        "'a'",
        "\"a",
        "\"a\nb\"",
        "\"\\x\"",
        "\"\\u00g0\"",
        "\"\\u00",
        "\"\\",
        "01",
        "+1",
        ".5",
        "1.",
        "1e",
        "-",
        "tru",
        "nulls",
        "[1]]",
        "// 1\n1"
      })
  void document_thatIsNotWellFormed_isLeftToTheThoroughReader(String text) {
    assertEquals(Optional.empty(), WellFormed.document(new Located.Source("x", text)));
  }

  @Test
  void document_damagedAnywhere_isNeverReadOtherwiseThanTheThoroughReaderDoes() throws IOException {
    Random random = new Random(20);
    String whole = source("tamarisk/overlays/decoder-chip.json").text();
    int read = 0;
    for (int i = 0; i < 20_000; i++) {
      StringBuilder damaged = new StringBuilder(whole);
      for (int more = random.nextInt(3); more >= 0; more--) {
        int at = random.nextInt(damaged.length());
        char odd = ODD.charAt(random.nextInt(ODD.length()));
        switch (random.nextInt(3)) {
          case 0 -> damaged.deleteCharAt(at);
          case 1 -> damaged.insert(at, odd);
          default -> damaged.setCharAt(at, odd);
        }
      }
      Located.Source source =
          new Located.Source(
              "x",
              new String(
                  damaged.toString().getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8));
      Optional<Located> quick = WellFormed.document(source);
      if (quick.isPresent()) {
        read++;
        assertSame(thorough(source), quick.get());
      } else {
        assertTrue(isWrongOrOdd(source), source.text());
      }
    }
    assertTrue(read > 1_000, read + " were read");
  }

  /** What is left to the thorough reader, it must refuse: of what is odd, nothing is drawn here. */
  private static boolean isWrongOrOdd(Located.Source source) {
    try {
      thorough(source);
      return false;
    } catch (BadInput e) {
      return true;
    }
  }
}
