package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.fault.Fault;
import java.util.List;
import java.util.Set;

/** What the supply makes of a board. */
record Power(boolean railUp) {
  static Power of(Board board, List<Fault> faults, Set<String> out) {
    return new Power(true);
  }
}
