package faultfinch.cli;

/** A longer text, broken into lines where words end. */
final class Paragraph {
  private static final int WIDTH = 96;

  private Paragraph() {}

  /** Prints one of the texts. */
  static void print(Terminal terminal, String key, Object... gaps) {
    Columns one = new Columns();
    one.row(terminal.words().say(key, gaps));
    one.print(terminal.out(), WIDTH);
  }
}
