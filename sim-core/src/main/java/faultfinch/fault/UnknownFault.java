package faultfinch.fault;

/** A text that names no fault this board can have; the message is one line fit to be shown. */
public final class UnknownFault extends IllegalArgumentException {
  private final int column;

  UnknownFault(String text, int column, String found, String right) {
    this(text, column, found, right, null);
  }

  UnknownFault(String text, int column, String found, String right, Throwable cause) {
    super("'" + text + "', column " + column + ": found " + found + ", right would be " + right);
    this.column = column;
    if (cause != null) {
      initCause(cause);
    }
  }

  /** Where in the text, from 1. */
  public int column() {
    return column;
  }
}
