package faultfinch.machine;

/**
 * The rows that an access strobes of memories that forget, where not every row is strobed in time
 * by itself. Memories that take their row alike stand together.
 *
 * @param parts the memories of each kind
 * @param base their row while every address line that moves it is low
 * @param lines for each bit of the row the address line it follows, or -1
 */
record Rows(int[][] parts, int[] base, int[][] lines) {
  static final Rows NONE = new Rows(new int[0][], new int[0], new int[0][]);

  boolean none() {
    return parts.length == 0;
  }

  /** The row of memories of this kind at an address. */
  int at(int kind, int address) {
    int row = base[kind];
    for (int bit = 0; bit < lines[kind].length; bit++) {
      int line = lines[kind][bit];
      row |= line < 0 ? 0 : (address >>> line & 1) << bit;
    }
    return row;
  }
}
