package faultfinch.diagnosis;

import faultfinch.bench.Survey;
import faultfinch.board.Board;
import faultfinch.fault.Fault;
import faultfinch.machine.Setup;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Rows from running the board: everything that the passive looks of the bench would show. */
public final class SurveyRows implements RowSource {
  private static final int FIRST_POWER_ON = 0;

  private final Board board;
  private final Survey survey;

  private SurveyRows(Board board, Survey survey) {
    this.board = board;
    this.survey = survey;
  }

  /** For boards of this kind. */
  public SurveyRows(Board board) {
    this(board, Survey.on(board));
  }

  /** The same for a whole list of faults: {@link Survey#ofMany}. */
  public static SurveyRows ofMany(Board board) {
    return new SurveyRows(board, Survey.ofMany(board));
  }

  @Override
  public Row row(List<Fault> faults, long boardSeed) {
    return row(survey.run(setup(faults, boardSeed)));
  }

  @Override
  public List<Row> rows(List<Fault> alike, long boardSeed) {
    List<Setup> setups = alike.stream().map(fault -> setup(List.of(fault), boardSeed)).toList();
    return survey.runs(setups).stream().map(SurveyRows::row).toList();
  }

  /** Whether a fault need not be run: every part would do what it does on the healthy board. */
  boolean spares(Fault fault, long boardSeed) {
    return survey.spares(setup(List.of(fault), boardSeed));
  }

  private Setup setup(List<Fault> faults, long boardSeed) {
    return new Setup(board, faults, Set.of(), boardSeed, FIRST_POWER_ON);
  }

  private static Row row(Survey.Run run) {
    SortedMap<String, String> shows = new TreeMap<>();
    run.features().forEach((look, feature) -> shows.put(look.text(), feature));
    return new Row(shows, run.trail());
  }
}
