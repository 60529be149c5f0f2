package faultfinch.diagnosis;

import faultfinch.bench.BenchRom;
import faultfinch.board.Board;
import faultfinch.fault.Fault;
import faultfinch.machine.Setup;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Rows of one look: what the bench ROM reports, with or without the return leads. */
public final class BenchRomRows implements RowSource {
  private static final int FIRST_POWER_ON = 0;

  private final BenchRom way;
  private final Board board;

  /**
   * For boards of this kind.
   *
   * @throws IllegalArgumentException if it has no bench ROM, or no leads that are asked for
   */
  public BenchRomRows(Board board, BenchRom way) {
    this.way = way;
    this.board = way.on(board);
  }

  @Override
  public Row row(List<Fault> faults, long boardSeed) {
    String report = way.report(setup(faults, boardSeed)).feature();
    SortedMap<String, String> shows = new TreeMap<>();
    shows.put(way.look(), report);
    return new Row(shows, report.hashCode());
  }

  @Override
  public List<Row> rows(List<Fault> alike, long boardSeed) {
    return Twins.rows(alike, f -> setup(List.of(f), boardSeed), f -> row(List.of(f), boardSeed));
  }

  private Setup setup(List<Fault> faults, long boardSeed) {
    return new Setup(board, faults, Set.of(), boardSeed, FIRST_POWER_ON);
  }
}
