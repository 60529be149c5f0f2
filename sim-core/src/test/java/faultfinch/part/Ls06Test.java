package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The function table of the data sheet; the high state is no drive at all. */
class Ls06Test {

  @Test
  void inverter_eitherInput_pullsOrLetsGo() {
    TruthTable.of(
            """
            #A | #Y
            H  | L
            L  | Z
            """)
        .holdsFor(new Ls06(), "1", "2", "3", "4", "5", "6");
  }
}
