package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The function table of the data sheet: clear, demultiplex, addressable latch, memory. */
class Ls259Test {

  @Test
  void latch_enableAndClear_followTheTable() {
    TruthTable.of(
            """
            CLR/ G/ A2 A1 A0 D | Q0 Q1 Q2 Q3 Q4 Q5 Q6 Q7
            L    H  X  X  X  X | L  L  L  L  L  L  L  L
            L    L  H  L  H  H | L  L  L  L  L  H  L  L
            L    L  H  L  H  L | L  L  L  L  L  L  L  L
            H    H  X  X  X  X | L  L  L  L  L  L  L  L
            H    L  L  H  H  H | L  L  L  H  L  L  L  L
            H    H  L  H  H  L | L  L  L  H  L  L  L  L
            H    L  H  H  H  H | L  L  L  H  L  L  L  H
            H    H  X  X  X  X | L  L  L  H  L  L  L  H
            H    L  L  H  H  L | L  L  L  L  L  L  L  H
            H    H  X  X  X  X | L  L  L  L  L  L  L  H
            L    H  X  X  X  X | L  L  L  L  L  L  L  L
            """)
        .holdsFor(new Ls259(), "");
  }
}
