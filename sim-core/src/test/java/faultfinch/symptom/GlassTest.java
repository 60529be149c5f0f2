package faultfinch.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A display's codes as a person reads them. */
class GlassTest {
  private static final Dots FONT = Dots.shipped();

  private static Glass glass(int... first) {
    List<Integer> cells = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      cells.add(i < first.length ? first[i] : 0x20);
    }
    return new Glass(true, cells);
  }

  @Test
  void text_codesOfCapitals_isThoseLettersWithoutBlanksBehind() {
    // 53 4F 52 are S O R.
    assertEquals("SOR", glass(0x53, 0x4F, 0x52).text(FONT));
  }

  @Test
  void text_codeWithoutCharacter_isTheStandIn() {
    assertEquals("A\u00A4B", glass(0x41, 0x07, 0x42).text(FONT));
  }

  @Test
  void says_bitSevenInThreeCells_namesThemAsARange() {
    // 80 is the dot below a code of 00; C1 is 41 with the dot.
    assertEquals(
        "reads 'ABAB' with a dot under cells 1 to 2, 4", glass(0xC1, 0xC2, 0x41, 0xC2).says(FONT));
  }

  @Test
  void says_displayNotLit_isDarkWhateverTheCellsHold() {
    assertEquals("dark", new Glass(false, glass(0x41).cells()).says(FONT));
  }

  @Test
  void says_allBlank_isLitAndBlank() {
    assertEquals("lit and blank", glass().says(FONT));
  }
}
