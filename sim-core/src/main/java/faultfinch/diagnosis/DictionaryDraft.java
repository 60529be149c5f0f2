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
  private final Map<String, Integer> indexOfLook = new LinkedHashMap<>();

  /** By look, what stands together as healthy. */
  private final List<String> usual = new ArrayList<>();

  /**
   * @param healthy what boards without a fault show, one or more, of different boards; the first is
   *     the one that faulty boards are compared with
   */
  DictionaryDraft(Origin origin, List<SortedMap<String, String>> healthy) {
    this.origin = origin;
    for (String look : healthy.get(0).keySet()) {
      List<String> shown = healthy.stream().map(board -> board.get(look)).toList();
      Optional<String> together = Steps.together(shown);
      if (together.isPresent()) {
        indexOfLook.put(look, looks.size());
        looks.add(look);
        usual.add(together.get());
        Map<String, Integer> known = new LinkedHashMap<>();
        known.put(together.get(), FaultDictionary.HEALTHY);
        outcomes.add(known);
      } else {
        dropped.add(look);
      }
    }
    rowOfCells.put(new String(new char[looks.size()]), FaultDictionary.HEALTHY);
  }

  void add(String fault, Departure departure) {
    if (rowOfFault.putIfAbsent(fault, row(departure)) != null) {
      throw new IllegalArgumentException("found '" + fault + "' twice, right would be once");
    }
    if (departure.excited()) {
      excited.add(fault);
    }
  }

  private int row(Departure departure) {
    char[] cells = new char[looks.size()];
    departure
        .otherwise()
        .forEach(
            (look, outcome) -> {
              Integer i = indexOfLook.get(look);
              if (i != null) {
                cells[i] = (char) cell(i, outcome);
              }
            });
    return rowOfCells.computeIfAbsent(new String(cells), k -> rowOfCells.size());
  }

  private int cell(int look, String outcome) {
    if (Steps.isOneOf(outcome, usual.get(look))) {
      return FaultDictionary.HEALTHY;
    }
    Map<String, Integer> known = outcomes.get(look);
    int cell = known.computeIfAbsent(outcome, k -> known.size());
    if (cell >= MOST_OUTCOMES) {
      throw new IllegalArgumentException(
          "found more than " + MOST_OUTCOMES + " outcomes of '" + looks.get(look) + "'");
    }
    return cell;
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

  private static Cells cells(List<String> partitions, int rows) {
    Cells.Draft cells = new Cells.Draft(rows, partitions.size(), rows);
    for (String partition : partitions) {
      for (int row = 0; row < rows; row++) {
        if (partition.charAt(row) != FaultDictionary.HEALTHY) {
          cells.keep(row, partition.charAt(row));
        }
      }
      cells.endColumn();
    }
    return cells.done();
  }
}
