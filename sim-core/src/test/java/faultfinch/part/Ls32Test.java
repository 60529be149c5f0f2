package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The OR table of the data sheet. */
class Ls32Test {

  @Test
  void or_bothLow_isLowElseHigh() {
    TruthTable.of(
            """
            #A #B | #Y
            L L | L
            L H | H
            H L | H
            H H | H
            """)
        .holdsFor(new Ls32(), "1", "2", "3", "4");
  }
}
