package faultfinch.symptom;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A character display at one moment.
 *
 * @param lit whether its cells can be seen
 * @param cells codes from the left; 7 bits of character and, in bit 7, the dot below
 */
public record Glass(boolean lit, List<Integer> cells) {
  /** A display that shows nothing. */
  public static final Glass DARK = new Glass(false, List.of());

  private static final int DOT = 0x80;

  public Glass {
    cells = lit ? List.copyOf(cells) : List.of();
  }

  /** What it reads, without blanks behind; empty if dark or blank. */
  public String text(Dots font) {
    StringBuilder text = new StringBuilder();
    cells.forEach(c -> text.append(font.character(c)));
    return text.toString().stripTrailing();
  }

  /** Numbers of the cells with a dot below, from 1. */
  public List<Integer> dotted() {
    List<Integer> dotted = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      if ((cells.get(i) & DOT) != 0) {
        dotted.add(i + 1);
      }
    }
    return Collections.unmodifiableList(dotted);
  }

  /** All a person can tell of it, in one line. */
  public String says(Dots font) {
    if (!lit) {
      return "dark";
    }
    String text = text(font);
    String says = text.isEmpty() ? "lit and blank" : "reads '" + text + "'";
    List<Integer> dotted = dotted();
    if (dotted.isEmpty()) {
      return says;
    }
    return says
        + (dotted.size() == cells.size()
            ? " with a dot under every cell"
            : " with a dot under cell" + (dotted.size() == 1 ? " " : "s ") + ranges(dotted));
  }

  /** Numbers in a row are written as the first and the last. */
  private static String ranges(List<Integer> numbers) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < numbers.size(); i++) {
      int from = i;
      while (i + 1 < numbers.size() && numbers.get(i + 1) == numbers.get(i) + 1) {
        i++;
      }
      text.append(text.length() == 0 ? "" : ", ").append(numbers.get(from));
      if (i > from) {
        text.append(" to ").append(numbers.get(i));
      }
    }
    return text.toString();
  }
}
