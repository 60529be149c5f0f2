package faultfinch.part;

import org.junit.jupiter.api.Test;

/** The inverter table of the data sheet. */
class Ls04Test {

  @Test
  void inverter_anyInput_isTurnedOver() {
    TruthTable.of(
            """
            #A | #Y
            L | H
            H | L
            """)
        .holdsFor(new Ls04(), "1", "2", "3", "4", "5", "6");
  }
}
