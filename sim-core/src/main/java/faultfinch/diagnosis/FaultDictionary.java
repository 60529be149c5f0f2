package faultfinch.diagnosis;

import faultfinch.fault.Fault;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The signature of every fault of one board: what each look shows. Faults that no look can tell
 * apart share a row, looks that split the faults alike share a column.
 *
 * <p>A cell is a number; what it stands for is kept by look. 0 is always what the healthy board
 * shows, others follow in the order in which rows show them, so that two looks with the same
 * partition have the same numbers.
 */
public final class FaultDictionary {

  /** The row of the board without a fault. */
  public static final int HEALTHY = 0;

  /**
   * One look.
   *
   * @param outcomes what it can show, by cell value
   */
  record Column(String look, int cells, List<String> outcomes) {
    Column {
      outcomes = List.copyOf(outcomes);
    }
  }

  private final Origin origin;
  private final List<Column> columns;
  private final List<String> looks;
  private final List<String> dropped;
  private final Map<String, Integer> rowOfFault;
  private final Optional<Set<String>> excited;
  private final Map<String, Integer> indexOfLook = new LinkedHashMap<>();
  private final Cells cells;

  FaultDictionary(
      Origin origin,
      List<Column> columns,
      List<String> dropped,
      Map<String, Integer> rowOfFault,
      Optional<Set<String>> excited,
      Cells cells) {
    this.origin = origin;
    this.columns = List.copyOf(columns);
    this.looks = columns.stream().map(Column::look).toList();
    this.dropped = List.copyOf(dropped);
    this.rowOfFault = new LinkedHashMap<>(rowOfFault);
    this.excited = excited.map(Set::copyOf);
    this.cells = cells;
    for (int i = 0; i < columns.size(); i++) {
      indexOfLook.put(columns.get(i).look(), i);
    }
  }

  /** What it was computed from. */
  public Origin origin() {
    return origin;
  }

  /** Every look it knows the outcome of, in order of text. */
  public List<String> looks() {
    return looks;
  }

  /** Looks that differ between healthy boards and so tell nothing. */
  public List<String> dropped() {
    return dropped;
  }

  /** Every fault, in the order of the universe. */
  public List<String> faults() {
    return List.copyOf(rowOfFault.keySet());
  }

  /** How many different rows there are, the healthy one included. */
  public int rows() {
    return cells.rows();
  }

  /** How many different partitions the looks make. */
  public int partitions() {
    return cells.columns();
  }

  /** Whether it knows this fault. */
  public boolean knows(String fault) {
    return rowOfFault.containsKey(fault);
  }

  /**
   * The faults that changed anything in their run where it was watched, be it seen by a look or
   * not; empty if the dictionary is of a time when that was not noted.
   */
  public Optional<Set<String>> excited() {
    return excited;
  }

  /** The row of a fault. */
  public int row(String fault) {
    Integer row = rowOfFault.get(fault);
    if (row == null) {
      throw new IllegalArgumentException(
          "found fault '" + fault + "', right would be one of the dictionary of " + origin.board());
    }
    return row;
  }

  /** Index into {@link #looks()}. */
  public OptionalInt look(String look) {
    Integer index = indexOfLook.get(look);
    return index == null ? OptionalInt.empty() : OptionalInt.of(index);
  }

  /** What a look shows with a fault of this row. */
  public String outcome(int look, int row) {
    return columns.get(look).outcomes().get(cell(look, row));
  }

  /** The same as a number: equal numbers of one look are equal outcomes. */
  public int cell(int look, int row) {
    return cells.at(columns.get(look).cells(), row);
  }

  /** All that a look can show, by cell value; the healthy outcome first. */
  public List<String> outcomes(int look) {
    return columns.get(look).outcomes();
  }

  /** Looks of the same partition have the same number here, 0 to {@link #partitions()} - 1. */
  public int partition(int look) {
    return columns.get(look).cells();
  }

  /** Everything a fault of this row shows, by look. */
  public Map<String, String> shows(int row) {
    Map<String, String> shown = new LinkedHashMap<>();
    indexOfLook.forEach((look, index) -> shown.put(look, outcome(index, row)));
    return shown;
  }

