package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.diagnosis.Diagnosis;
import faultfinch.diagnosis.FaultDictionary;

/** A board of which it is known what each fault would show. */
record Known(Board board, FaultDictionary dictionary, Diagnosis diagnosis) {}
