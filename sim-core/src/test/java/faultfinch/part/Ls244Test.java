package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The function table of the data sheet. */
class Ls244Test {

  @Test
  void buffer_gate_letsThroughOrLetsGo() {
    TruthTable.of(
            """
            1G/ 1A# 2G/ 2A# | 1Y# 2Y#
            L   L   L   H   | L   H
            L   H   L   L   | H   L
            H   X   L   L   | Z   L
            L   H   H   X   | H   Z
            H   X   H   X   | Z   Z
            """)
        .holdsFor(new Ls244(), "1", "2", "3", "4");
  }
}
