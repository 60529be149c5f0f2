package faultfinch.symptom;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The characters of the sixteen-cell display as dots, and as text. */
public final class Dots {
  /** Dots across one character. */
  public static final int WIDE = 5;

  /** Dots down one character. */
  public static final int HIGH = 7;

  /** Stands in a text for a code without a character of its own. */
  public static final char NO_CHARACTER = '\u00A4';

  private static final int ANY = -1;
  private static final int CODE_BITS = 0x7F;

  private final Map<Integer, List<String>> rows;

  private Dots(Map<Integer, List<String>> rows) {
    this.rows = rows;
  }

  /** The font that comes with the program. */
  public static Dots shipped() {
    Map<Integer, List<String>> rows = new TreeMap<>();
    try (BufferedReader in =
        new BufferedReader(
            new InputStreamReader(
                Dots.class.getResourceAsStream("dots.txt"), StandardCharsets.UTF_8))) {
      List<String> current = List.of();
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        if (line.matches("[.#]{" + WIDE + "}")) {
          current.add(line);
        } else if (!line.isEmpty() && !line.startsWith(";")) {
          current = new ArrayList<>();
          rows.put(line.equals("any") ? ANY : Integer.parseInt(line.substring(0, 2), 16), current);
        }
      }
    } catch (IOException e) {
      throw new IllegalStateException("dots.txt cannot be read", e);
    }
    return new Dots(rows);
  }

  /** The character of a code as a text shows it; bit 7, the dot below, does not count. */
  public char character(int code) {
    int c = code & CODE_BITS;
    return rows.containsKey(c) ? (char) c : NO_CHARACTER;
  }

  /**
   * Whether a dot of a character is lit.
   *
   * @param x from the left, below {@link #WIDE}
   * @param y from the top, below {@link #HIGH}
   */
  public boolean lit(int code, int x, int y) {
    List<String> drawn = rows.getOrDefault(code & CODE_BITS, rows.get(ANY));
    return drawn.get(y).charAt(x) == '#';
  }
}
