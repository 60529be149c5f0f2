package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.desk.Statement;
import faultfinch.diagnosis.DictionaryRows;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.Route;
import faultfinch.diagnosis.Verdict;
import faultfinch.fault.Contradictions;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.apache.commons.cli.Options;

/** Holds a suspected fault, or two at once, against what was seen. */
final class WeighCommand implements Command {
  private static final String SUSPECT = "suspect";
  private static final String JSON = "json";
  private static final String ODDS = "odds";
  private static final String USUAL_ODDS = "20";
  private static final int MOST_SUSPECTS = 2;
  private static final int ALIKE_SHOWN = 6;

  private static final Set<Statement.Came> NO_LOOKS =
      Set.of(
          Statement.Came.HELPED,
          Statement.Came.IN_VAIN,
          Statement.Came.JOINED,
          Statement.Came.APART);

  private final BiFunction<Board, Terminal, Known> knowledge;

  /**
   * @param knowledge finds what is known of a board
   */
  WeighCommand(BiFunction<Board, Terminal, Known> knowledge) {
    this.knowledge = knowledge;
  }

  @Override
  public Options options() {
    Options options = new Options();
    options.addOption(BoardChoice.option()).addOption(Given.values(SUSPECT, "FAULT"));
    Noted.addTo(options);
    return options.addOption(Given.value(ODDS, "N")).addOption(Given.flag(JSON));
  }

  @Override
  public int run(Given given, Terminal terminal) {
    Words words = terminal.words();
    given.nothingElse();
    Board board = new BoardChoice(words).board(given, Noted.boardOfFiles(given, words));
    List<Fault> suspects = suspects(given, board, words);
    Known known = knowledge.apply(board, terminal);
    double odds = given.number(ODDS, USUAL_ODDS, "2", "1000000").doubleValue();
    Noted noted = new Noted(known, words);
    List<String> asked = suspects.stream().map(Fault::text).toList();
    Evidence evidence = noted.evidence(given, asked, terminal);
    Verdict verdict = verdict(suspects, known, evidence, odds);
    if (given.has(JSON)) {
      Map<String, Object> json = json(verdict);
      noted.json(json);
      JsonPage.print(json, terminal.out());
    } else {
      noted.remarks(terminal);
      print(verdict, terminal);
      tried(noted, terminal);
    }
    return verdict.finding() == Verdict.Finding.CONTRADICTED ? NEGATIVE : DONE;
  }

  private static List<Fault> suspects(Given given, Board board, Words words) {
    List<Fault> suspects =
        given.texts(SUSPECT).stream().map(text -> FaultKinds.parse(text, board)).toList();
    if (suspects.isEmpty() || suspects.size() > MOST_SUSPECTS) {
      throw words.misuse("weigh.suspects", suspects.size());
    }
    Contradictions.in(suspects)
        .ifPresent(
            pair -> {
              throw words.misuse("weigh.contradiction", pair.says());
            });
    return suspects;
  }

  /** What is not in the dictionary is run here and now, again after each repair that cured some. */
  private static Verdict verdict(
      List<Fault> suspects, Known known, Evidence evidence, double odds) {
    String text = suspects.stream().map(Fault::text).collect(Collectors.joining(" and "));
    if (suspects.size() == 1 && known.dictionary().knows(text)) {
      return known.diagnosis().weigh(text, evidence, odds);
    }
    List<Map<String, String>> stages =
        Reruns.of(suspects, evidence.done(), DictionaryRows.of(known.board(), evidence));
    return known.diagnosis().weigh(text, stages, Reruns.curing(suspects), evidence, odds);
  }

  private static void print(Verdict verdict, Terminal terminal) {
    Words words = terminal.words();
    terminal.say("weigh." + verdict.finding(), verdict.hypothesis(), fit(verdict));
    boolean contradicted = verdict.finding() == Verdict.Finding.CONTRADICTED;
    List<Verdict.Mismatch> told = contradicted ? verdict.contradicting() : verdict.mismatches();
    if (!told.isEmpty()) {
      terminal.say(contradicted ? "weigh.because" : "weigh.though");
    }
    for (Verdict.Mismatch m : told) {
      String how = m.expected().equals(Route.CURED) ? "weigh.in-vain" : "weigh.mismatch";
      terminal.say(how, m.seen().look(), m.expected(), m.seen().seen());
    }
    if (!verdict.alike().isEmpty()) {
      int more = verdict.alike().size() - ALIKE_SHOWN;
      terminal.say("weigh.alike");
      verdict.alike().stream().limit(ALIKE_SHOWN).forEach(f -> terminal.out().println("  " + f));
      if (more > 0) {
        terminal.say("weigh.alike-more", more);
      }
    }
    verdict
        .deciding()
        .ifPresentOrElse(
            d ->
                terminal.say(
                    "weigh.deciding",
                    d.look(),
                    Pricing.words(d.price(), words),
                    d.ifSo(),
                    d.ifNot()),
            () -> terminal.say("weigh.no-deciding"));
  }

  /** Whether a thing that was done for a moment helped is judgement: it is told beside. */
  private static void tried(Noted noted, Terminal terminal) {
    for (Statement statement : noted.statements()) {
      if (statement instanceof Statement.Tried t && NO_LOOKS.contains(t.came())) {
        terminal.say("weigh.tried", t.said());
      }
    }
  }

  private static String fit(Verdict verdict) {
    return BigDecimal.valueOf(verdict.fit()).round(new MathContext(2)).toPlainString();
  }

  private static Map<String, Object> json(Verdict verdict) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("suspect", verdict.hypothesis());
    json.put("finding", finding(verdict));
    json.put("fit", verdict.fit());
    json.put("mismatches", mismatches(verdict.mismatches()));
    json.put("contradicting", mismatches(verdict.contradicting()));
    json.put("alike", verdict.alike());
    verdict
        .deciding()
        .ifPresent(
            d -> {
              Map<String, Object> look = new LinkedHashMap<>();
              look.put("look", d.look());
              look.putAll(Figures.json(d.price()));
              look.put("ifSo", d.ifSo());
              look.put("ifNot", d.ifNot());
              json.put("deciding", look);
            });
    return json;
  }

  /** For machines. */
  static String finding(Verdict verdict) {
    return switch (verdict.finding()) {
      case PREDICTED -> "predicted";
      case CANNOT_RULE_OUT -> "cannotRuleOut";
      case CONTRADICTED -> "contradicted";
    };
  }

  private static List<Object> mismatches(List<Verdict.Mismatch> mismatches) {
    List<Object> objects = new ArrayList<>();
    for (Verdict.Mismatch m : mismatches) {
      Map<String, Object> object = new LinkedHashMap<>();
      object.put("look", m.seen().look());
      object.put("seen", m.seen().seen());
      object.put("expected", m.expected());
      objects.add(object);
    }
    return objects;
  }
}
