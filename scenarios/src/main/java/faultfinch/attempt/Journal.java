package faultfinch.attempt;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What happened, line by line. Each line carries the digest of the one before, so that a line that
 * was changed, lost or moved shows.
 */
final class Journal {
  private static final JsonFactory JSON = new JsonFactory();

  private final List<String> lines = new ArrayList<>();

  /** One line; values are texts, numbers, truths or lists of texts. */
  void write(String what, Map<String, Object> fields) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("line", lines.size() + 1);
    all.put("what", what);
    all.putAll(fields);
    all.put("before", lines.isEmpty() ? "" : digest(lines.get(lines.size() - 1)));
    lines.add(json(all));
  }

  /** All lines so far. */
  List<String> lines() {
    return List.copyOf(lines);
  }

  /** SHA-256 in hexadecimal. */
  static String digest(String text) {
    try {
      byte[] sum =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(sum);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("SHA-256 is missing from this Java", e);
    }
  }

  private static String json(Map<String, Object> fields) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(out)) {
      json.writeStartObject();
      for (Map.Entry<String, Object> e : fields.entrySet()) {
        json.writeFieldName(e.getKey());
        value(json, e.getValue());
      }
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail to be written", e);
    }
    return out.toString();
  }

  private static void value(JsonGenerator json, Object value) throws IOException {
    if (value instanceof Integer number) {
      json.writeNumber(number);
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof List<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        value(json, item);
      }
      json.writeEndArray();
    } else {
      json.writeString(String.valueOf(value));
    }
  }
}
