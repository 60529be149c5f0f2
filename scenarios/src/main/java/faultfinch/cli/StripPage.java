package faultfinch.cli;

import faultfinch.attempt.Strip;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The strip of bits in the terminal: one line a cell, marks under the columns that differ. */
final class StripPage {
  private static final String GAP = "    ";

  private final Terminal terminal;

  StripPage(Terminal terminal) {
    this.terminal = terminal;
  }

  void print(Strip strip) {
    String heads =
        IntStream.range(0, Strip.BITS)
            .mapToObj(i -> "D" + (Strip.BITS - 1 - i))
            .collect(Collectors.joining(" "));
    terminal.say("train.strip");
    terminal.out().println("     " + heads + GAP + "     " + heads);
    for (Strip.Cell cell : strip.cells()) {
      terminal.out().println("  " + side(cell.shown()) + GAP + "  " + side(cell.right()));
    }
    String marks =
        strip.differs().stream().map(d -> d ? "^^" : "  ").collect(Collectors.joining(" "));
    terminal.out().println("     " + marks.stripTrailing());
  }

  private static String side(int code) {
    String bits =
        IntStream.range(0, Strip.BITS)
            .mapToObj(i -> Strip.Cell.bit(code, Strip.BITS - 1 - i) ? " 1" : " 0")
            .collect(Collectors.joining(" "));
    char letter = code < ' ' || code > '_' ? '.' : (char) code;
    return letter + "  " + bits;
  }
}
