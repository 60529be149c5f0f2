package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.machine.Machine;
import faultfinch.part.Monitor;
import java.util.Arrays;

/** Reads what Tamarisk's set shows, cell by cell against its character ROM. */
final class TamariskScreen {
  /** Halves of a cycle from the fall of HS/: 3 + 2 slots, one more to fetch, four halves each. */
  static final int FIRST_CELL = 4 * 6;

  static final int FIRST_LINE = 44;
  private static final int COLUMNS = 36;
  private static final int LINES = 12;

  private TamariskScreen() {}

  /** A row as text; a dot pattern that is no glyph is a question mark. */
  static String row(Machine machine, Board board, int row) {
    byte[] glyphs =
        board.firmware().stream().filter(f -> f.ref().equals("U24")).findFirst().get().image();
    StringBuilder text = new StringBuilder();
    for (int column = 0; column < COLUMNS; column++) {
      int[] dots = new int[LINES];
      for (int line = 0; line < LINES; line++) {
        dots[line] = lit(machine, row * LINES + line, column);
      }
      text.append(glyph(glyphs, dots));
    }
    return text.toString().stripTrailing();
  }

  /** Which of a cell's eight dots of a line are not black, left one in bit 7. */
  static int lit(Machine machine, int line, int column) {
    int dots = 0;
    for (int half = 0; half < 4; half++) {
      int at = (FIRST_LINE + line) * Monitor.WIDTH + FIRST_CELL + 4 * column + half;
      int two = machine.cell("MON1", Monitor.CELLS, at);
      dots = dots << 2 | ((two & 7) != 0 ? 2 : 0) | (two >>> 3 != 0 ? 1 : 0);
    }
    return dots;
  }

  private static char glyph(byte[] glyphs, int[] dots) {
    for (int code = ' '; code < 127; code++) {
      int[] drawn = new int[LINES];
      for (int line = 0; line < LINES; line++) {
        drawn[line] = glyphs[16 * code + line] & 0xFF;
      }
      if (Arrays.equals(drawn, dots)) {
        return (char) code;
      }
    }
    return '?';
  }
}
