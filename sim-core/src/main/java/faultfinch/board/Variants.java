package faultfinch.board;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A described board and those that overlays make of it, with the questions that tell them apart.
 *
 * @param boards the described one first
 * @param duties in plain words, by their short names
 */
public record Variants(List<Tick> ticks, List<Variant> boards, Map<String, String> duties) {

  /** A board that nobody laid anything over. */
  static final Variants NONE = new Variants(List.of(), List.of(), Map.of());

  /**
   * One board.
   *
   * @param name by which it is asked for
   * @param ticks its answer to every question, by the question's name
   */
  public record Variant(String name, String title, String about, Map<String, String> ticks) {
    public Variant {
      ticks = Collections.unmodifiableMap(new LinkedHashMap<>(ticks));
    }
  }

  public Variants {
    ticks = List.copyOf(ticks);
    boards = List.copyOf(boards);
    duties = Collections.unmodifiableMap(new LinkedHashMap<>(duties));
  }
}
