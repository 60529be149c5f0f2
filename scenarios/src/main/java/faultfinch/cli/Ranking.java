package faultfinch.cli;

import faultfinch.diagnosis.Belief;
import faultfinch.diagnosis.Share;
import faultfinch.diagnosis.Suspect;
import faultfinch.diagnosis.Suspects;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * What is believed, gathered by the part where it is and there by the repair that is due, the
 * likeliest first. By part, since a hand goes to one place: a chip that is to be exchanged, or its
 * socket, are not two candidates.
 */
final class Ranking {
  private static final int WIDTH = 100;
  private static final int SHOWN = 3;

  /** Of many alike so many are named. */
  private static final int NAMED = 8;

  /** What is less likely than this is told only if it is the likeliest. */
  private static final double TOLD_FROM = 0.005;

  /**
   * Faults that have something in common.
   *
   * @param what a part, or a repair, in words
   * @param faults behind it, the likeliest first
   */
  private record Group(String what, double belief, List<Share> faults) {}

  /**
   * One place of a board, or several alike.
   *
   * @param parts with what is believed of each, the likeliest first: a reference, track or lead
   * @param repairs that are due there, the likeliest first
   * @param faults behind it, the likeliest first
   */
  record Row(List<Share> parts, List<Share> repairs, List<Share> faults) {
    Row {
      parts = List.copyOf(parts);
      repairs = List.copyOf(repairs);
      faults = List.copyOf(faults);
    }

    /** Several rows in one. */
    static Row of(List<Row> rows) {
      return new Row(
          together(rows, Row::parts), together(rows, Row::repairs), together(rows, Row::faults));
    }

    private static List<Share> together(List<Row> rows, Function<Row, List<Share>> which) {
      return rows.stream()
          .flatMap(r -> which.apply(r).stream())
          .sorted(Comparator.comparingDouble(Share::belief).reversed())
          .toList();
    }

    /** The only part, or the likeliest. */
    String part() {
      return parts.get(0).what();
    }

    /** The parts by name, the likeliest of them where there are many. */
    String called(Words words) {
      if (parts.size() == 1) {
        return part();
      }
      List<String> refs = parts.stream().map(Share::what).limit(NAMED).toList();
      return words.say("rank.one-of", named(refs, words));
    }

    /** The first of the parts, and how many more there are. */
    private String named(List<String> some, Words words) {
      int more = parts.size() - some.size();
      return String.join(", ", some) + (more > 0 ? words.say("rank.and-more", more) : "");
    }

    double belief() {
      return parts.stream().mapToDouble(Share::belief).sum();
    }
  }

  private final Belief belief;
  private final Suspects suspects;
  private final int most;
  private final List<Row> places = new ArrayList<>();
  private final List<Row> rows;

  /**
   * @param most rows
   */
  Ranking(Belief belief, Known known, int most) {
    this.belief = belief;
    suspects = known.diagnosis().suspects();
    this.most = most;
    for (Group at : grouped(belief.faults(), Suspect::place)) {
      List<Share> repairs =
          grouped(at.faults, s -> s.repair().text()).stream()
              .map(g -> new Share(g.what, g.belief))
              .toList();
      places.add(new Row(List.of(new Share(at.what, at.belief)), repairs, at.faults));
    }
    rows = first(new Alike(known.board()).gathered(places));
  }

  private List<Group> grouped(List<Share> faults, Function<Suspect, String> by) {
    Map<String, List<Share>> groups = new LinkedHashMap<>();
    for (Share fault : faults) {
      String what = by.apply(suspects.of(fault.what()));
      groups.computeIfAbsent(what, k -> new ArrayList<>()).add(fault);
    }
    List<Group> all = new ArrayList<>();
    groups.forEach(
        (what, of) ->
            all.add(
                new Group(what, of.stream().mapToDouble(Share::belief).sum(), List.copyOf(of))));
    all.sort(Comparator.comparingDouble(Group::belief).reversed());
    return all;
  }

