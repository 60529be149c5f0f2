package faultfinch.signal;

/**
 * A declared piece of a part's state. With count 1 it is a word of up to 64 bits; with a larger
 * count it is that many cells of up to 8 bits.
 *
 * @param offset place among the part's own words, or among its own cells
 */
public record State(String name, int width, int count, int offset) {

  /** Whether this is an array of cells. */
  public boolean cells() {
    return count > 1;
  }
}
