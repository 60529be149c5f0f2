package faultfinch.board;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A file that says in what another board differs from a described one: parts that are taken away,
 * fitted otherwise or added, nets that are drawn anew, dropped or go on. Laid over the board file
 * it makes one description, every piece of which still knows the file and line it stands in.
 */
final class Overlay {
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]*");
  private static final int VERSION = 1;
  private static final List<String> OPTIONAL =
      List.of("takes", "fits", "parts", "drops", "nets", "joins", "unconnected", "power", "right");

  /** What stands in an overlay as it stands in a board. */
  private static final List<String> INSTEAD = List.of("power", "right");

  private final Located root;
  private final Set<String> takes = new LinkedHashSet<>();

  Overlay(String shown, byte[] bytes) {
    root =
        Located.read(shown, bytes)
            .keys(List.of("format", "name", "title", "about", "ticks"), OPTIONAL);
    root.get("format").whole(VERSION, VERSION);
    name();
    title();
    about();
    root.get("ticks").entries().forEach(e -> e.value().words());
    list("takes").forEach(ref -> takes.add(ref.text()));
  }

  String name() {
    return root.get("name").text(NAME, "small letters, digits and hyphens, a letter first");
  }

  String title() {
    return root.get("title").words();
  }

  String about() {
    return root.get("about").words();
  }

  /** What it says of the ticks, each with the tick's name as the key. */
  List<Located.Entry> ticks() {
    return root.get("ticks").entries();
  }

  /** The board file with this laid over it, the parts taken away left out. */
  Located over(Located board) {
    List<Located.Entry> entries = new ArrayList<>();
    for (Located.Entry entry : board.entries()) {
      entries.add(
          switch (entry.key().text()) {
            case "parts" -> new Located.Entry(entry.key(), parts(entry.value()));
            case "nets" -> new Located.Entry(entry.key(), nets(entry.value()));
            case "worthTakingOut" -> new Located.Entry(entry.key(), inSockets(entry.value()));
            case "unconnected" -> new Located.Entry(entry.key(), unconnected(entry.value()));
            default -> instead(entry);
          });
    }
    for (String key : List.of("unconnected", "right")) {
      boolean had = board.find(key).isPresent();
      root.entries().stream().filter(e -> !had && e.key().text().equals(key)).forEach(entries::add);
    }
    return board.with(entries);
  }

  private Located.Entry instead(Located.Entry entry) {
    String key = entry.key().text();
    return INSTEAD.contains(key)
        ? root.find(key).map(v -> new Located.Entry(entry.key(), v)).orElse(entry)
        : entry;
  }

  private Located parts(Located board) {
    Map<String, Located> byRef = new LinkedHashMap<>();
    board.items().forEach(p -> byRef.put(p.get("ref").text(), p));
    for (Located ref : list("takes")) {
      if (!byRef.containsKey(ref.text())) {
        throw ref.wrong(
            "unknown part '" + ref.text() + "'", NearNames.of(ref.text(), byRef.keySet()));
      }
    }
    Map<String, Located> fits = new LinkedHashMap<>();
    for (Located.Entry fit : entries("fits")) {
      String ref = fit.key().text();
      if (!byRef.containsKey(ref) || takes.contains(ref)) {
        Set<String> stay = new LinkedHashSet<>(byRef.keySet());
        stay.removeAll(takes);
        throw fit.key().wrong("unknown part '" + ref + "'", NearNames.of(ref, stay));
      }
      fits.put(ref, fit.value());
    }
    List<Located> items = new ArrayList<>();
    for (Located part : board.items()) {
      String ref = part.get("ref").text();
      if (!takes.contains(ref)) {
        items.add(fits.containsKey(ref) ? fitted(part, fits.get(ref)) : part);
      }
    }
    items.addAll(list("parts"));
    return board.of(items);
  }

  private static Located fitted(Located part, Located changes) {
    List<Located.Entry> entries = new ArrayList<>();
    Set<String> changed = new LinkedHashSet<>();
    changes.entries().forEach(e -> changed.add(e.key().text()));
    part.entries().stream().filter(e -> !changed.contains(e.key().text())).forEach(entries::add);
    changes
        .find("ref")
        .ifPresent(
            ref -> {
              throw ref.wrong("another reference", "a part that keeps its own");
            });
    entries.addAll(changes.entries());
    return part.with(entries);
  }

  /** Parts of the board that are taken away, which its nets still name. */
  List<Located> taken(Located board) {
    return board.get("parts").items().stream()
        .filter(p -> takes.contains(p.get("ref").text()))
        .toList();
  }

  /** References of the parts it adds. */
  Set<String> added() {
    Set<String> refs = new LinkedHashSet<>();
    list("parts").forEach(p -> refs.add(p.get("ref").text()));
    return refs;
  }

  /** Duties of those parts. */
  List<Located> duties() {
    return list("parts").stream().flatMap(p -> p.find("duty").stream()).toList();
  }

  private Located nets(Located board) {
    Map<String, Located.Entry> byName = new LinkedHashMap<>();
    board.entries().forEach(e -> byName.put(e.key().text(), e));
    for (Located drop : list("drops")) {
      if (byName.remove(drop.text()) == null) {
        throw drop.wrong(
            "unknown net '" + drop.text() + "'", NearNames.of(drop.text(), byName.keySet()));
      }
    }
    entries("nets").forEach(e -> byName.put(e.key().text(), e));
    for (Located.Entry join : entries("joins")) {
      String name = join.key().text();
      if (!byName.containsKey(name)) {
        throw join.key().wrong("unknown net '" + name + "'", NearNames.of(name, byName.keySet()));
      }
    }
    return board.with(List.copyOf(byName.values()));
  }

  /** Chips that can still be taken out as they could. */
  private Located inSockets(Located board) {
    Set<String> soldered = new LinkedHashSet<>(takes);
    entries("fits").stream()
        .filter(e -> e.value().find("socketed").filter(s -> !s.truth()).isPresent())
        .forEach(e -> soldered.add(e.key().text()));
    return board.of(board.items().stream().filter(r -> !soldered.contains(r.text())).toList());
  }

  /**
   * Pins the board leaves unconnected stay so unless their part is gone or a track here has them.
   */
  private Located unconnected(Located board) {
    Set<String> wired = new LinkedHashSet<>();
    List<Located> tracks = new ArrayList<>();
    entries("nets").forEach(e -> tracks.add(e.value()));
    entries("joins").forEach(e -> tracks.addAll(e.value().items()));
    tracks.forEach(t -> wired.addAll(List.of(t.text().split("[ ()]+"))));
    List<Located> items = new ArrayList<>();
    for (Located pin : board.items()) {
      String ref = pin.text().replaceFirst("\\..*", "");
      if (!takes.contains(ref) && !wired.contains(pin.text())) {
        items.add(pin);
      }
    }
    items.addAll(list("unconnected"));
    return board.of(items);
  }

  /** Tracks that go on from a pad of a net of this name. */
  List<Located> joins(String net) {
    return root.find("joins").flatMap(j -> j.find(net)).map(Located::items).orElse(List.of());
  }

  /** Whether a value stands in this file. */
  boolean holds(Located value) {
    return value.file().equals(root.file());
  }

  private List<Located> list(String key) {
    return root.find(key).map(Located::items).orElse(List.of());
  }

  private List<Located.Entry> entries(String key) {
    return root.find(key).map(Located::entries).orElse(List.of());
  }
}
