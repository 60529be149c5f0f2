package faultfinch.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/**
 * Text in plain columns, two blanks between them. The last column wraps under itself; figures stand
 * on the right of theirs.
 */
final class Columns {
  private static final int LEAST_LAST = 24;

  private final List<List<String>> rows = new ArrayList<>();

  /** Adds a line; all lines have as many cells. */
  void row(String... cells) {
    row(List.of(cells));
  }

  void row(List<String> cells) {
    rows.add(List.copyOf(cells));
  }

  /**
   * Prints all lines.
   *
   * @param width in characters, which the last column may pass only with a long word
   */
  void print(PrintWriter out, int width) {
    if (rows.isEmpty()) {
      return;
    }
    int last = rows.get(0).size() - 1;
    int[] widths = new int[last];
    boolean[] figures = new boolean[last];
    int indent = 0;
    for (int c = 0; c < last; c++) {
      int column = c;
      widths[c] = rows.stream().mapToInt(r -> r.get(column).length()).max().orElse(0);
      List<String> cells = rows.stream().skip(1).map(r -> r.get(column)).toList();
      figures[c] =
          cells.stream().anyMatch(Columns::figure)
              && cells.stream().allMatch(cell -> cell.isEmpty() || figure(cell));
      indent += widths[c] + 2;
    }
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < last; c++) {
        String gap = " ".repeat(widths[c] - row.get(c).length());
        line.append(figures[c] ? gap + row.get(c) : row.get(c) + gap).append("  ");
      }
      List<String> wrapped = wrapped(row.get(last), Math.max(LEAST_LAST, width - indent));
      for (int i = 0; i < wrapped.size(); i++) {
        String start = i == 0 ? line.toString() : " ".repeat(indent);
        out.println((start + wrapped.get(i)).stripTrailing());
      }
    }
  }

  private static boolean figure(String cell) {
    return !cell.isEmpty() && cell.chars().allMatch(c -> c >= '0' && c <= '9' || c == '.');
  }

  private static List<String> wrapped(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