  /**
   * Where a rebuilt dictionary is another one: one line each, at most {@code limit} lines, empty if
   * there is no difference.
   */
  public List<String> differences(FaultDictionary rebuilt, int limit) {
    List<String> lines = new ArrayList<>();
    compare(lines, "origin", origin.digest(), rebuilt.origin.digest());
    compare(lines, "faults", faults().toString(), rebuilt.faults().toString());
    compare(lines, "looks", looks().toString(), rebuilt.looks().toString());
    compare(lines, "dropped looks", dropped.toString(), rebuilt.dropped.toString());
    compare(lines, "excited faults", excitation(), rebuilt.excitation());
    if (lines.stream().noneMatch(l -> l.startsWith("faults") || l.startsWith("looks"))) {
      compareRows(lines, "healthy board", HEALTHY, rebuilt, HEALTHY, limit);
      for (Map.Entry<String, Integer> e : rowOfFault.entrySet()) {
        compareRows(lines, e.getKey(), e.getValue(), rebuilt, rebuilt.row(e.getKey()), limit);
      }
    }
    if (lines.isEmpty()
        && !Arrays.equals(DictionaryFile.bytes(this), DictionaryFile.bytes(rebuilt))) {
      lines.add("the same content in other bytes");
    }
    return List.copyOf(lines.subList(0, Math.min(limit, lines.size())));
  }

  private String excitation() {
    return excited.map(e -> faults().stream().filter(e::contains).toList() + "").orElse("unknown");
  }

  private void compareRows(
      List<String> lines, String what, int mine, FaultDictionary rebuilt, int other, int limit) {
    for (int look = 0; look < columns.size() && lines.size() < limit; look++) {
      compare(
          lines,
          what + ", " + columns.get(look).look(),
          outcome(look, mine),
          rebuilt.outcome(look, other));
    }
  }

  private static void compare(List<String> lines, String what, String stored, String rebuilt) {
    if (!stored.equals(rebuilt)) {
      lines.add(what + ": stored " + shortened(stored) + ", computed " + shortened(rebuilt));
    }
  }

  private static String shortened(String text) {
    return "'" + (text.length() > 80 ? text.substring(0, 80) + "..." : text) + "'";
  }

  /**
   * In what some faults depart from the healthy board in some looks; empty if it does not know all
   * of them.
   */
  Optional<List<Departure>> departures(List<Fault> faults, Set<String> of) {
    boolean looked =
        of.stream().allMatch(look -> indexOfLook.containsKey(look) || dropped.contains(look));
    if (!looked || excited.isEmpty() || !faults.stream().allMatch(f -> knows(f.text()))) {
      return Optional.empty();
    }
    List<Departure> departures = new ArrayList<>();
    for (Fault fault : faults) {
      SortedMap<String, String> otherwise = new TreeMap<>();
      for (String look : of) {
        Integer at = indexOfLook.get(look);
        if (at != null && cell(at, row(fault.text())) != HEALTHY) {
          otherwise.put(look, outcome(at, row(fault.text())));
        }
      }
      departures.add(new Departure(otherwise, excited.get().contains(fault.text())));
    }
    return Optional.of(departures);
  }

  /**
   * The rows that some faults have here, as those of another board on which they do the same.
   *
   * @param faults in the order of that board; those it does not know are left out
   */
  FaultDictionary ofOthers(Origin other, List<String> faults) {
    Map<String, Integer> rows = new LinkedHashMap<>();
    faults.stream().filter(this::knows).forEach(f -> rows.put(f, row(f)));
    Optional<Set<String>> left =
        excited.map(e -> rows.keySet().stream().filter(e::contains).collect(Collectors.toSet()));
    return new FaultDictionary(other, columns, dropped, rows, left, cells);
  }

  /** Whether a look shows this with a fault of this row. */
  public boolean shows(int look, int row, String outcome) {
    return outcome(look, row).equals(named(look, outcome));
  }

  /** An outcome as this dictionary names it: all that healthy boards show has one name. */
  public String named(int look, String outcome) {
    String healthy = columns.get(look).outcomes().get(HEALTHY);
    return Steps.isOneOf(outcome, healthy) ? healthy : outcome;
  }

  /** The cell value of an outcome, if any row shows it. */
  Optional<Integer> cellOf(int look, String outcome) {
    int at = columns.get(look).outcomes().indexOf(named(look, outcome));
    return at < 0 ? Optional.empty() : Optional.of(at);
  }

  List<Column> columns() {
    return columns;
  }

  Cells cells() {
    return cells;
  }
}
