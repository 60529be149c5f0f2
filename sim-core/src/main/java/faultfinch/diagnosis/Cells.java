package faultfinch.diagnosis;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicReferenceArray;

/**
 * The cells of a dictionary, column by column: only those in which a row is not as the healthy
 * board, for most looks show most faults what they show without one.
 */
final class Cells {

  /** Above it a cell takes two bytes. */
  private static final int MOST_IN_A_BYTE = 0xFF;

  private final int rows;
  private final int[] starts;
  private final int[] rowOf;
  private final char[] cellOf;

  /** Columns that somebody asked for cell by cell, with all their cells. */
  private final AtomicReferenceArray<char[]> whole;

  /**
   * @param starts of the columns among the cells that are kept; one more for the end
   * @param rowOf of each cell that is kept, rising within a column
   * @param cellOf none is {@link FaultDictionary#HEALTHY}
   */
  Cells(int rows, int[] starts, int[] rowOf, char[] cellOf) {
    this.rows = rows;
    this.starts = starts;
    this.rowOf = rowOf;
    this.cellOf = cellOf;
    this.whole = new AtomicReferenceArray<>(columns());
  }

  int rows() {
    return rows;
  }

  int columns() {
    return starts.length - 1;
  }

  int at(int column, int row) {
    char[] cells = whole.get(column);
    if (cells == null) {
      cells = new char[rows];
      for (int i = starts[column]; i < starts[column + 1]; i++) {
        cells[rowOf[i]] = cellOf[i];
      }
      whole.set(column, cells);
    }
    return cells[row];
  }

  /** Whether the cells of a column take two bytes. */
  boolean wide(int column) {
    for (int i = from(column); i < to(column); i++) {
      if (cellOf[i] > MOST_IN_A_BYTE) {
        return true;
      }
    }
    return false;
  }

  /** The first of a column's cells that are kept, for {@link #row} and {@link #cell}. */
  int from(int column) {
    return starts[column];
  }

  /** Behind the last of them. */
  int to(int column) {
    return starts[column + 1];
  }

  /** The row of a cell that is kept. */
  int row(int kept) {
    return rowOf[kept];
  }

  /** A cell that is kept. */
  int cell(int kept) {
    return cellOf[kept];
  }

  /** Takes cells one by one, column after column and row after row. */
  static final class Draft {
    private final int rows;
    private final int[] starts;
    private int column;
    private int[] rowOf;
    private char[] cellOf;
    private int kept;

    /**
     * @param expected how many are likely to be kept
     */
    Draft(int rows, int columns, int expected) {
      this.rows = rows;
      starts = new int[columns + 1];
      rowOf = new int[expected];
      cellOf = new char[expected];
    }

    /** The next cell that is not as the healthy board's. */
    void keep(int row, int cell) {
      if (row >= rows) {
        throw new IndexOutOfBoundsException(row);
      }
      if (kept == rowOf.length) {
        rowOf = Arrays.copyOf(rowOf, 2 * kept + 1);
        cellOf = Arrays.copyOf(cellOf, 2 * kept + 1);
      }
      rowOf[kept] = row;
      cellOf[kept++] = (char) cell;
    }

    /** There is no more of this column. */
    void endColumn() {
      starts[++column] = kept;
    }

    Cells done() {
      return new Cells(rows, starts, rowOf, cellOf);
    }
  }
}
