package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.board.PlacedPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Gathers parts of one type that are believed in about alike: eight memories of which one is bad
 * are one candidate to whoever asks where to look, and would hide all others in a list.
 */
final class Alike {
  /** Fewer are named one by one. */
  private static final int FEWEST = 3;

  /** The likeliest is at most so many times as likely as each of the others. */
  private static final double TIMES = 1.5;

  private final Map<String, String> types;

  Alike(Board board) {
    types = board.parts().stream().collect(Collectors.toMap(PlacedPart::ref, p -> p.type().type()));
  }

  /**
   * Rows of parts, the likeliest first, with those alike in one row.
   *
   * @param rows one part each
   */
  List<Ranking.Row> gathered(List<Ranking.Row> rows) {
    List<Ranking.Row> left = new ArrayList<>(rows);
    List<Ranking.Row> gathered = new ArrayList<>();
    while (!left.isEmpty()) {
      Ranking.Row first = left.get(0);
      List<Ranking.Row> alike = left.stream().filter(r -> isAlike(first, r)).toList();
      boolean together = alike.size() >= FEWEST;
      gathered.add(together ? Ranking.Row.of(alike) : first);
      left.removeAll(together ? alike : List.of(first));
    }
    gathered.sort((a, b) -> Double.compare(b.belief(), a.belief()));
    return List.copyOf(gathered);
  }

  private boolean isAlike(Ranking.Row first, Ranking.Row other) {
    Optional<String> type = Optional.ofNullable(types.get(first.part()));
    return type.isPresent()
        && type.equals(Optional.ofNullable(types.get(other.part())))
        && first.belief() <= TIMES * other.belief();
  }
}
