package faultfinch.diagnosis;

import faultfinch.bench.Moves;
import faultfinch.board.Board;
import faultfinch.fault.Fault;
import faultfinch.machine.Frames;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.symptom.EveryKey;
import faultfinch.symptom.Watching;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** Rows of one look: what comes of every key of a board, pressed one after the other. */
public final class KeyRows implements RowSource {
  /** The text by which a dictionary and an observation name it. */
  public static final String LOOK = Moves.EVERY_KEY.word();

  private static final long MILLISECOND = 1_000_000;

  private final Board board;
  private final EveryKey keys;

  /** Pictures that boards of a seed share. */
  private final Map<Long, Frames> frames = new ConcurrentHashMap<>();

  /** For boards of this kind; see {@link EveryKey#offered}. */
  public KeyRows(Board board) {
    this.board = board;
    keys = new EveryKey(board);
  }

  @Override
  public Row row(List<Fault> faults, long boardSeed) {
    return row(typedOn(faults, boardSeed));
  }

  /** A board that does the same on every pin is not typed on again. */
  @Override
  public List<Row> rows(List<Fault> alike, long boardSeed) {
    Typed leader = typedOn(alike.subList(0, 1), boardSeed);
    List<Row> rows = new ArrayList<>(List.of(row(leader)));
    for (Fault fault : alike.subList(1, alike.size())) {
      Machine twin = new Machine(setup(List.of(fault), boardSeed), Machine.Kind.PLAIN);
      boolean same = twin.doublesFor(leader.machine());
      rows.add(same ? rows.get(0) : row(List.of(fault), boardSeed));
    }
    return List.copyOf(rows);
  }

  private record Typed(Machine machine, String says) {}

  private Typed typedOn(List<Fault> faults, long boardSeed) {
    Machine machine = new Machine(setup(faults, boardSeed), Watching.KIND);
    return new Typed(machine, keys.says(machine, frames(boardSeed)));
  }

  private Frames frames(long boardSeed) {
    long ready = Watching.readyMilliseconds(board) * MILLISECOND;
    return frames.computeIfAbsent(boardSeed, seed -> Frames.of(board, seed, ready));
  }

  private Setup setup(List<Fault> faults, long boardSeed) {
    return new Setup(board, faults, Set.of(), boardSeed, 0);
  }

  private static Row row(Typed typed) {
    SortedMap<String, String> shows = new TreeMap<>();
    shows.put(LOOK, typed.says());
    return new Row(shows, typed.says().hashCode());
  }
}
