package faultfinch.cli;

import faultfinch.board.Board;
import faultfinch.diagnosis.Advice;
import faultfinch.diagnosis.Belief;
import faultfinch.diagnosis.Choice;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Share;
import faultfinch.diagnosis.Step;
import faultfinch.diagnosis.Whereabouts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.apache.commons.cli.Options;

/** Says what to look at next, what it costs, and what each outcome would mean. */
final class NextCommand implements Command {
  private static final String MOST = "most";
  private static final String JSON = "json";
  private static final int WIDTH = 100;
  private static final int USUAL = 5;
  private static final int MOST_PROPOSALS = 50;
  private static final int OUTCOMES_SHOWN = 6;
  private static final int REPAIRS_SHOWN = 6;

  /** Groups of less belief are for machines only. */
  private static final double GROUP_SHOWN = 0.1;

  /** From this belief on that it is none of the list it is said what to try then. */
  private static final double NEARBY_SHOWN = 0.5;

  private final BiFunction<Board, Terminal, Known> knowledge;

  /**
   * @param knowledge finds what is known of a board
   */
  NextCommand(BiFunction<Board, Terminal, Known> knowledge) {
    this.knowledge = knowledge;
  }

  @Override
  public Options options() {
    Options options = new Options();
    options.addOption(BoardChoice.option());
    Noted.addTo(options);
    return options.addOption(Given.value(MOST, "N")).addOption(Given.flag(JSON));
  }

  @Override
  public int run(Given given, Terminal terminal) {
    Words words = terminal.words();
    given.nothingElse();
    int most = (int) given.whole(MOST, USUAL, 1, MOST_PROPOSALS);
    Board board = new BoardChoice(words).board(given, Noted.boardOfFiles(given, words));
    Known known = knowledge.apply(board, terminal);
    Noted noted = new Noted(known, words);
    Evidence evidence = noted.evidence(given, terminal);
    Belief belief = known.diagnosis().belief(evidence);
    Whereabouts whereabouts = Whereabouts.of(board);
    Advice advice = known.diagnosis().next(evidence, belief, most, whereabouts);
    List<Share> nearby =
        belief.outside() < NEARBY_SHOWN
            ? List.of()
            : known.diagnosis().nearby(evidence, whereabouts, known.all().repairs()).stream()
                .limit(REPAIRS_SHOWN)
                .map(due -> new Share(due.action().text(), due.belief()))
                .toList();
    if (given.has(JSON)) {
      Map<String, Object> json = json(advice);
      json.put("twoFaults", belief.two());
      json.put("cured", belief.cured());
      json.put("nearby", shares(nearby));
      noted.json(json);
      JsonPage.print(json, terminal.out());
    } else {
      noted.remarks(terminal);
      if (belief.cured() > 0) {
        terminal.say("rank.cured", Figures.perCent(belief.cured(), words));
      }
      if (!nearby.isEmpty()) {
        Paragraph.print(
            terminal,
            "next.nearby",
            Figures.perCent(belief.outside(), words),
            repairs(nearby, words));
      }
      print(advice, known, terminal);
    }
    return DONE;
  }

  private static void print(Advice advice, Known known, Terminal terminal) {
    Words words = terminal.words();
    terminal.say(
        advice.classes() == 1 ? "next.field-one" : "next.field",
        advice.classes(),
        Figures.perCent(advice.outside(), words));
    terminal.say(
        "next.expected",
        Figures.oneDigit(advice.best().expectedPrice()),
        words.say("next.method." + advice.best().method()),
        Figures.oneDigit(advice.forecast().minutes()),
        Figures.twoDigits(advice.forecast().innocentChips()));
    if (advice.best().method() == Choice.Method.EXACT) {
      terminal.say("next.bound-exact");
    } else {
      terminal.say(
          advice.gap().isPresent() ? "next.bound" : "next.bound-only",
          Figures.oneDigit(advice.atLeast()),
          Figures.oneDigit(advice.gap().orElse(0.0)));
    }
    terminal.say(
        "next.owner",
        advice.forecast().half(),
        advice.forecast().eighth(),
        Figures.ofAHundred(advice.forecast().custom(), words));
    advice.groups().stream()
        .filter(g -> g.chance() >= GROUP_SHOWN)
        .forEach(
            g ->
                Paragraph.print(
                    terminal,
                    "next.group",
                    Figures.perCent(g.chance(), words),
                    order(g.order(), words)));
    int number = 0;
    for (Advice.Proposal proposal : advice.proposals()) {
      number++;
      terminal.out().println();
      terminal.say(
          proposal.step() instanceof Step.Observe ? "next.look" : "next.repair",
          number,
          proposal.step().text(),
          Pricing.words(proposal.price(), words),
          Figures.oneDigit(left(proposal)),
          advice.classes());
      print(
          proposal.outcomes().stream().limit(OUTCOMES_SHOWN).toList(),
          proposal.step().text(),
          known.dictionary(),
          terminal);
      int more = proposal.outcomes().size() - OUTCOMES_SHOWN;
      if (more > 0) {
        terminal.say("next.more-outcomes", more);
      }
    }
  }

