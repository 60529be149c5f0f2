package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The font of the display. */
class DotsTest {
  private static final Dots FONT = Dots.shipped();

  @Test
  void characters_from20To5F_areAllDrawnAndAllDifferent() {
    Set<String> drawings = new HashSet<>();
    for (int code = 0x20; code <= 0x5F; code++) {
      assertEquals((char) code, FONT.character(code));
      drawings.add(drawing(code));
    }
    assertEquals(0x40, drawings.size());
  }

  @Test
  void characters_outsideTheFont_shareOneDrawing() {
    assertEquals(drawing(0x00), drawing(0x7F));
    assertEquals(Dots.NO_CHARACTER, FONT.character(0x1F));
  }

  @Test
  void lit_letterL_isItsStemAndItsFoot() {
    assertTrue(FONT.lit('L', 0, 0));
    assertTrue(FONT.lit('L', 4, 6));
    assertFalse(FONT.lit('L', 4, 0));
  }

  private static String drawing(int code) {
    StringBuilder dots = new StringBuilder();
    for (int y = 0; y < Dots.HIGH; y++) {
      for (int x = 0; x < Dots.WIDE; x++) {
        dots.append(FONT.lit(code, x, y) ? '#' : '.');
      }
    }
    return dots.toString();
  }
}
