package faultfinch.diagnosis;

import faultfinch.bench.Moves;
import faultfinch.bench.Starts;
import faultfinch.board.Board;
import faultfinch.fault.Fault;
import faultfinch.machine.Setup;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Rows of one look: how often a board starts that is switched on from cold again and again. */
public final class StartRows implements RowSource {
  /** The text by which a dictionary and an observation name it. */
  public static final String LOOK = Moves.COLD_STARTS.word();

  private final Board board;
  private final Starts starts;

  /** For boards of this kind. */
  public StartRows(Board board) {
    this.board = board;
    starts = new Starts(board);
  }

  @Override
  public Row row(List<Fault> faults, long boardSeed) {
    String outcome = starts.of(setup(faults, boardSeed));
    SortedMap<String, String> shows = new TreeMap<>();
    shows.put(LOOK, outcome);
    return new Row(shows, outcome.hashCode());
  }

  @Override
  public List<Row> rows(List<Fault> alike, long boardSeed) {
    return Twins.rows(alike, f -> setup(List.of(f), boardSeed), f -> row(List.of(f), boardSeed));
  }

  private Setup setup(List<Fault> faults, long boardSeed) {
    return new Setup(board, faults, Set.of(), boardSeed, 0);
  }
}
