package faultfinch.diagnosis;

import faultfinch.bench.BenchRom;
import faultfinch.bench.CurrentPaths;
import faultfinch.board.Board;
import faultfinch.fault.Fault;
import faultfinch.symptom.HandsOn;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** Rows from running the board, with cold starts and its bench ROM as far as they are asked for. */
public final class DictionaryRows implements RowSource {
  private static final long FACTOR = 31;

  /** A run of its own, and the looks that it tells of. */
  private record Stage(Predicate<String> tells, RowSource rows) {}

  private final SurveyRows looks;
  private final List<Stage> more = new ArrayList<>();

  /**
   * @param wanted whether a look that is the cold starts, or a round of the bench ROM, is to be run
   */
  public DictionaryRows(Board board, Predicate<String> wanted) {
    looks = new SurveyRows(board);
    if (wanted.test(StartRows.LOOK)) {
      more.add(new Stage(StartRows.LOOK::equals, new StartRows(board)));
    }
    if (CurrentPaths.nets(board).stream().map(CurrentRows::look).anyMatch(wanted)) {
      more.add(new Stage(look -> CurrentRows.move(look).isPresent(), new CurrentRows(board)));
    }
    for (HandsOn tried : HandsOn.of(board)) {
      if (wanted.test(tried.name())) {
        more.add(new Stage(tried.name()::equals, new HandsOnRows(board, tried)));
      }
    }
    for (BenchRom way : BenchRom.of(board)) {
      if (wanted.test(way.look())) {
        more.add(new Stage(way.look()::equals, new BenchRomRows(board, way)));
      }
    }
  }

  /** With all rounds that a dictionary knows. */
  public static DictionaryRows of(Board board, FaultDictionary dictionary) {
    return new DictionaryRows(board, look -> dictionary.look(look).isPresent());
  }

  /** With the rounds that somebody noted. */
  public static DictionaryRows of(Board board, Evidence evidence) {
    return new DictionaryRows(
        board, look -> evidence.seen().stream().anyMatch(o -> o.looks().contains(look)));
  }

  @Override
  public Row row(List<Fault> faults, long boardSeed) {
    Row row = looks.row(faults, boardSeed);
    SortedMap<String, String> shows = new TreeMap<>(row.shows());
    long trail = row.trail();
    for (Stage stage : more) {
      Row beside = stage.rows.row(faults, boardSeed);
      shows.putAll(beside.shows());
      trail = FACTOR * trail + beside.trail();
    }
    return new Row(shows, trail);
  }

  /** Each stage is run when one of its looks is asked for the first time. */
  @Override
  public UnaryOperator<String> shown(List<Fault> faults, long boardSeed) {
    Map<RowSource, Map<String, String>> run = new IdentityHashMap<>();
    return look -> {
      RowSource stage =
          more.stream().filter(s -> s.tells.test(look)).map(Stage::rows).findFirst().orElse(looks);
      return run.computeIfAbsent(stage, s -> s.row(faults, boardSeed).shows())
          .getOrDefault(look, "");
    };
  }
}
