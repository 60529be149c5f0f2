package faultfinch.board;

/**
 * Where a pad lies on its board.
 *
 * @param number of the pin on its package, from 1
 * @param x millimetres from the left edge
 * @param y millimetres from the back edge
 */
public record PadPlace(Pad pad, int number, double x, double y) {

  /** Millimetres from the middle of this pad to the middle of another. */
  public double distance(PadPlace other) {
    double across = x - other.x;
    double down = y - other.y;
    return StrictMath.sqrt(across * across + down * down);
  }
}
