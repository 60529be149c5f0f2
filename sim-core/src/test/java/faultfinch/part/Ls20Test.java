package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The NAND table of the data sheet. */
class Ls20Test {

  @Test
  void nand_allFourHigh_isLowElseHigh() {
    TruthTable.of(
            """
            #A #B #C #D | #Y
            L X X X | H
            X L X X | H
            X X L X | H
            X X X L | H
            H H H H | L
            """)
        .holdsFor(new Ls20(), "1", "2");
  }
}