  private <T> List<T> first(List<T> all) {
    return all.subList(0, Math.min(most, all.size()));
  }

  List<Row> rows() {
    return List.copyOf(rows);
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
        words.say("rank.head.part"),
        words.say("rank.head.repair"));
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      columns.row(
          String.valueOf(i + 1),
          Figures.perCent(row.belief(), words),
          row.parts().size() == 1 ? row.part() : words.say("rank.one-of", row.parts().size()),
          row.parts().size() == 1 ? shares(row.repairs(), words) : alike(row, words));
      columns.row("", "", "", words.say("rank.for", shares(row.faults(), words)));
    }
    columns.print(terminal.out(), WIDTH);
    if (!heads) {
      besides(terminal);
    }
  }

  /** What is due at the likeliest of several, and how likely each of them is. */
  private static String alike(Row row, Words words) {
    List<String> each = new ArrayList<>();
    row.parts().stream()
        .limit(NAMED)
        .forEach(
            part ->
                each.add(
                    words.say("rank.share", part.what(), Figures.perCent(part.belief(), words))));
    return words.say("rank.alike", row.named(each, words), row.repairs().get(0).what());
  }

  private void besides(Terminal terminal) {
    Words words = terminal.words();
    terminal.say(
        "rank.besides",
        Figures.perCent(belief.two(), words),
        Figures.perCent(belief.outside(), words));
  }

  /** The likeliest, a single one without its share. */
  private static String shares(List<Share> all, Words words) {
    if (all.size() == 1) {
      return all.get(0).what();
    }
    List<Share> told = all.stream().limit(SHOWN).filter(s -> s.belief() >= TOLD_FROM).toList();
    List<String> shown = new ArrayList<>();
    for (Share s : told.isEmpty() ? all.subList(0, 1) : told) {
      shown.add(words.say("rank.share", s.what(), Figures.perCent(s.belief(), words)));
    }
    int more = all.size() - shown.size();
    return String.join("; ", shown) + (more > 0 ? words.say("rank.more", more) : "");
  }

  /** By repair as {@code candidates}, by part as {@code parts}, those alike as {@code alike}. */
  Map<String, Object> json() {
    Map<String, Object> json = new LinkedHashMap<>();
    List<Object> candidates = new ArrayList<>();
    for (Group due : first(grouped(belief.faults(), s -> s.repair().text()))) {
      List<String> places =
          due.faults.stream().map(f -> suspects.of(f.what()).place()).distinct().toList();
      Map<String, Object> object = JsonPage.object("repair", due.what, "belief", due.belief);
      object.put("parts", (Object) places);
      object.put("faults", faults(due.faults));
      object.put("faultsInAll", due.faults.size());
      candidates.add(object);
    }
    json.put("candidates", candidates);
    List<Object> parts = new ArrayList<>();
    for (Row row : first(places)) {
      List<Object> repairs = new ArrayList<>();
      row.repairs()
          .forEach(r -> repairs.add(JsonPage.object("repair", r.what(), "belief", r.belief())));
      Map<String, Object> object = JsonPage.object("part", row.part(), "belief", row.belief());
      object.put("repairs", repairs);
      object.put("faults", faults(row.faults()));
      parts.add(object);
    }
    json.put("parts", parts);
    List<Object> alike = new ArrayList<>();
    for (Row row : rows) {
      if (row.parts().size() > 1) {
        List<String> refs = row.parts().stream().map(Share::what).toList();
        alike.add(JsonPage.object("parts", refs, "belief", row.belief()));
      }
    }
    json.put("alike", alike);
    json.put("twoFaults", belief.two());
    json.put("outside", belief.outside());
    json.put("cured", belief.cured());
    return json;
  }

  private static List<Object> faults(List<Share> all) {
    List<Object> faults = new ArrayList<>();
    all.stream()
        .limit(SHOWN)
        .forEach(f -> faults.add(JsonPage.object("fault", f.what(), "belief", f.belief())));
    return faults;
  }
}
