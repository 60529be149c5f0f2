package faultfinch.part.mpu6502;

import java.util.List;

/** How an instruction finds its operand; numbers for the reason given at {@link Operation}. */
final class Mode {

  static final int IMPLIED = 0;
  static final int ACCUMULATOR = 1;
  static final int IMMEDIATE = 2;
  static final int ZERO_PAGE = 3;
  static final int ZERO_PAGE_X = 4;
  static final int ZERO_PAGE_Y = 5;
  static final int ABSOLUTE = 6;
  static final int ABSOLUTE_X = 7;
  static final int ABSOLUTE_Y = 8;
  static final int INDEXED_INDIRECT = 9;
  static final int INDIRECT_INDEXED = 10;
  static final int INDIRECT = 11;
  static final int RELATIVE = 12;

  // In the order of the numbers.
  private static final List<String> SPELLINGS =
      List.of("", "A", "#", "z", "z,X", "z,Y", "a", "a,X", "a,Y", "(z,X)", "(z),Y", "(a)", "r");

  private Mode() {}

  /** Throws IllegalArgumentException for an unknown spelling. */
  static int spelled(String text) {
    int mode = SPELLINGS.indexOf(text);
    if (mode < 0) {
      throw new IllegalArgumentException("unknown addressing mode '" + text + "'");
    }
    return mode;
  }

  static String text(int mode) {
    return SPELLINGS.get(mode);
  }
}
