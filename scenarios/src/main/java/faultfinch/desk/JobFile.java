package faultfinch.desk;

import faultfinch.board.Located;
import faultfinch.signal.BadInput;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
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
    CheckedLines whole = CheckedLines.read(path);
    if (whole.lines().isEmpty()) {
      throw new BadInput(file, 1, 1, "no whole line", "a job; 'job new' begins one");
    }
    Located first = located(file, whole.lines(), 0);
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
    for (int i = 1; i < whole.lines().size(); i++) {
      items.add(item(located(file, whole.lines(), i)));
    }
    return new JobFile(first.get("board").words(), intake, items, whole.cut());
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
    if (Files.exists(path) && !CheckedLines.read(path).lines().isEmpty()) {
      throw new BadInput(path.toString(), 1, 1, "a job that was begun", "a new name");
    }
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("format", VERSION);
    fields.put("board", board);
    fields.putAll(intake);
    fields.put("at", at);
    CheckedLines.NONE.append(path, "job", fields);
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
    CheckedLines whole = CheckedLines.read(path);
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("at", at);
    fields.put(key, value);
    if (!remarks.isEmpty()) {
      fields.put("remarks", remarks);
    }
    whole.append(path, kind.word(), fields);
  }

  /** A line as a value, in its own line of the file for what is said about it. */
  private static Located located(String file, List<String> lines, int index) {
    String text = "\n".repeat(index) + lines.get(index);
    return Located.read(file, text.getBytes(StandardCharsets.UTF_8));
  }
}
