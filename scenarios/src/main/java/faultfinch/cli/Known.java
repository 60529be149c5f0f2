package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.diagnosis.Diagnosis;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Suspects;

/**
 * A board of which it is known what each fault would show.
 *
 * @param all faults the board can have, be they in the dictionary or not
 */
record Known(Board board, FaultDictionary dictionary, Diagnosis diagnosis, Suspects all) {

  /** With a dictionary of all that counts. */
  Known(Board board, FaultDictionary dictionary, Diagnosis diagnosis) {
    this(board, dictionary, diagnosis, diagnosis.suspects());
  }

  /** How many of them are not in the dictionary. */
  int notRun() {
    return all.all().size() - diagnosis.suspects().all().size();
  }

  /** Share of them that the dictionary has, each by how likely it is, 0 to 1. */
  double weightRun() {
    return diagnosis.suspects().weight() / all.weight();
  }

  /** Whether the dictionary has every fault of the board. */
  boolean whole() {
    return notRun() == 0;
  }
}
