package faultfinch.board;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import faultfinch.signal.BadInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Builds the tree of {@link Located} values from the tokens of a streaming parser. */
final class LocatedParser {
  private static final Pattern EXPECTED =
      Pattern.compile("(.*?)[:;]? \\(?(?:was expecting|expected|expecting):? (.*)", Pattern.DOTALL);

  /** What the parser tells those who program with it, which a writer of JSON cannot use. */
  private static final String PROGRAMMERS =
      ": enable .*|, from `[^`]*`|: maybe a \\(non-standard\\) comment.*";

  private final Located.Source source;

  LocatedParser(String file, byte[] utf8) {
    this.source = new Located.Source(file, decoded(file, utf8));
  }

  Located document() {
    if (source.text().isBlank()) {
      throw new BadInput(source.file(), 1, 1, "an empty file", "a JSON object");
    }
    try (JsonParser json = new JsonFactory().createParser(source.text())) {
      json.nextToken();
      Located document = value(json, "");
      if (json.nextToken() != null) {
        Located.Place place = place(json);
        throw new BadInput(
            source.file(),
            place.line(),
            place.column(),
            "more after the end of the document",
            "nothing");
      }
      return document;
    } catch (JsonProcessingException e) {
      throw malformed(e);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail to be read", e);
    }
  }

  private Located value(JsonParser json, String path) throws IOException {
    Located.Place place = place(json);
    return switch (json.currentToken()) {
      case START_OBJECT -> Located.object(source, path, place, entries(json, path));
      case START_ARRAY -> Located.array(source, path, place, items(json, path));
      case VALUE_STRING -> scalar(json, path, Located.Kind.TEXT);
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> scalar(json, path, Located.Kind.NUMBER);
      case VALUE_TRUE, VALUE_FALSE -> scalar(json, path, Located.Kind.TRUTH);
      case VALUE_NULL -> scalar(json, path, Located.Kind.NOTHING);
      case END_OBJECT, END_ARRAY, FIELD_NAME, VALUE_EMBEDDED_OBJECT, NOT_AVAILABLE ->
          throw new IllegalStateException("no value begins with " + json.currentToken());
    };
  }

  private Located scalar(JsonParser json, String path, Located.Kind kind) throws IOException {
    return Located.scalar(source, path, place(json), kind, json.getText());
  }

  private List<Located.Entry> entries(JsonParser json, String path) throws IOException {
    List<Located.Entry> entries = new ArrayList<>();
    Map<String, Located> seen = new HashMap<>();
    while (json.nextToken() != JsonToken.END_OBJECT) {
      Located key = scalar(json, path, Located.Kind.TEXT);
      Located first = seen.putIfAbsent(key.text(), key);
      if (first != null) {
        throw key.wrong(
            "key '" + key.text() + "' twice",
            "each key once; the first is in line " + first.line());
      }
      json.nextToken();
      String inside = path.isEmpty() ? key.text() : path + "." + key.text();
      entries.add(new Located.Entry(key, value(json, inside)));
    }
    return entries;
  }

  private List<Located> items(JsonParser json, String path) throws IOException {
    List<Located> items = new ArrayList<>();
    while (json.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(json, path + "[" + items.size() + "]"));
    }
    return items;
  }

  private static Located.Place place(JsonParser json) {
    JsonLocation at = json.currentTokenLocation();
    return new Located.Place(at.getLineNr(), at.getColumnNr(), (int) at.getCharOffset());
  }

  private BadInput malformed(JsonProcessingException e) {
    // None for a document beyond the parser's limits, such as a thousand brackets.
    JsonLocation at = Objects.requireNonNullElse(e.getLocation(), new JsonLocation(null, 0, 1, 1));
    String message =
        e.getOriginalMessage()
            .replaceAll("\\[Source:[^;]*; ([^\\]]*)\\]", "$1")
            .replaceAll(PROGRAMMERS, "");
    Matcher m = EXPECTED.matcher(message);
    if (m.matches()) {
      return malformed(at, m.group(1), m.group(2).replaceFirst("^\\((.*)\\)$", "$1"));
    }
    int colon = message.indexOf(": ");
    return colon < 0
        ? malformed(at, message, "JSON")
        : malformed(at, message.substring(0, colon), "JSON: " + message.substring(colon + 2));
  }

  private BadInput malformed(JsonLocation at, String found, String right) {
    String first = found.substring(0, 1).toLowerCase(Locale.ROOT);
    return new BadInput(
        source.file(), at.getLineNr(), at.getColumnNr(), first + found.substring(1), right);
  }

  /** A file's text, without the mark some editors put before UTF-8. */
  static String decoded(String file, byte[] utf8) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(utf8)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw new BadInput(file, 1, 1, "bytes that are not UTF-8", "a text in UTF-8");
    }
  }
}
