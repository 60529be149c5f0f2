package faultfinch.diagnosis;

import faultfinch.bench.BenchRom;
import faultfinch.bench.Moves;
import faultfinch.board.Board;
import faultfinch.symptom.HandsOn;
import java.util.ArrayList;
import java.util.List;

/** Of what the rows of a board's dictionary are put together. */
public final class Stages {
  private Stages() {}

  /**
   * All looks at the board as it starts and is typed on; starts, currents, what is tried by hand;
   * its bench ROM.
   */
  public static List<DictionaryBuild.Stage> of(Board board) {
    List<DictionaryBuild.Stage> stages = new ArrayList<>();
    stages.add(new DictionaryBuild.Stage("looks", SurveyRows.ofMany(board)));
    stages.add(new DictionaryBuild.Stage(StartRows.LOOK, new StartRows(board)));
    stages.add(new DictionaryBuild.Stage(Moves.FLOW.word(), new CurrentRows(board)));
    for (HandsOn tried : HandsOn.of(board)) {
      stages.add(new DictionaryBuild.Stage(tried.name(), new HandsOnRows(board, tried)));
    }
    for (BenchRom way : BenchRom.of(board)) {
      stages.add(new DictionaryBuild.Stage(way.look(), new BenchRomRows(board, way)));
    }
    return List.copyOf(stages);
  }
}
