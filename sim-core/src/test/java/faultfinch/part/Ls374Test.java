package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The function table of the data sheet. */
class Ls374Test {

  @Test
  void flipFlop_clockAndOutputControl_followTheTable() {
    TruthTable.of(
            """
            OE/ CLK D# | Q#
            L   ^   H  | H
            L   ^   L  | L
            L   L   X  | =
            L   ^   H  | H
            L   v   L  | =
            L   L   X  | =
            H   X   X  | Z
            """)
        .holdsFor(new Ls374(), "0", "1", "2", "3", "4", "5", "6", "7");
  }

  @Test
  void outputs_letGo_leaveTheClockWorking() {
    TruthTable.of(
            """
            OE/ CLK D# | Q#
            L   ^   L  | L
            H   ^   H  | Z
            L   L   L  | H
            """)
        .holdsFor(new Ls374(), "0", "7");
  }
}
