package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The exclusive-OR table of the data sheet. */
class Ls86Test {

  @Test
  void exclusiveOr_inputsDiffer_isHighElseLow() {
    TruthTable.of(
            """
            #A #B | #Y
            L L | L
            L H | H
            H L | H
            H H | L
            """)
        .holdsFor(new Ls86(), "1", "2", "3", "4");
  }
}
