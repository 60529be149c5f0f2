package faultfinch.cli;

import faultfinch.diagnosis.Belief;
import faultfinch.diagnosis.Share;
import faultfinch.diagnosis.Suspect;
import faultfinch.diagnosis.Suspects;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/** What is believed, gathered by the repair that is due, the likeliest first. */
final class Ranking {
  private static final int WIDTH = 100;
  private static final int FAULTS_SHOWN = 3;
  private static final int PARTS_SHOWN = 6;

  /**
   * One repair.
   *
   * @param parts where its faults are
   * @param faults behind it, the likeliest first
   */
  record Row(String repair, List<String> parts, double belief, List<Share> faults) {
    Row {
      parts = List.copyOf(parts);
      faults = List.copyOf(faults);
    }
  }

  private final Belief belief;
  private final List<Row> rows;

  /**
   * @param most rows
   */
  Ranking(Belief belief, Suspects suspects, int most) {
    this.belief = belief;
    Map<String, List<Share>> byRepair = new LinkedHashMap<>();
    Map<String, LinkedHashSet<String>> parts = new LinkedHashMap<>();
    for (Share fault : belief.faults()) {
      Suspect suspect = suspects.of(fault.what());
      byRepair.computeIfAbsent(suspect.repair().text(), k -> new ArrayList<>()).add(fault);
      parts
          .computeIfAbsent(suspect.repair().text(), k -> new LinkedHashSet<>())
          .add(suspect.place());
    }
    List<Row> all = new ArrayList<>();
    byRepair.forEach(
        (repair, faults) ->
            all.add(
                new Row(
                    repair,
                    List.copyOf(parts.get(repair)),
                    faults.stream().mapToDouble(Share::belief).sum(),
                    faults)));
    all.sort(Comparator.comparingDouble(Row::belief).reversed());
    rows = List.copyOf(all.subList(0, Math.min(most, all.size())));
  }

  List<Row> rows() {
    return rows;
  }

  void print(Terminal terminal) {
    Words words = terminal.words();
    if (belief.cured() > 0) {
      terminal.say("rank.cured", Figures.perCent(belief.cured(), words));
    }
    double top = rows.isEmpty() ? 0 : rows.get(0).belief();
    boolean heads = belief.outside() > top || belief.two() > top + belief.outside();
    if (heads) {
      besides(terminal);
    }
    Columns columns = new Columns();
    columns.row(
        words.say("rank.head.number"),
        words.say("rank.head.belief"),
        words.say("rank.head.repair"),
        words.say("rank.head.faults"));
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      columns.row(
          String.valueOf(i + 1),
          Figures.perCent(row.belief(), words),
          row.repair(),
          faults(row, words));
    }
    columns.print(terminal.out(), WIDTH);
    List<String> places = new ArrayList<>();
    belief.places().stream()
        .limit(PARTS_SHOWN)
        .forEach(
            s -> places.add(words.say("rank.share", s.what(), Figures.perCent(s.belief(), words))));
    terminal.say("rank.parts", String.join(", ", places));
    if (!heads) {
      besides(terminal);
    }
  }

  private void besides(Terminal terminal) {
    Words words = terminal.words();
    terminal.say(
        "rank.besides",
        Figures.perCent(belief.two(), words),
        Figures.perCent(belief.outside(), words));
  }

  private static String faults(Row row, Words words) {
    List<String> shown = new ArrayList<>();
    row.faults().stream()
        .limit(FAULTS_SHOWN)
        .forEach(
            f -> shown.add(words.say("rank.share", f.what(), Figures.perCent(f.belief(), words))));
    int more = row.faults().size() - FAULTS_SHOWN;
    return String.join("; ", shown) + (more > 0 ? words.say("rank.more", more) : "");
  }

  Map<String, Object> json() {
    Map<String, Object> json = new LinkedHashMap<>();
    List<Object> repairs = new ArrayList<>();
    for (Row row : rows) {
      Map<String, Object> object = new LinkedHashMap<>();
      object.put("repair", row.repair());
      object.put("belief", row.belief());
      object.put("parts", (Object) row.parts());
      List<Object> faults = new ArrayList<>();
      row.faults().stream()
          .limit(FAULTS_SHOWN)
          .forEach(f -> faults.add(JsonPage.object("fault", f.what(), "belief", f.belief())));
      object.put("faults", faults);
      object.put("faultsInAll", row.faults().size());
      repairs.add(object);
    }
    json.put("candidates", repairs);
    List<Object> places = new ArrayList<>();
    belief.places().stream()
        .limit(PARTS_SHOWN)
        .forEach(s -> places.add(JsonPage.object("part", s.what(), "belief", s.belief())));
    json.put("parts", places);
    json.put("twoFaults", belief.two());
    json.put("outside", belief.outside());
    json.put("cured", belief.cured());
    return json;
  }
}
