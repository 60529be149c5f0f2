package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The function table of the data sheet. */
class Ls373Test {

  @Test
  void latch_enableAndOutputControl_followTheTable() {
    TruthTable.of(
            """
            OE/ LE D# | Q#
            L   H  H  | H
            L   H  L  | L
            L   L  X  | =
            L   H  H  | H
            L   L  X  | =
            H   X  X  | Z
            """)
        .holdsFor(new Ls373(), "0", "1", "2", "3", "4", "5", "6", "7");
  }

  @Test
  void outputs_letGo_leaveTheLatchWorking() {
    TruthTable.of(
            """
            OE/ LE D# | Q#
            L   H  L  | L
            H   H  H  | Z
            H   L  L  | Z
            L   L  L  | H
            """)
        .holdsFor(new Ls373(), "0", "7");
  }
}
