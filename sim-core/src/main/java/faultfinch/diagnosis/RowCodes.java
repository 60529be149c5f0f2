package faultfinch.diagnosis;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What rows show that is not what most show, row by row where {@link Partings} have it by look. */
final class RowCodes {

  /** A row, equal to another that shows the same. */
  private final class Shown {
    private final int row;

    private Shown(int row) {
      this.row = row;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Shown shown && same(row, shown.row);
    }

    @Override
    public int hashCode() {
      int hash = 0;
      for (int i = starts[row]; i < starts[row + 1]; i++) {
        hash = 31 * (31 * hash + columns[i]) + codes[i];
      }
      return hash;
    }
  }

  private final int[] starts;
  private final int[] columns;
  private final char[] codes;

  RowCodes(List<Partings.Parting> partings, int rows) {
    starts = new int[rows + 1];
    for (Partings.Parting parting : partings) {
      for (int row : parting.way().rows()) {
        starts[row + 1]++;
      }
    }
    for (int row = 0; row < rows; row++) {
      starts[row + 1] += starts[row];
    }
    columns = new int[starts[rows]];
    codes = new char[starts[rows]];
    int[] next = Arrays.copyOf(starts, rows);
    for (int column = 0; column < partings.size(); column++) {
      Partings.Way way = partings.get(column).way();
      for (int i = 0; i < way.rows().length; i++) {
        int at = next[way.rows()[i]]++;
        columns[at] = column;
        codes[at] = way.codes()[i];
      }
    }
  }

  private boolean same(int one, int other) {
    return Arrays.equals(
            columns, starts[one], starts[one + 1], columns, starts[other], starts[other + 1])
        && Arrays.equals(
            codes, starts[one], starts[one + 1], codes, starts[other], starts[other + 1]);
  }

  /** The same number for rows that show the same, numbered as they come. */
  int[] signatures() {
    Map<Shown, Integer> numbers = new HashMap<>();
    int[] signatures = new int[starts.length - 1];
    for (int row = 0; row < signatures.length; row++) {
      Integer known = numbers.putIfAbsent(new Shown(row), numbers.size());
      signatures[row] = known == null ? numbers.size() - 1 : known;
    }
    return signatures;
  }

  /** The first of what a row shows otherwise than most, for {@link #look} and {@link #code}. */
  int from(int row) {
    return starts[row];
  }

  /** Behind the last of them. */
  int to(int row) {
    return starts[row + 1];
  }

  int look(int at) {
    return columns[at];
  }

  int code(int at) {
    return codes[at];
  }
}
