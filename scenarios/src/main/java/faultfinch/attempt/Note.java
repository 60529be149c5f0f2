package faultfinch.attempt;

import faultfinch.bench.Breach;
import faultfinch.bench.Move;
import faultfinch.bench.Price;
import faultfinch.bench.Reading;
import java.util.List;

/**
 * One line of the notebook.
 *
 * @param number from 1
 * @param minutesSoFar on the bench clock after the move
 * @param pullsSoFar chips taken out so far
 */
public record Note(
    int number,
    Move move,
    Reading reading,
    Price price,
    int minutesSoFar,
    int pullsSoFar,
    List<Breach> breaches) {
  public Note {
    breaches = List.copyOf(breaches);
  }
}
