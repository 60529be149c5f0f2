package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The NAND table of the data sheet. */
class Ls10Test {

  @Test
  void nand_allThreeHigh_isLowElseHigh() {
    TruthTable.of(
            """
            #A #B #C | #Y
            L X X | H
            X L X | H
            X X L | H
            H H H | L
            """)
        .holdsFor(new Ls10(), "1", "2", "3");
  }
}
