package faultfinch.machine;

import faultfinch.board.Board;
import faultfinch.fault.Fault;
import java.util.List;
import java.util.Set;

/**
 * What is switched on: a board, what is wrong with it, and the chance of this board and power-on.
 *
 * @param out references of parts taken out
 * @param seed of the board's own spread of thresholds and of chance
 * @param powerOn number of this power-on, from 0: memories wake up otherwise each time
 * @param surroundings what faults with a condition wait for
 */
public record Setup(
    Board board,
    List<Fault> faults,
    Set<String> out,
    long seed,
    int powerOn,
    Surroundings surroundings) {
  public Setup {
    faults = List.copyOf(faults);
    out = Set.copyOf(out);
  }

  /** On the bench, left alone. */
  public Setup(Board board, List<Fault> faults, Set<String> out, long seed, int powerOn) {
    this(board, faults, out, seed, powerOn, Surroundings.BENCH);
  }

  /** A healthy board, first power-on. */
  public static Setup healthy(Board board, long seed) {
    return new Setup(board, List.of(), Set.of(), seed, 0);
  }

  /** The same with these faults. */
  public Setup with(List<Fault> faults) {
    return new Setup(board, faults, out, seed, powerOn, surroundings);
  }
}