  /** What it might show and mean; where that is long, in a line of its own. */
  private static void print(
      List<Advice.Branch> branches, String look, FaultDictionary dictionary, Terminal terminal) {
    Words words = terminal.words();
    List<String> outcomes = branches.stream().map(Advice.Branch::outcome).toList();
    boolean apart = outcomes.stream().anyMatch(InShort::isLong);
    List<String> shown = InShort.of(outcomes, look, dictionary, words);
    Columns together = new Columns();
    for (int i = 0; i < shown.size(); i++) {
      String outcome = words.say("next.outcome", shown.get(i));
      String chance = Figures.perCent(branches.get(i).chance(), words);
      String then = then(branches.get(i), words);
      if (apart) {
        Columns lines = new Columns();
        lines.row("  ", outcome);
        lines.print(terminal.out(), WIDTH);
        Columns under = new Columns();
        under.row("      " + chance, then);
        under.print(terminal.out(), WIDTH);
      } else {
        together.row("    " + outcome, chance, then);
      }
    }
    together.print(terminal.out(), WIDTH);
  }

  private static String then(Advice.Branch branch, Words words) {
    if (branch.repairs().isEmpty()) {
      return "";
    }
    return words.say(
        branch.classes() == 1 ? "next.then-one" : "next.then",
        branch.classes(),
        repairs(branch.repairs(), words));
  }

  private static String order(List<Share> order, Words words) {
    int more = order.size() - REPAIRS_SHOWN;
    String first = repairs(order.subList(0, Math.min(REPAIRS_SHOWN, order.size())), words);
    return more > 0 ? words.say("next.more-repairs", first, more) : first;
  }

  private static String repairs(List<Share> repairs, Words words) {
    return repairs.stream()
        .map(s -> words.say("next.due", s.what(), Figures.perCent(s.belief(), words)))
        .collect(Collectors.joining(", "));
  }

  /** Groups of causes left after it, on average. */
  private static double left(Advice.Proposal proposal) {
    return proposal.outcomes().stream().mapToDouble(b -> b.chance() * b.classes()).sum();
  }

  private static Map<String, Object> json(Advice advice) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("groups", advice.classes());
    json.put("outside", advice.outside());
    json.put("expectedPrice", advice.best().expectedPrice());
    json.put("method", advice.best().method().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    json.put("lowerBound", advice.atLeast());
    advice.gap().ifPresent(gap -> json.put("gap", gap));
    json.put("expectedMinutes", advice.forecast().minutes());
    json.put("innocentChips", advice.forecast().innocentChips());
    Map<String, Object> owner = new LinkedHashMap<>();
    owner.put("halfWithinMinutes", advice.forecast().half());
    owner.put("oneInEightOverMinutes", advice.forecast().eighth());
    owner.put("customPart", advice.forecast().custom());
    json.put("owner", owner);
    List<Object> groups = new ArrayList<>();
    for (Advice.Group group : advice.groups()) {
      groups.add(
          JsonPage.object("chance", group.chance(), "order", (Object) shares(group.order())));
    }
    json.put("notParted", groups);
    List<Object> steps = new ArrayList<>();
    for (Advice.Proposal p : advice.proposals()) {
      Map<String, Object> step = new LinkedHashMap<>();
      step.put("kind", p.step() instanceof Step.Observe ? "look" : "repair");
      step.put("step", p.step().text());
      step.putAll(Figures.json(p.price()));
      step.put("bits", p.bits());
      p.expectedPrice().ifPresent(price -> step.put("expectedPrice", price));
      step.put("groupsLeft", left(p));
      step.put("outcomes", p.outcomes().stream().<Object>map(NextCommand::json).toList());
      steps.add(step);
    }
    json.put("next", steps);
    return json;
  }

  private static Map<String, Object> json(Advice.Branch branch) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("outcome", branch.outcome());
    json.put("chance", branch.chance());
    json.put("groups", branch.classes());
    json.put("repairs", shares(branch.repairs()));
    return json;
  }

  private static List<Object> shares(List<Share> repairs) {
    return repairs.stream()
        .<Object>map(s -> JsonPage.object("repair", s.what(), "chance", s.belief()))
        .toList();
  }
}
