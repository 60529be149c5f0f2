package faultfinch.judging;

/** A way to go about a board. */
interface Practice {

  /** Goes on until the board is cured or there is nothing left that this way would do. */
  void go(Visit visit);

  /** This way, then another where it ends without success. */
  default Practice then(Practice other) {
    return visit -> {
      go(visit);
      if (!visit.cured()) {
        other.go(visit);
      }
    };
  }
}
