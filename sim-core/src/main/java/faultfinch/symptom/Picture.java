package faultfinch.symptom;

/** A display drawn dot by dot, ready to be shown or written to a file. */
public final class Picture {
  private static final int PAPER_DARK = 0xFF211C17;
  private static final int GLASS = 0xFF2C241C;
  private static final int UNLIT = 0xFF3A2F24;
  private static final int LIT = 0xFFF4A53C;
  private static final int CELLS = 16;
  private static final int GAP = 1;
  private static final int MARGIN = 3;

  /** Below the seven rows of a cell stand a free row and the row of the dot. */
  private static final int ROWS = Dots.HIGH + 2;

  private static final int DOT = 0x80;

  private final int width;
  private final int height;
  private final int[] argb;

  private Picture(int width, int height, int[] argb) {
    this.width = width;
    this.height = height;
    this.argb = argb;
  }

  /**
   * Draws a display.
   *
   * @param size of a dot with the gap to the next, in pixels, 2 to 16
   */
  public static Picture of(Glass glass, int size) {
    if (size < 2 || size > 16) {
      throw new IllegalArgumentException("found " + size + " pixels a dot, right would be 2 to 16");
    }
    Dots font = Dots.shipped();
    int across = 2 * MARGIN + CELLS * (Dots.WIDE + GAP) - GAP;
    int down = 2 * MARGIN + ROWS;
    Picture picture = new Picture(across * size, down * size, new int[across * size * down * size]);
    picture.fill(0, 0, across * size, down * size, PAPER_DARK);
    picture.fill(size, size, (across - 2) * size, (down - 2) * size, GLASS);
    for (int cell = 0; cell < CELLS; cell++) {
      int code = glass.lit() ? glass.cells().get(cell) : ' ';
      picture.cell(font, code, MARGIN + cell * (Dots.WIDE + GAP), size);
    }
    return picture;
  }

  /** Lines by which a picture that rolls has run down when it is drawn. */
  private static final int ROLLED = Screen.HEIGHT / 3;

  /** What a picture lead's three colours make on the glass, each on or off. */
  private static final int[] INKS = {
    GLASS, 0xFFC8553D, 0xFF7FA65A, 0xFFD9B44A, 0xFF4F7CA8, 0xFFA9669B, 0xFF5FA8A0, 0xFFEDE6D6
  };

  /**
   * Draws what a set shows; without sync the glass stays dark. A picture that rolls is caught as it
   * runs by, its top a third of the way down.
   *
   * @param size of a dot in pixels, 1 to 8
   */
  public static Picture of(Screen screen, int size) {
    if (size < 1 || size > 8) {
      throw new IllegalArgumentException("found " + size + " pixels a dot, right would be 1 to 8");
    }
    int across = Screen.WIDTH * size;
    int down = Screen.HEIGHT * size;
    Picture picture = new Picture(across, down, new int[across * down]);
    for (int y = 0; y < Screen.HEIGHT; y++) {
      int line = screen.rolls() ? (y + Screen.HEIGHT - ROLLED) % Screen.HEIGHT : y;
      for (int x = 0; x < Screen.WIDTH; x++) {
        int from = x - screen.later(y);
        int ink = screen.synced() && from >= 0 ? screen.dot(from, line) : 0;
        int colour = ink == 0 ? GLASS : dimmed(INKS[ink], screen.brightness(y));
        picture.fill(x * size, y * size, size, size, colour);
      }
    }
    return picture;
  }

  private static int dimmed(int argb, int percent) {
    int colour = 0xFF;
    for (int shift = 16; shift >= 0; shift -= 8) {
      colour = colour << 8 | (argb >>> shift & 0xFF) * percent / 100;
    }
    return colour;
  }

  private void cell(Dots font, int code, int left, int size) {
    for (int y = 0; y < Dots.HIGH; y++) {
      for (int x = 0; x < Dots.WIDE; x++) {
        dot(left + x, MARGIN + y, size, font.lit(code, x, y));
      }
    }
    dot(left + Dots.WIDE / 2, MARGIN + ROWS - 1, size, (code & DOT) != 0);
  }

  private void dot(int x, int y, int size, boolean lit) {
    fill(x * size, y * size, size - 1, size - 1, lit ? LIT : UNLIT);
  }

  private void fill(int x, int y, int wide, int high, int colour) {
    for (int row = y; row < y + high; row++) {
      for (int column = x; column < x + wide; column++) {
        argb[row * width + column] = colour;
      }
    }
  }

  /** In pixels. */
  public int width() {
    return width;
  }

  /** In pixels. */
  public int height() {
    return height;
  }

  /** Alpha, red, green, blue, 8 bits each, row by row from the top. */
  public int[] argb() {
    return argb.clone();
  }
}
