package faultfinch.workbench;

import faultfinch.bench.Move;

/**
 * One line of the card that opens at the hand.
 *
 * @param says what the move is, in words
 * @param price in words; empty if the case shows none
 * @param warned whether it would break a rule of the bench now
 * @param kind what sort of move it is
 */
record Choice(String says, String price, boolean warned, Move move, Kind kind) {

  /** Sorts of moves, as the card groups them. */
  enum Kind {
    LOOK,
    HANDLE,
    REPAIR
  }
}
