package faultfinch.symptom;

/**
 * A picture that rolls, held still: the eye follows it and knows its top from the dark that goes
 * before.
 */
final class Rolled {
  private Rolled() {}

  /** Lines at most that stand dark above the first that is lit. */
  private static final int ABOVE = 48;

  /**
   * The lines of one frame in their order, begun within the longest run of dark ones.
   *
   * @param dots what the beam drew, line by line, from wherever it began, which is within the first
   * @param width dots of a line
   * @param frame lines that the board sends in a frame
   */
  static byte[] straight(byte[] dots, int width, int frame) {
    int lines = Math.min(frame, dots.length / width - 1);
    int top = top(dots, width, lines);
    byte[] straight = new byte[dots.length];
    for (int y = 0; y < lines; y++) {
      System.arraycopy(dots, (1 + (top + y) % lines) * width, straight, y * width, width);
    }
    return straight;
  }

  private static int top(byte[] dots, int width, int lines) {
    int top = 0;
    int longest = 0;
    int run = 0;
    // Twice round, for the longest run may reach over the seam.
    for (int y = 0; y < 2 * lines; y++) {
      run = dark(dots, width, 1 + y % lines) ? run + 1 : 0;
      if (run > longest) {
        longest = run;
        top = (y + 1 - Math.min(ABOVE, run / 2) + lines) % lines;
      }
    }
    return top;
  }

  private static boolean dark(byte[] dots, int width, int line) {
    for (int x = 0; x < width; x++) {
      if (dots[line * width + x] != 0) {
        return false;
      }
    }
    return true;
  }
}
