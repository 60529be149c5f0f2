package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RolledTest {
  /**
   * A dot a line. The first line kept is not whole, a frame has the eight behind it, and what comes
   * behind those is the next one. The picture begins half the dark before it, over the seam too;
   * where nothing is dark, with the first whole line.
   */
  @ParameterizedTest
  @CsvSource({"9..123.4.1, .123.4..", "923....1.., ..1.23..", "9123456788, 12345678"})
  void straight_frameFromAnywhere_beginsInTheLongestDark(String drawn, String straight) {
    byte[] dots = new byte[drawn.length()];
    for (int i = 0; i < dots.length; i++) {
      dots[i] = (byte) (drawn.charAt(i) == '.' ? 0 : drawn.charAt(i));
    }
    byte[] got = Rolled.straight(dots, 1, 8);
    StringBuilder read = new StringBuilder();
    for (int i = 0; i < 8; i++) {
      read.append(got[i] == 0 ? '.' : (char) got[i]);
    }
    assertEquals(straight, read.toString());
  }
}
