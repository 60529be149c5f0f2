package faultfinch.fault;

import faultfinch.board.PlacedPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One stored bit of a read-write memory that always reads the same.
 *
 * @param index address inside the part, from 0
 * @param bit 0 to 7
 */
public record CellStuck(String ref, int index, int bit, boolean high) implements Fault {
  private static final int PAGE = 256;
  private static final int BITS = 8;

  public CellStuck {
    if (index < 0 || bit < 0 || bit >= BITS) {
      throw new IllegalArgumentException(
          "found bit " + bit + " at " + index + ", right would be bit 0 to 7 at an address from 0");
    }
  }

  static Optional<Fault> read(Words words) {
    PlacedPart part = words.part();
    if (!words.anatomy().isReadWrite(part)) {
      return Optional.empty();
    }
    int index = index(words, part);
    int bit = Integer.parseInt(words.said(2));
    int bits = words.anatomy().cellBits(part);
    if (bit >= bits) {
      throw words.refuse(2, "bit '" + bit + "'", bits == 1 ? "0" : "0 to " + (bits - 1));
    }
    return Optional.of(new CellStuck(part.ref(), index, bit, words.said(3).equals("high")));
  }

  static int index(Words words, PlacedPart part) {
    int index = Integer.parseInt(words.said(1), 16);
    int cells = words.anatomy().cells(part);
    if (index >= cells) {
      String last = String.format(Locale.ROOT, "%04X", cells - 1);
      throw words.refuse(1, "cell '" + words.said(1) + "'", "0000 to " + last);
    }
    return index;
  }

  /**
   * One cell for each region of a dynamic memory: rows and columns 0, 1, 2 and 3, 4 to 7 and so on,
   * each region twice as wide as the one before, for programs keep what they cannot do without
   * lowest. Whether a row or a column carries the page of an address is the board's affair, so a
   * cell's row and column are both of its region.
   */
  static List<Integer> regions(Anatomy anatomy, PlacedPart part) {
    List<Integer> cells = new ArrayList<>();
    int columns = anatomy.columns(part);
    int rows = anatomy.cells(part) / columns;
    for (int from = 0; from < Math.min(rows, columns); from = Math.max(1, 2 * from)) {
      int row = from + Lot.below(Math.max(1, from), from, Lot.of(part.ref()));
      int column = from + Lot.below(Math.max(1, from), from, Lot.of(part.role()));
      cells.add(row * columns + column);
    }
    return cells;
  }

  /** Of a static memory one cell a page and bit, drawn, so that no column repeats. */
  static List<Fault> sites(Anatomy anatomy) {
    List<Fault> faults = new ArrayList<>();
    for (PlacedPart part : anatomy.chips()) {
      if (anatomy.isDynamic(part)) {
        for (int index : regions(anatomy, part)) {
          faults.add(new CellStuck(part.ref(), index, 0, false));
          faults.add(new CellStuck(part.ref(), index, 0, true));
        }
      } else if (anatomy.isReadWrite(part)) {
        for (int page = 0; page * PAGE < anatomy.cells(part); page++) {
          for (int bit = 0; bit < BITS; bit++) {
            int index = page * PAGE + Lot.below(PAGE, page, bit, Lot.of(part.ref()));
            faults.add(new CellStuck(part.ref(), index, bit, false));
            faults.add(new CellStuck(part.ref(), index, bit, true));
          }
        }
      }
    }
    return faults;
  }

  @Override
  public String text() {
    String level = high ? "high" : "low";
    return String.format(Locale.ROOT, "%s: cell %04X bit %d stuck %s", ref, index, bit, level);
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.CELL_STUCK;
  }

  @Override
  public Seat seat() {
    return Seat.INSIDE;
  }

  @Override
  public Optional<String> decides() {
    return Optional.of(
        String.format(Locale.ROOT, "what cell %04X bit %d of %s holds", index, bit, ref));
  }

  @Override
  public void applyTo(Harm harm) {
    harm.cell(ref, index, high ? 0 : 1 << bit, high ? 1 << bit : 0);
  }
}
