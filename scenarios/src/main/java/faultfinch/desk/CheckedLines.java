package faultfinch.desk;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import faultfinch.signal.BadInput;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The lines of a file that are whole, each with a check of itself and of the line before, and what
 * is left of a last one that was being written.
 */
record CheckedLines(List<String> lines, Optional<String> cut) {

  /** Before the first line. */
  static final CheckedLines NONE = new CheckedLines(List.of(), Optional.empty());

  private static final String CHECK = ",\"check\":\"";
  private static final int CHECK_DIGITS = 16;

  CheckedLines {
    lines = List.copyOf(lines);
  }

  /** Reads a file; refuses one of which a line was changed, lost or moved. */
  static CheckedLines read(Path path) {
    byte[] bytes;
    try {
      bytes = Files.readAllBytes(path);
    } catch (NoSuchFileException e) {
      throw new BadInput(path.toString(), 1, 1, "no file", "a job; 'job new' begins one");
    } catch (IOException e) {
      throw new BadInput(path.toString(), 1, 1, "no file that can be read", "a job");
    }
    String text = new String(bytes, StandardCharsets.UTF_8);
    List<String> lines = new ArrayList<>();
    int from = 0;
    while (from < text.length()) {
      int end = text.indexOf('\n', from);
      String line = text.substring(from, end < 0 ? text.length() : end);
      boolean last = end < 0 || end == text.length() - 1;
      Optional<String> wrong = wrong(line, lines);
      if (wrong.isPresent()) {
        if (last && end < 0) {
          return new CheckedLines(List.copyOf(lines), Optional.of(line));
        }
        throw new BadInput(
            path.toString(), lines.size() + 1, 1, wrong.get(), "the line as it was written");
      }
      lines.add(line);
      from = end < 0 ? text.length() : end + 1;
    }
    return new CheckedLines(List.copyOf(lines), Optional.empty());
  }

  /** What is wrong with a line behind these, if anything is. */
  private static Optional<String> wrong(String line, List<String> before) {
    int at = line.lastIndexOf(CHECK);
    if (at < 0 || !line.equals(checked(line.substring(0, at)))) {
      return Optional.of("a line that does not agree with its check");
    }
    return line.startsWith("{\"line\":" + (before.size() + 1) + ",")
            && line.substring(0, at).endsWith("\"before\":\"" + before(before) + "\"")
        ? Optional.empty()
        : Optional.of("a line that does not follow the one before");
  }

  private static String before(List<String> lines) {
    return lines.isEmpty() ? "" : digest(lines.get(lines.size() - 1));
  }

  private static String checked(String body) {
    return body + CHECK + digest(body) + "\"}";
  }

  private static String digest(String text) {
    try {
      byte[] sum =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(sum).substring(0, CHECK_DIGITS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("SHA-256 is missing from this Java", e);
    }
  }

  /** Writes one more line behind these, and comes back when the disc has it. */
  void append(Path path, String what, Map<String, Object> fields) {
    write(path, line(what, fields));
  }

  private String line(String what, Map<String, Object> fields) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("line", lines.size() + 1);
    all.put("what", what);
    all.putAll(fields);
    all.put("before", before(lines));
    String json = json(all);
    return checked(json.substring(0, json.length() - 1));
  }

  private void write(Path path, String line) {
    long at = 0;
    for (String whole : lines) {
      at += whole.getBytes(StandardCharsets.UTF_8).length + 1L;
    }
    // The last whole line may have lost its line end: it is written again.
    String text = lines.isEmpty() ? line + "\n" : "\n" + line + "\n";
    long from = lines.isEmpty() ? 0 : at - 1;
    try (FileChannel out =
        FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      out.truncate(from);
      ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
      out.position(from);
      while (bytes.hasRemaining()) {
        out.write(bytes);
      }
      out.force(true);
    } catch (IOException e) {
      throw new BadInput(
          path.toString(),
          lines.size() + 1,
          1,
          "no file that can be written (" + e.getClass().getSimpleName() + ")",
          "a job in a directory of one's own");
    }
  }

  private static String json(Map<String, Object> fields) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
      value(json, fields);
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory cannot fail to be written", e);
    }
    return out.toString();
  }

  private static void value(JsonGenerator json, Object value) throws IOException {
    if (value instanceof Map<?, ?> map) {
      json.writeStartObject();
      for (Map.Entry<?, ?> e : map.entrySet()) {
        json.writeFieldName((String) e.getKey());
        value(json, e.getValue());
      }
      json.writeEndObject();
    } else if (value instanceof List<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        value(json, item);
      }
      json.writeEndArray();
    } else if (value instanceof BigDecimal number) {
      json.writeNumber(number);
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else {
      json.writeString((String) value);
    }
  }
}
