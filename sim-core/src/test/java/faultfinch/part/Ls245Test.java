package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The function table of the data sheet: DIR low is B to A. */
class Ls245Test {

  @Test
  void transceiver_directionAndGate_followTheTable() {
    TruthTable.of(
            """
            G/ DIR A# B# | A# B#
            L  L   X  L  | L  Z
            L  L   X  H  | H  Z
            L  H   L  X  | Z  L
            L  H   H  X  | Z  H
            H  X   X  X  | Z  Z
            """)
        .holdsFor(new Ls245(), "1", "2", "3", "4", "5", "6", "7", "8");
  }
}
