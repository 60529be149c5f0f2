package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The NAND table of the data sheet. */
class Ls00Test {

  @Test
  void nand_bothHigh_isLowElseHigh() {
    TruthTable.of(
            """
            #A #B | #Y
            L L | H
            L H | H
            H L | H
            H H | L
            """)
        .holdsFor(new Ls00(), "1", "2", "3", "4");
  }
}
