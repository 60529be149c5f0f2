package faultfinch.attempt;

import faultfinch.bench.Price;
import faultfinch.bench.Reading;

/**
 * What you decided and what came of it.
 *
 * @param text as {@link Attempt#decide} takes it
 * @param repair what was done on the bench, one line
 * @param result what became of the board
 * @param retest the whole exercise after the repair
 * @param price of repair and retest together
 * @param says one line for the learner; while the case runs it never names the fault
 */
public record Decision(
    String text, String repair, Result result, Reading retest, Price price, String says) {

  /** What a decision brings about. */
  public enum Result {
    /** The board does all it should. */
    PASSES,
    /** It changed, and still fails: one fault may have hidden another. */
    CHANGED,
    /** It fails as before. */
    SAME
  }
}
