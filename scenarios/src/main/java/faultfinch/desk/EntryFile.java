package faultfinch.desk;

import faultfinch.bench.BenchRom;
import faultfinch.board.Located;
import faultfinch.diagnosis.Observation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A file of entries, for another program to write. Its schema is entries.schema.json; whatever is
 * not right is a {@code BadInput} with file, line and column.
 *
 * @param board name of the board
 */
public record EntryFile(String board, List<Line> lines) {
  private static final int VERSION = 1;
  private static final int MOST_TIMES = 1000;
  private static final List<String> WHO = List.of("own eyes", "instrument", "owner");
  private static final List<String> SURE = List.of("sure", "fairly", "hardly");
  private static final List<String> CLIMATES = List.of("usual", "cold", "warm");

  public EntryFile {
    lines = List.copyOf(lines);
  }

  /** One thing of a file, in its order. */
  public sealed interface Line {

    /** Something noted. */
    record Noted(Entry entry) implements Line {}

    /**
     * A repair that was done.
     *
     * @param words the text, which knows its place
     */
    record Repaired(Located words) implements Line {}
  }

  /** Reads a file. */
  public static EntryFile read(String file, byte[] json) {
    Located root = Located.read(file, json).keys(List.of("format", "board", "entries"), List.of());
    root.get("format").whole(VERSION, VERSION);
    List<Line> lines = new ArrayList<>();
    root.get("entries").items().forEach(item -> lines.add(line(item)));
    return new EntryFile(root.get("board").words(), lines);
  }

  /** One entry or repair. */
  static Line line(Located item) {
    if (item.find("repaired").isPresent()) {
      item.keys(List.of("repaired"), List.of());
      item.get("repaired").words();
      return new Line.Repaired(item.get("repaired"));
    }
    boolean parted = item.find("says").isEmpty() && item.find("look").isPresent();
    List<String> optional = List.of("who", "sure", "times", "when");
    item.keys(parted ? List.of("look", "shows") : List.of("says"), optional);
    String says =
        parted
            ? item.get("look").words() + ": " + item.get("shows").words()
            : item.get("says").words();
    String where = item.file() + ":" + item.line() + ":" + item.column();
    return new Line.Noted(
        new Entry(
            says + item.find("times").map(EntryFile::times).orElse(""),
            item.find("who")
                .map(w -> Entry.Who.values()[WHO.indexOf(w.oneOf(WHO))])
                .orElse(Entry.Who.OWN_EYES),
            item.find("sure")
                .map(s -> Observation.Doubt.values()[SURE.indexOf(s.oneOf(SURE))])
                .orElse(Observation.Doubt.SURE),
            item.find("when").map(EntryFile::when),
            Optional.of(where)));
  }

  private static String times(Located times) {
    List<Located> two = times.items(2);
    int of = two.get(1).whole(1, MOST_TIMES);
    return " " + two.get(0).whole(0, of) + " of " + of + " times";
  }

  private static Conditions when(Located when) {
    when.keys(List.of(), List.of("out", "volts", "climate", "benchRom", "returnLeads", "also"));
    return new Conditions(
        texts(when.find("out")),
        when.find("volts").map(v -> v.number("0", "30")),
        when.find("climate")
            .map(c -> Observation.Climate.values()[CLIMATES.indexOf(c.oneOf(CLIMATES))])
            .orElse(Observation.Climate.USUAL),
        rom(when),
        texts(when.find("also")));
  }

  /** The leads join ports for the bench ROM only, so who names them has it in. */
  private static Optional<BenchRom> rom(Located when) {
    if (when.find("returnLeads").map(Located::truth).orElse(false)) {
      return Optional.of(BenchRom.WITH_LEADS);
    }
    return when.find("benchRom").filter(Located::truth).map(in -> BenchRom.ALONE);
  }

  private static List<String> texts(Optional<Located> list) {
    return list.map(l -> l.items().stream().map(Located::words).toList()).orElse(List.of());
  }

  /** An entry as its fields, in the form this reads. */
  static Map<String, Object> fields(Entry entry) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("says", entry.says());
    fields.put("who", WHO.get(entry.who().ordinal()));
    fields.put("sure", SURE.get(entry.doubt().ordinal()));
    entry
        .when()
        .ifPresent(
            when -> {
              Map<String, Object> stands = new LinkedHashMap<>();
              stands.put("out", when.out());
              when.volts().ifPresent(v -> stands.put("volts", v));
              stands.put("climate", CLIMATES.get(when.climate().ordinal()));
              stands.put("benchRom", when.benchRom());
              stands.put("returnLeads", when.rom().equals(Optional.of(BenchRom.WITH_LEADS)));
              stands.put("also", when.also());
              fields.put("when", stands);
            });
    return fields;
  }
}
