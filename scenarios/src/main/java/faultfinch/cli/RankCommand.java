package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.desk.Statement;
import faultfinch.diagnosis.Evidence;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.apache.commons.cli.Options;

/** Says which causes fit what was seen, by the repair that each asks for. */
final class RankCommand implements Command {
  private static final String MOST = "most";
  private static final String JSON = "json";
  private static final String PAIRS = "pairs";
  private static final int USUAL = 10;
  private static final int MOST_ROWS = 10_000;

  private final BiFunction<Board, Terminal, Known> knowledge;
  private final BiFunction<Board, Terminal, Optional<Known>> ready;

  /**
   * @param knowledge finds what is known of a board
   * @param ready the same of boards of which it is known already
   */
  RankCommand(
      BiFunction<Board, Terminal, Known> knowledge,
      BiFunction<Board, Terminal, Optional<Known>> ready) {
    this.knowledge = knowledge;
    this.ready = ready;
  }

  @Override
  public Options options() {
    Options options = new Options();
    options.addOption(BoardChoice.option());
    Noted.addTo(options);
    OwnBoardAnswer.addTo(options);
    return options
        .addOption(Given.flag(PAIRS))
        .addOption(Given.value(MOST, "N"))
        .addOption(Given.flag(JSON));
  }

  @Override
  public int run(Given given, Terminal terminal) {
    Words words = terminal.words();
    given.nothingElse();
    int most = (int) given.whole(MOST, USUAL, 1, MOST_ROWS);
    if (OwnBoardAnswer.isAsked(given, words)) {
      OwnBoardAnswer answer = OwnBoardAnswer.of(given, terminal, ready);
      if (given.has(JSON)) {
        JsonPage.print(answer.json(most), terminal.out());
      } else {
        answer.print(most);
      }
      return DONE;
    }
    Board board = new BoardChoice(words).board(given, Noted.boardOfFiles(given, words));
    Known known = knowledge.apply(board, terminal);
    Noted noted = new Noted(known, words);
    Evidence evidence = noted.evidence(given, terminal);
    Ranking ranking = new Ranking(known.diagnosis().belief(evidence), known, most);
    Optional<Pairs> pairs =
        given.has(PAIRS) ? Optional.of(Pairs.of(known, evidence, terminal)) : Optional.empty();
    if (given.has(JSON)) {
      Map<String, Object> json = new LinkedHashMap<>(ranking.json());
      pairs.ifPresent(p -> json.put("pairs", p.json()));
      noted.json(json);
      JsonPage.print(json, terminal.out());
    } else {
      taken(noted, terminal);
      ranking.print(terminal);
      pairs.ifPresent(p -> p.print(terminal));
    }
    return DONE;
  }

  /** How each thing said was taken. */
  static void taken(Noted noted, Terminal terminal) {
    long weighed = noted.statements().stream().filter(s -> !(s instanceof Statement.Kept)).count();
    if (!noted.statements().isEmpty()) {
      terminal.say("rank.weighed", weighed, noted.statements().size());
    }
    for (Statement statement : noted.statements()) {
      if (statement instanceof Statement.Weighed w && !w.said().equals(w.observation().text())) {
        terminal.say("rank.taken", w.said(), Taken.words(w.observation(), terminal.words()));
      } else if (statement instanceof Statement.Tried t) {
        terminal.say("rank.taken", t.said(), Taken.words(t, terminal.words()));
      } else if (statement instanceof Statement.Past p) {
        terminal.say("rank.taken", p.said(), Taken.words(p, terminal.words()));
      }
    }
    noted.remarks(terminal);
  }
}
