package faultfinch.attempt;

import java.util.List;

/**
 * Something typed that cannot be done: it costs nothing. The message is one line for the learner.
 */
public final class Slip extends RuntimeException {
  private final List<String> nearest;

  Slip(String message, List<String> nearest) {
    super(message);
    this.nearest = List.copyOf(nearest);
  }

  /** What may have been meant, nearest first; can be typed as it stands. */
  public List<String> nearest() {
    return nearest;
  }
}
