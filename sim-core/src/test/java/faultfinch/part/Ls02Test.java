package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The NOR table of the data sheet. */
class Ls02Test {

  @Test
  void nor_bothLow_isHighElseLow() {
    TruthTable.of(
            """
            #A #B | #Y
            L L | H
            L H | L
            H L | L
            H H | L
            """)
        .holdsFor(new Ls02(), "1", "2", "3", "4");
  }
}
