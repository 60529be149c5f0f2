package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The AND table of the data sheet. */
class Ls08Test {

  @Test
  void and_bothHigh_isHighElseLow() {
    TruthTable.of(
            """
            #A #B | #Y
            L L | L
            L H | L
            H L | L
            H H | H
            """)
        .holdsFor(new Ls08(), "1", "2", "3", "4");
  }
}
