package faultfinch.desk;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import faultfinch.board.Located;
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
import java.util.Collections;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * A job as one file, a line of JSON for everything that was noted or done. Each line carries a
 * check of itself and of the line before, and is on the disc before the program goes on: a kill at
 * any moment costs at most the line that was being written, and that is told.
 *
 * @param board name of the board
 * @param intake what was said of the job when it came, by the names of the fields
 * @param items in order
 * @param cut what of a half-written last line was left out; empty if there was none
 */
public record JobFile(
    String board, Map<String, String> intake, List<Item> items, Optional<String> cut) {
  private static final int VERSION = 1;
  private static final String CHECK = ",\"check\":\"";
  private static final int CHECK_DIGITS = 8;
  private static final List<String> INTAKE = List.of("owner", "complaint");

  /** What a line is of. */
  public enum Kind {
    NOTE,
    REPAIR,
    ACCEPT,
    CAUTION;

    private String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * One line after the first.
   *
   * @param at when, in ISO form to the minute
   * @param text what was noted, done, accepted or to be careful of
   * @param line the entry or repair of it, if it has one
   * @param remarks what goes with it: the part fitted, or what was believed after a note
   */
  public record Item(
      Kind kind, String at, String text, Optional<EntryFile.Line> line, List<String> remarks) {
    public Item {
      remarks = List.copyOf(remarks);
    }
  }

  public JobFile {
    intake = Collections.unmodifiableMap(new LinkedHashMap<>(intake));
    items = List.copyOf(items);
  }

  /** Entries and repairs, in order. */
  public List<EntryFile.Line> lines() {
    return items.stream().flatMap(i -> i.line().stream()).toList();
  }

  /**
   * Reads a job.
   *
   * @throws BadInput if it is none, or a line was changed, lost or moved
   */
  public static JobFile read(Path path) {
    String file = path.toString();
    Whole whole = whole(path);
    if (whole.lines.isEmpty()) {
      throw new BadInput(file, 1, 1, "no whole line", "a job; 'job new' begins one");
    }
    Located first = located(file, whole.lines, 0);
    first.keys(
        List.of("line", "what", "format", "board", "before", "check"),
        List.of("owner", "complaint", "at"));
    first.get("what").oneOf(List.of("job"));
    first.get("format").whole(VERSION, VERSION);
    Map<String, String> intake = new LinkedHashMap<>();
    for (String key : INTAKE) {
      first.find(key).ifPresent(v -> intake.put(key, v.text()));
    }
    first.find("at").ifPresent(v -> intake.put("at", v.text()));
    List<Item> items = new ArrayList<>();
    for (int i = 1; i < whole.lines.size(); i++) {
      items.add(item(located(file, whole.lines, i)));
    }
    return new JobFile(first.get("board").words(), intake, items, whole.cut);
  }

  private static Item item(Located line) {
    line.keys(
        List.of("line", "what", "at", "before", "check"), List.of("entry", "text", "remarks"));
    List<String> words = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      words.add(kind.word());
    }
    Kind kind = Kind.values()[words.indexOf(line.get("what").oneOf(words))];
    Optional<EntryFile.Line> entry = line.find("entry").map(EntryFile::line);
    String text =
        entry
            .map(
                e ->
                    e instanceof EntryFile.Line.Noted n
                        ? n.entry().says()
                        : ((EntryFile.Line.Repaired) e).words().text())
            .orElseGet(() -> line.get("text").words());
    List<String> remarks =
        line.find("remarks")
            .map(r -> r.items().stream().map(Located::text).toList())
            .orElse(List.of());
    return new Item(kind, line.get("at").text(), text, entry, remarks);
  }

  /** Begins a job; a file without one whole line is begun anew. */
  public static void begin(Path path, String board, Map<String, String> intake, String at) {
    if (Files.exists(path) && !whole(path).lines.isEmpty()) {
      throw new BadInput(path.toString(), 1, 1, "a job that was begun", "a new name");
    }
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("format", VERSION);
    fields.put("board", board);
    fields.putAll(intake);
    fields.put("at", at);
    write(path, List.of(), line(List.of(), "job", fields));
  }

  /** Adds something noted. */
  public static void note(Path path, Entry entry, List<String> remarks, String at) {
    append(path, Kind.NOTE, "entry", EntryFile.fields(entry), remarks, at);
  }

  /** Adds a repair. */
  public static void repaired(Path path, String words, List<String> remarks, String at) {
    append(path, Kind.REPAIR, "entry", Map.of("repaired", words), remarks, at);
  }

  /** Adds a line of words only. */
  public static void add(Path path, Kind kind, String text, String at) {
    append(path, kind, "text", text, List.of(), at);
  }

  private static void append(
      Path path, Kind kind, String key, Object value, List<String> remarks, String at) {
    Whole whole = whole(path);
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("at", at);
    fields.put(key, value);
    if (!remarks.isEmpty()) {
      fields.put("remarks", remarks);
    }
    write(path, whole.lines, line(whole.lines, kind.word(), fields));
  }

  /** The lines of a file that are whole, and what is left of one that is not. */
  private record Whole(List<String> lines, Optional<String> cut) {}

  private static Whole whole(Path path) {
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
          return new Whole(List.copyOf(lines), Optional.of(line));
        }
        throw new BadInput(
            path.toString(), lines.size() + 1, 1, wrong.get(), "the line as it was written");
      }
      lines.add(line);
      from = end < 0 ? text.length() : end + 1;
    }
    return new Whole(List.copyOf(lines), Optional.empty());
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
      return HexFormat.of().formatHex(sum).substring(0, 2 * CHECK_DIGITS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("SHA-256 is missing from this Java", e);
    }
  }

  /** A line as a value, in its own line of the file for what is said about it. */
  private static Located located(String file, List<String> lines, int index) {
    String text = "\n".repeat(index) + lines.get(index);
    return Located.read(file, text.getBytes(StandardCharsets.UTF_8));
  }

  private static String line(List<String> lines, String what, Map<String, Object> fields) {
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("line", lines.size() + 1);
    all.put("what", what);
    all.putAll(fields);
    all.put("before", before(lines));
    String json = json(all);
    return checked(json.substring(0, json.length() - 1));
  }

  /** Writes behind the whole lines, and comes back when the disc has it. */
  private static void write(Path path, List<String> lines, String line) {
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
