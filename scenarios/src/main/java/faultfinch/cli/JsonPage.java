package faultfinch.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Results for machines: maps, lists, texts, numbers and truths as JSON, keys in their order. */
final class JsonPage {
  private JsonPage() {}

  /** Prints one value and a line end; the writer stays open. */
  static void print(Object value, PrintWriter out) {
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
      json.useDefaultPrettyPrinter();
      write(value, json);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // a PrintWriter keeps its troubles to itself
    }
    out.println();
  }

  /** An object of few keys, in this order. */
  static Map<String, Object> object(String key, Object value, String other, Object itsValue) {
    Map<String, Object> object = new LinkedHashMap<>();
    object.put(key, value);
    object.put(other, itsValue);
    return object;
  }

  private static void write(Object value, JsonGenerator json) throws IOException {
    if (value instanceof Map<?, ?> map) {
      json.writeStartObject();
      for (Map.Entry<?, ?> e : map.entrySet()) {
        json.writeFieldName((String) e.getKey());
        write(e.getValue(), json);
      }
      json.writeEndObject();
    } else if (value instanceof List<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        write(item, json);
      }
      json.writeEndArray();
    } else if (value instanceof Integer || value instanceof Long) {
      json.writeNumber(((Number) value).longValue());
    } else if (value instanceof Double number) {
      json.writeNumber(number);
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else {
      json.writeString((String) value);
    }
  }
}
