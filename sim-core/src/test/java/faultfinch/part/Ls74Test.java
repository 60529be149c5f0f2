package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The function table of the data sheet. */
class Ls74Test {

  @Test
  void flipFlop_presetClearAndClock_followTheTable() {
    TruthTable.of(
            """
            #PR/ #CLR/ #CLK #D | #Q #Q/
            L    H     X    X  | H  L
            H    L     X    X  | L  H
            L    L     X    X  | H  H
            H    H     ^    H  | H  L
            H    H     L    X  | =  =
            H    H     ^    L  | L  H
            H    H     L    X  | =  =
            H    H     ^    H  | H  L
            H    H     v    L  | =  =
            """)
        .holdsFor(new Ls74(), "1", "2");
  }
}
