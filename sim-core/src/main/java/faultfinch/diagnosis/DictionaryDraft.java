package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;

/** Takes rows one by one and turns them into a dictionary with equal rows and columns once. */
final class DictionaryDraft {
  private static final int MOST_OUTCOMES = 1 << 16;

  private final Origin origin;
  private final List<String> looks = new ArrayList<>();
  private final List<String> dropped = new ArrayList<>();
  private final List<Map<String, Integer>> outcomes = new ArrayList<>();
  private final Map<String, Integer> rowOfCells = new LinkedHashMap<>();
  private final Map<String, Integer> rowOfFault = new LinkedHashMap<>();
  private final Set<String> excited = new LinkedHashSet<>();
  private final long healthyTrail;
  private final int asked;

  /**
   * @param healthy rows of boards without a fault, one or more, of different boards; the first is
   *     the one that faulty boards are compared with
   */
  DictionaryDraft(Origin origin, List<Row> healthy) {
    this.origin = origin;
    SortedMap<String, String> first = healthy.get(0).shows();
    healthyTrail = healthy.get(0).trail();
    asked = first.size();
    first.forEach(
        (look, outcome) -> {
          boolean same =
              healthy.stream().allMatch(other -> outcome.equals(other.shows().get(look)));
          (same ? looks : dropped).add(look);
        });
    looks.forEach(look -> outcomes.add(new LinkedHashMap<>()));
    row("the healthy board", first);
  }

  void add(String fault, Row row) {
    if (rowOfFault.putIfAbsent(fault, row(fault, row.shows())) != null) {
      throw new IllegalArgumentException("found '" + fault + "' twice, right would be once");
    }
    if (row.trail() != healthyTrail) {
      excited.add(fault);
    }
  }

  private int row(String whose, SortedMap<String, String> row) {
    if (row.size() != asked) {
      throw new IllegalArgumentException(
          "found " + row.size() + " looks for " + whose + ", right would be " + asked);
    }
    StringBuilder cells = new StringBuilder(looks.size());
    for (int i = 0; i < looks.size(); i++) {
      String outcome = row.get(looks.get(i));
      if (outcome == null) {
        throw new IllegalArgumentException(
            "found no '" + looks.get(i) + "' for " + whose + ", right would be its outcome");
      }
      Map<String, Integer> known = outcomes.get(i);
      int cell = known.computeIfAbsent(outcome, k -> known.size());
      if (cell >= MOST_OUTCOMES) {
        throw new IllegalArgumentException(
            "found more than " + MOST_OUTCOMES + " outcomes of '" + looks.get(i) + "'");
      }
      cells.append((char) cell);
    }
    return rowOfCells.computeIfAbsent(cells.toString(), k -> rowOfCells.size());
  }

  FaultDictionary done() {
    List<String> rows = List.copyOf(rowOfCells.keySet());
    Map<String, Integer> partitions = new LinkedHashMap<>();
    List<FaultDictionary.Column> columns = new ArrayList<>();
    StringBuilder column = new StringBuilder();
    for (int i = 0; i < looks.size(); i++) {
      column.setLength(0);
      for (String row : rows) {
        column.append(row.charAt(i));
      }
      int at = partitions.computeIfAbsent(column.toString(), k -> partitions.size());
      columns.add(
          new FaultDictionary.Column(looks.get(i), at, List.copyOf(outcomes.get(i).keySet())));
    }
    return new FaultDictionary(
        origin,
        columns,
        dropped,
        rowOfFault,
        Optional.of(excited),
        cells(List.copyOf(partitions.keySet()), rows.size()));
  }

  /** A column takes one byte a row, or two if some look of it has more than 256 outcomes. */
  private static FaultDictionary.Cells cells(List<String> partitions, int rows) {
    int[] starts = new int[partitions.size() + 1];
    for (int i = 0; i < partitions.size(); i++) {
      boolean wide = partitions.get(i).chars().anyMatch(c -> c > 0xFF);
      starts[i + 1] = starts[i] + (wide ? 2 * rows : rows);
    }
    byte[] bytes = new byte[starts[partitions.size()]];
    for (int i = 0; i < partitions.size(); i++) {
      int at = starts[i];
      boolean wide = starts[i + 1] - at == 2 * rows;
      for (int row = 0; row < rows; row++) {
        char cell = partitions.get(i).charAt(row);
        if (wide) {
          bytes[at++] = (byte) (cell >> 8);
        }
        bytes[at++] = (byte) cell;
      }
    }
    return new FaultDictionary.Cells(bytes, rows, starts);
  }
}
