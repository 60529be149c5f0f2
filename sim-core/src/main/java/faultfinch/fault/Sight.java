package faultfinch.fault;

import faultfinch.board.Board;
import java.util.Locale;
import java.util.Optional;

/**
 * What a fault can leave to be seen by eye on a board without power.
 *
 * @param percent chance that it shows, 1 to 100
 * @param sign how it looks, in plain words
 */
public record Sight(int percent, String sign) {

  /** What this fault can leave on this board; faults inside chips leave nothing. */
  public static Optional<Sight> of(Fault fault, Board board) {
    String key = "seen." + fault.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return board
        .part(fault.place())
        .flatMap(p -> Figures.find(key + "." + p.type().type()))
        .or(() -> Figures.find(key))
        .map(Sight::parsed);
  }

  private static Sight parsed(String line) {
    int space = line.indexOf(' ');
    return new Sight(Integer.parseInt(line.substring(0, space)), line.substring(space + 1));
  }
}
