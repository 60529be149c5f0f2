package faultfinch.board;

/** Which key of Tamarisk's keyboard brings which character. */
final class TamariskKeys {
  private static final String[] ROWS = {
    "\0\0 \n\b\0\0\0", "aeimquy3", "bfjnrvz4", "cgkosw15", "dhlptx26", "7890.,-+", ";:/*=()'"
  };

  private TamariskKeys() {}

  /** Row * 8 + column. */
  static int place(char c) {
    char plain = Character.toLowerCase(c);
    for (int row = 0; row < ROWS.length; row++) {
      int column = ROWS[row].indexOf(plain);
      if (column >= 0) {
        return row * 8 + column;
      }
    }
    throw new IllegalArgumentException("no key brings '" + c + "'");
  }

  static boolean shifted(char c) {
    return Character.isUpperCase(c);
  }
}
