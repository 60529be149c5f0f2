package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The function table of the data sheet. */
class Ls257Test {

  @Test
  void multiplexer_selectAndOutputControl_followTheTable() {
    TruthTable.of(
            """
            G/ S #A #B | #Y
            H  X X  X  | Z
            L  L L  X  | L
            L  L H  X  | H
            L  H X  L  | L
            L  H X  H  | H
            """)
        .holdsFor(new Ls257(), "1", "2", "3", "4");
  }
}
