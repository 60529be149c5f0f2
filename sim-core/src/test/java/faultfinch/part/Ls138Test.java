package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The function table of the data sheet. */
class Ls138Test {

  @Test
  void decoder_selectsAndEnables_followTheTable() {
    TruthTable.of(
            """
            G1 G2A/ G2B/ C B A | Y0/ Y1/ Y2/ Y3/ Y4/ Y5/ Y6/ Y7/
            X  H    X    X X X | H   H   H   H   H   H   H   H
            X  X    H    X X X | H   H   H   H   H   H   H   H
            L  X    X    X X X | H   H   H   H   H   H   H   H
            H  L    L    L L L | L   H   H   H   H   H   H   H
            H  L    L    L L H | H   L   H   H   H   H   H   H
            H  L    L    L H L | H   H   L   H   H   H   H   H
            H  L    L    L H H | H   H   H   L   H   H   H   H
            H  L    L    H L L | H   H   H   H   L   H   H   H
            H  L    L    H L H | H   H   H   H   H   L   H   H
            H  L    L    H H L | H   H   H   H   H   H   L   H
            H  L    L    H H H | H   H   H   H   H   H   H   L
            """)
        .holdsFor(new Ls138(), "all");
  }
}
