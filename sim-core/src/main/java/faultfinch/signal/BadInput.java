package faultfinch.signal;

/**
 * Something a person wrote is not right: where it stands, what was found, what would be right. The
 * message is one line that can be shown as it is.
 */
public final class BadInput extends RuntimeException {
  private static final int LONGEST = 300;

  private final String file;
  private final int line;
  private final int column;
  private final String found;
  private final String right;

  /**
   * @param file as the reader of the message knows it
   * @param line from 1
   * @param column from 1, in characters
   * @param found what stands there, without a full stop
   * @param right what could stand there instead, without a full stop
   */
  public BadInput(String file, int line, int column, String found, String right) {
    super(
        oneLine(file)
            + ":"
            + line
            + ":"
            + column
            + ": found "
            + oneLine(found)
            + ", right would be "
            + oneLine(right));
    this.file = oneLine(file);
    this.line = line;
    this.column = column;
    this.found = oneLine(found);
    this.right = oneLine(right);
  }

  public String file() {
    return file;
  }

  /** From 1. */
  public int line() {
    return line;
  }

  /** From 1, in characters. */
  public int column() {
    return column;
  }

  public String found() {
    return found;
  }

  public String right() {
    return right;
  }

  /** Control characters would break the line or move the cursor of a terminal. */
  private static String oneLine(String text) {
    String plain = text.replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ");
    return plain.length() <= LONGEST ? plain : plain.substring(0, LONGEST) + "...";
  }
}
