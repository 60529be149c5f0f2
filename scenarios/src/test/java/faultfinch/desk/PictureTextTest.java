package faultfinch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PictureTextTest {
  /** What a picture does is no colour of it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "'HELLO | YOU' in red, white",
        "'HELLO | YOU' in red, white, rolls",
        "'HELLO | YOU' in red, white, a dark bar rolls up",
        "'HELLO | YOU' in red, white, a dark bar stands, rolls"
      })
  void picture_thatMoves_hasTheColoursOfOneThatStands(String outcome) {
    assertEquals(
        new PictureText(List.of("HELLO", "YOU"), List.of("red", "white")), PictureText.of(outcome));
  }
}
