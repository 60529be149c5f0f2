package faultfinch.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Rows of one shape, printed as a table for people or as JSON for machines.
 *
 * @param keys names of the cells: JSON keys as they are, headings through the bundle
 * @param rows cells of each row: texts, whole numbers, doubles, truths or lists of texts
 */
record Listing(List<String> keys, List<List<Object>> rows) {
  private static final int WIDTH = 110;

  Listing {
    keys = List.copyOf(keys);
    rows = List.copyOf(rows);
    for (List<Object> row : rows) {
      if (row.size() != keys.size()) {
        throw new IllegalArgumentException(
            "found a row of " + row.size() + " cells, right would be " + keys.size());
      }
    }
  }

  /** As a list of objects. */
  void json(Terminal terminal) {
    List<Object> objects = new ArrayList<>();
    for (List<Object> row : rows) {
      Map<String, Object> object = new LinkedHashMap<>();
      for (int i = 0; i < row.size(); i++) {
        object.put(keys.get(i), row.get(i));
      }
      objects.add(object);
    }
    JsonPage.print(objects, terminal.out());
  }

  /** As a table with headings; without rows, one line that says so. */
  void table(Terminal terminal) {
    Words words = terminal.words();
    if (rows.isEmpty()) {
      terminal.say("list.nothing");
      return;
    }
    Columns columns = new Columns();
    columns.row(keys.stream().map(k -> words.say("list.head." + k)).toList());
    for (List<Object> row : rows) {
      columns.row(row.stream().map(cell -> shown(cell, words)).toList());
    }
    columns.print(terminal.out(), WIDTH);
  }

  private static String shown(Object cell, Words words) {
    if (cell instanceof Boolean truth) {
      return words.say(truth ? "list.yes" : "list.no");
    }
    if (cell instanceof List<?> list) {
      return String.join(" ", list.stream().map(String::valueOf).toList());
    }
    if (cell instanceof Double number) {
      return BigDecimal.valueOf(number).toPlainString();
    }
    return String.valueOf(cell);
  }
}
