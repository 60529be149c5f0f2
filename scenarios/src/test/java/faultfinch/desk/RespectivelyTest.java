package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RespectivelyTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A1 and A2 read 2.2 and 1.9 V | A1 read 2.2 V, A2 read 1.9 V",
        "MA0 to MA2 on the memories average 2.2, 2.6 and 2.2 V | MA0 on the memories average 2.2 V, MA1 on the memories average 2.6 V, MA2 on the memories average 2.2 V",
        "on U21 VA2/VA3 0.9/1.4 V | on U21 VA2 0.9 V, VA3 1.4 V",
        "D0-3 at 1.0, 1.2, 1.4, 1.6 respectively | D0 at 1.0 V, D1 at 1.2 V, D2 at 1.4 V, D3 at 1.6 V",
      })
  void asManyFiguresAsLines_areToldOneByOne(String says, String apart) {
    assertEquals(apart, Respectively.apart(says));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A1 to A3 read 2.2 and 1.9 V",
        "U9 and U10 exchanged, 3 and 1 pulses",
        "VR1 and VR2 both 5 V",
        "rounds of 3 and 1",
        "K1 and K2 pressed 3 and 4",
        "D0 and D1 3 and 4 times",
      })
  void otherFigures_stayWhereTheyAre(String says) {
    assertEquals(says, Respectively.apart(says));
  }
}
