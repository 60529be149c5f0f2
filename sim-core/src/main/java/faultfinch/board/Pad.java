package faultfinch.board;

/**
 * One pin of one placed part.
 *
 * @param ref the part's reference, such as {@code U4}
 * @param pin the pin's name in the part's drawing, such as {@code Y0/}
 */
public record Pad(String ref, String pin) {

  /** Written as in a board file, {@code U4.Y0/}. */
  public String text() {
    return ref + "." + pin;
  }
}
