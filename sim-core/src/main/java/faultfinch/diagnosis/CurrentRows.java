package faultfinch.diagnosis;

import faultfinch.bench.CurrentPaths;
import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.board.Board;
import faultfinch.fault.Fault;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import faultfinch.symptom.Watching;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Rows of one look at each net: which way current flows along it. Faults that do the same on every
 * pin share a run, and each is followed on its own wiring where the run stood: it is for the place
 * of the fault that a net is followed.
 */
public final class CurrentRows implements RowSource {
  private static final String WORD = Moves.FLOW.word() + " ";

  private final Board board;

  /** For boards of this kind. */
  public CurrentRows(Board board) {
    this.board = board;
  }

  /** The text by which a dictionary and an observation name the look at a net. */
  public static String look(String net) {
    return WORD + net;
  }

  /** The move of such a look; empty if it is another. */
  public static Optional<Move> move(String look) {
    return look.startsWith(WORD)
        ? Optional.of(new Move(Moves.FLOW, look.substring(WORD.length())))
        : Optional.empty();
  }

  @Override
  public Row row(List<Fault> faults, long boardSeed) {
    return row(stands(setup(faults, boardSeed)));
  }

  @Override
  public List<Row> rows(List<Fault> alike, long boardSeed) {
    Machine leader = stands(setup(alike.subList(0, 1), boardSeed));
    Machine moment = leader.moment();
    List<Row> rows = new ArrayList<>(List.of(row(leader)));
    for (Fault fault : alike.subList(1, alike.size())) {
      Setup setup = setup(List.of(fault), boardSeed);
      Machine twin = new Machine(setup, Machine.Kind.PLAIN);
      boolean doubles = twin.doublesFor(moment);
      if (doubles) {
        twin.standWhere(moment);
      }
      rows.add(row(doubles && twin.keepsOnlyWhatIsKnown() ? twin : stands(setup)));
    }
    return List.copyOf(rows);
  }

  private Setup setup(List<Fault> faults, long boardSeed) {
    return new Setup(board, faults, Set.of(), boardSeed, 0);
  }

  private Machine stands(Setup setup) {
    Machine machine = new Machine(setup, Watching.KIND);
    machine.runTo(CurrentPaths.begin(board));
    return machine;
  }

  private static Row row(Machine machine) {
    SortedMap<String, String> shows = new TreeMap<>();
    CurrentPaths.of(machine).forEach((net, says) -> shows.put(look(net), says));
    return new Row(shows, shows.hashCode());
  }
}
