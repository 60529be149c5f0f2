package faultfinch.desk;

import faultfinch.board.Pad;
import java.util.List;

/**
 * Where on the board something was seen.
 *
 * @param refs parts
 * @param lines pins or lines, each by the pads it may have been looked at
 * @param quantity how many of them
 * @param words that said so
 */
record Place(List<String> refs, List<List<Pad>> lines, Quantity quantity, List<String> words) {

  /** Nowhere in particular. */
  static final Place NONE = new Place(List.of(), List.of(), Quantity.SOME, List.of());

  /** How many of several. */
  enum Quantity {
    SOME,
    EVERY,
    NONE
  }

  Place {
    refs = List.copyOf(refs);
    lines = lines.stream().map(List::copyOf).toList();
    words = List.copyOf(words);
  }

  boolean isNowhere() {
    return refs.isEmpty() && lines.isEmpty();
  }
}
