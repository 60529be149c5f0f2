package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The count sequence and the clear line of the data sheet. */
class Ls393Test {

  @Test
  void counter_clockFalls_countsTheSixteenStepsRound() {
    TruthTable.of(
            """
            #MR #CP/ | #Q0 #Q1 #Q2 #Q3
            H   L    | L L L L
            L   v    | H L L L
            L   v    | L H L L
            L   v    | H H L L
            L   v    | L L H L
            L   v    | H L H L
            L   v    | L H H L
            L   v    | H H H L
            L   v    | L L L H
            L   v    | H L L H
            L   v    | L H L H
            L   v    | H H L H
            L   v    | L L H H
            L   v    | H L H H
            L   v    | L H H H
            L   v    | H H H H
            L   v    | L L L L
            L   v    | H L L L
            L   ^    | = = = =
            L   v    | L H L L
            H   X    | L L L L
            H   v    | L L L L
            L   L    | L L L L
            """)
        .holdsFor(new Ls393(), "1", "2");
  }
}
