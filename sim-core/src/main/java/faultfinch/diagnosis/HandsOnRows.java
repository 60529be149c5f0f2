package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.fault.Fault;
import faultfinch.machine.Frames;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.symptom.HandsOn;
import faultfinch.symptom.Watching;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** Rows of one look for which a board is worked by hand. */
public final class HandsOnRows implements RowSource {
  private static final long MILLISECOND = 1_000_000;

  private final Board board;
  private final HandsOn tried;

  /** Pictures that boards of a seed share. */
  private final Map<Long, Frames> frames = new ConcurrentHashMap<>();

  /** For boards of a kind that offers the look; see {@link HandsOn#of}. */
  public HandsOnRows(Board board, HandsOn tried) {
    this.board = board;
    this.tried = tried;
  }

  @Override
  public Row row(List<Fault> faults, long boardSeed) {
    Machine machine = new Machine(setup(faults, boardSeed), Watching.KIND);
    String says = tried.says(machine, frames(boardSeed));
    SortedMap<String, String> shows = new TreeMap<>();
    shows.put(tried.name(), says);
    return new Row(shows, says.hashCode());
  }

  @Override
  public List<Row> rows(List<Fault> alike, long boardSeed) {
    return Twins.rows(alike, f -> setup(List.of(f), boardSeed), f -> row(List.of(f), boardSeed));
  }

  private Frames frames(long boardSeed) {
    long ready = Watching.readyMilliseconds(board) * MILLISECOND;
    return frames.computeIfAbsent(boardSeed, seed -> Frames.of(board, seed, ready));
  }

  private Setup setup(List<Fault> faults, long boardSeed) {
    return new Setup(board, faults, Set.of(), boardSeed, 0);
  }
}
