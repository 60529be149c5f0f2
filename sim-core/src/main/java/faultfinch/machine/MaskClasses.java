package faultfinch.machine;

import java.util.ArrayList;
import java.util.List;

/** Pairs of masks by number, so that a table's entry can name one beside a cell. */
final class MaskClasses {
  private static final int ALL_LINES = 0xFF;
  private static final int MOST = 1 << (31 - FastBus.CELL_BITS);

  private final List<Integer> classes = new ArrayList<>();
  final int[] and = new int[MOST];
  final int[] or = new int[MOST];

  /** Class 0, which the direct path takes for granted: every line follows its source. */
  MaskClasses() {
    classes.add(ALL_LINES << 8);
    and[0] = ALL_LINES;
  }

  /** The number of a pair, or -1 if there are too many. */
  int of(int and, int or) {
    int masks = and << 8 | or;
    int index = classes.indexOf(masks);
    if (index < 0 && classes.size() < MOST) {
      index = classes.size();
      classes.add(masks);
      this.and[index] = and;
      this.or[index] = or;
    }
    return index;
  }
}
