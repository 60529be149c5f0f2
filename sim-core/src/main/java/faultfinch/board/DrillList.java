package faultfinch.board;

import faultfinch.part.Element;
import faultfinch.part.PartCatalog;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The drills of a board file. A line is written as its signs, which are found on the keys. */
final class DrillList {
  private static final String KEY = "key ";
  private static final String SPACE = KEY + "SPACE";
  private static final String END_OF_LINE = KEY + "ENTER";
  private static final List<String> STEPS = List.of("line", "hold", "free", "awaitMs");
  private static final int LONGEST_MS = 60_000;

  private final List<Located> items;
  private final PartList parts;

  /** References of keys by the sign that they bring, as typed without another key. */
  private final Map<String, String> keys = new LinkedHashMap<>();

  DrillList(List<Located> items, PartList parts) {
    this.items = items;
    this.parts = parts;
    for (PlacedPart part : parts.parts()) {
      if (part.type() == PartCatalog.KEY && part.role().startsWith(KEY)) {
        String mark = part.role().substring(KEY.length());
        keys.put(part.role().equals(SPACE) ? " " : signOf(mark), part.ref());
      }
    }
  }

  /** A key with a letter types the small one. */
  private static String signOf(String mark) {
    return mark.length() == 1 ? mark.toLowerCase(Locale.ROOT) : KEY + mark;
  }

  List<Drill> drills() {
    Set<String> names = new HashSet<>();
    List<Drill> drills = new ArrayList<>();
    for (Located item : items) {
      item.keys(List.of("name", "steps"), List.of("recorder"));
      String name = item.get("name").oneOf(Drill.NAMES);
      if (!names.add(name)) {
        throw item.get("name").wrong("'" + name + "' again", "each drill once");
      }
      Optional<String> recorder = item.find("recorder").map(this::recorder);
      List<Drill.Step> steps = item.get("steps").items().stream().map(this::step).toList();
      for (int i = 0; i < steps.size() && recorder.isEmpty(); i++) {
        if (steps.get(i) instanceof Drill.Await) {
          throw item.get("steps")
              .items()
              .get(i)
              .wrong(
                  "'awaitMs' in a drill without 'recorder'", "a recorder whose tape to wait for");
        }
      }
      drills.add(new Drill(name, recorder, steps));
    }
    return drills;
  }

  private String recorder(Located ref) {
    PlacedPart part = parts.named(ref);
    if (part.type() != PartCatalog.TAPE_RECORDER) {
      throw ref.wrong(part.ref() + ", a part of type " + part.type().type(), "a tape recorder");
    }
    return part.ref();
  }

  private Drill.Step step(Located step) {
    if (step.entries().size() != 1) {
      throw step.wrong("a step with " + step.entries().size() + " keys", "a step with one key");
    }
    step.keys(List.of(), STEPS);
    Located.Entry only = step.entries().get(0);
    return switch (only.key().text()) {
      case "line" -> new Drill.Line(line(only.value()));
      case "hold" -> new Drill.Hold(moved(only.value()));
      case "free" -> new Drill.Free(moved(only.value()));
      default -> new Drill.Await(only.value().whole(1, LONGEST_MS));
    };
  }

  private List<String> line(Located text) {
    List<String> refs = new ArrayList<>();
    String line = text.words();
    for (int i = 0; i < line.length(); i++) {
      String sign = line.substring(i, i + 1);
      String ref = keys.get(sign);
      if (ref == null) {
        throw text.wrongAt(i, "'" + sign + "'", "a sign that a key of the board types by itself");
      }
      refs.add(ref);
    }
    String end = keys.get(END_OF_LINE);
    if (end == null) {
      throw text.wrong("a line on a board without '" + END_OF_LINE + "'", "a board with that key");
    }
    refs.add(end);
    return refs;
  }

  /** Switches and potentiometers. */
  private List<String> moved(Located list) {
    List<String> refs = new ArrayList<>();
    for (Located ref : list.items()) {
      PlacedPart part = parts.named(ref);
      boolean moves =
          part.type().part() instanceof Element e
              && (e.kind() == Element.Kind.SWITCH || e.kind() == Element.Kind.POTENTIOMETER);
      if (!moves) {
        throw ref.wrong(
            part.ref() + ", a part of type " + part.type().type(), "a switch or a potentiometer");
      }
      refs.add(part.ref());
    }
    return refs;
  }
}
