package faultfinch.signal;

/** Pins of one name in line order, side by side in the part's pin word. */
public record Bus(String name, int shift, int width) {

  /** The pins of this bus as bits of the pin word. */
  public long mask() {
    return ((1L << width) - 1) << shift;
  }

  /** The bus value out of a pin word. */
  public int of(long word) {
    return (int) (word >>> shift) & (int) ((1L << width) - 1);
  }

  /** The pin word with this bus at the given value, all else zero. */
  public long at(int value) {
    return ((long) value << shift) & mask();
  }
}
