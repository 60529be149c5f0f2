package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The function table of the data sheet; an output that is not low lets go. */
class Ls145Test {

  @Test
  void decoder_everyNumber_followsTheTable() {
    TruthTable.of(
            """
            D C B A | Y0/ Y1/ Y2/ Y3/ Y4/ Y5/ Y6/ Y7/ Y8/ Y9/
            L L L L | L   Z   Z   Z   Z   Z   Z   Z   Z   Z
            L L L H | Z   L   Z   Z   Z   Z   Z   Z   Z   Z
            L L H L | Z   Z   L   Z   Z   Z   Z   Z   Z   Z
            L L H H | Z   Z   Z   L   Z   Z   Z   Z   Z   Z
            L H L L | Z   Z   Z   Z   L   Z   Z   Z   Z   Z
            L H L H | Z   Z   Z   Z   Z   L   Z   Z   Z   Z
            L H H L | Z   Z   Z   Z   Z   Z   L   Z   Z   Z
            L H H H | Z   Z   Z   Z   Z   Z   Z   L   Z   Z
            H L L L | Z   Z   Z   Z   Z   Z   Z   Z   L   Z
            H L L H | Z   Z   Z   Z   Z   Z   Z   Z   Z   L
            H L H X | Z   Z   Z   Z   Z   Z   Z   Z   Z   Z
            H H X X | Z   Z   Z   Z   Z   Z   Z   Z   Z   Z
            """)
        .holdsFor(new Ls145(), "");
  }
}
