package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.diagnosis.Diagnosis;
import faultfinch.diagnosis.FaultDictionary;

/**
 * A board of which it is known what each fault would show.
 *
 * @param faults the board can have, be they in the dictionary or not
 * @param weightRun share of them that the dictionary has, each by how likely it is, 0 to 1
 */
record Known(
    Board board, FaultDictionary dictionary, Diagnosis diagnosis, int faults, double weightRun) {

  /** With a dictionary of all that counts. */
  Known(Board board, FaultDictionary dictionary, Diagnosis diagnosis) {
    this(board, dictionary, diagnosis, dictionary.faults().size(), 1);
  }

  /** Whether the dictionary has every fault of the board. */
  boolean whole() {
    return dictionary.faults().size() == faults;
  }
}
