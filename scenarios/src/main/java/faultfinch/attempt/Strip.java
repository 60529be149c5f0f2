package faultfinch.attempt;

import java.util.ArrayList;
import java.util.List;

/**
 * What the display shows beside what it should, cell by cell and bit by bit: a column that differs
 * is a line to look at.
 *
 * @param cells from the left
 * @param differs for bits 6 to 0, whether any cell differs in it
 */
public record Strip(List<Cell> cells, List<Boolean> differs) {

  /** Bits of a character code. */
  public static final int BITS = 7;

  /** One cell: the code it shows and the right one. */
  public record Cell(int shown, int right) {

    /** A bit of one of the codes. */
    public static boolean bit(int code, int bit) {
      return (code >> bit & 1) == 1;
    }
  }

  public Strip {
    cells = List.copyOf(cells);
    differs = List.copyOf(differs);
  }

  /**
   * Lays them beside each other.
   *
   * @param shown codes of the cells; at least as many as the right text has letters
   */
  static Strip of(List<Integer> shown, String right) {
    List<Cell> cells = new ArrayList<>();
    int changed = 0;
    for (int i = 0; i < right.length(); i++) {
      cells.add(new Cell(shown.get(i) & 0x7F, right.charAt(i)));
      changed |= cells.get(i).shown() ^ cells.get(i).right();
    }
    List<Boolean> differs = new ArrayList<>();
    for (int bit = BITS - 1; bit >= 0; bit--) {
      differs.add(Cell.bit(changed, bit));
    }
    return new Strip(cells, differs);
  }
}
