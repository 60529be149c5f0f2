package faultfinch.machine;

/**
 * Cells that an access of some address reads or writes, and where they are for every other address
 * that differs from it only on lines that address memories.
 *
 * @param base the address of the access that was tried
 * @param lines address lines that may differ
 * @param parts the memories
 * @param cells of each the index of its cell for the base address
 * @param flips of each, for each of the sixteen lines, the bits of the index that follow it
 */
record Places(int base, int lines, int[] parts, int[] cells, int[][] flips) {
  static final Places NONE = new Places(0, 0, new int[0], new int[0], new int[0][]);

  /** Index of a memory's own cell for an address. */
  int cell(int which, int address) {
    int index = cells[which];
    for (int left = (address ^ base) & lines; left != 0; left &= left - 1) {
      index ^= flips[which][Integer.numberOfTrailingZeros(left)];
    }
    return index;
  }
}
