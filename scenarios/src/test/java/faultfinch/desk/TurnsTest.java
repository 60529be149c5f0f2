package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TurnsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "only 0,3 V at D7            | only 0.3 V at D7",
        "takes 1,54 A, hot           | takes 1.54 A, hot",
        "R4 reads 4,7k               | R4 reads 4.7k",
        "stations 1,2 fail           | stations 1,2 fail",
        "K11,12 V there              | K11,12 V there",
        "station 9: AA sent, 2A came back | station 9: wrote AA read 2A",
      })
  void whole_figureWithAComma_hasAPoint(String typed, String whole) {
    assertEquals(whole, Turns.whole(typed));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a little black cursor bar   | a little cursor bar",
        "black box behind            | box behind",
        "black screen                | black screen",
        "U44 is about 149 deg        | U44 is hot",
        "25 degrees                  | cool",
        "U34 supply present          | U34.VCC high",
        "counter on X1.OUT: nothing  | counter X1.OUT no frequency",
      })
  void plain_turnOfSpeech_isSaidPlainly(String typed, String plain) {
    assertEquals(plain, Turns.plain(typed));
  }
}
