package faultfinch.cli;

import faultfinch.judging.Costs;
import faultfinch.judging.Dear;
import faultfinch.judging.Estimate;
import faultfinch.judging.Hits;
import faultfinch.judging.Judged;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;

/** What followed jobs cost, as a table and for machines. */
final class JudgedPage {
  private static final int WIDTH = 110;

  private final Judged judged;

  JudgedPage(Judged judged) {
    this.judged = judged;
  }

  void print(Terminal terminal) {
    Words words = terminal.words();
    terminal.out().println();
    Paragraph.print(
        terminal,
        "survey.drawn",
        judged.jobs(),
        judged.seed(),
        Figures.perCent(judged.silent(), words));
    terminal.out().println();
    Columns columns = new Columns();
    columns.row(
        words.say("survey.way"),
        words.say("survey.innocent"),
        words.say("survey.minutes"),
        words.say("survey.minutes95"),
        words.say("survey.price"),
        words.say("survey.looks"));
    row(columns, words.say("survey.advisor"), judged.advisor());
    row(columns, words.say("survey.reference"), judged.reference());
    judged
        .practices()
        .forEach((practice, costs) -> row(columns, words.say("survey." + practice), costs));
    judged
        .weighing()
        .ifPresent(
            w -> {
              row(columns, words.say("survey.right"), w.right().costs());
              row(columns, words.say("survey.matched"), w.matched().costs());
              row(columns, words.say("survey.perturbed"), w.perturbed().all().costs());
              row(columns, words.say("survey.doubting"), w.wrongReadings().right().costs());
              row(columns, words.say("survey.wrong"), w.wrongReadings().wrong().costs());
            });
    columns.print(terminal.out(), WIDTH);
    terminal.out().println();
    Paragraph.print(
        terminal,
        "survey.ratios",
        Figures.perCent(judged.ratio().at(), words),
        Figures.twoDigits(judged.over().at()));
    first(terminal, "survey.first", judged.hits());
    judged.weighing().ifPresent(w -> weighing(terminal, w));
    terminal.out().println();
    dearest(terminal);
  }

  private static void weighing(Terminal terminal, Judged.Weighing weighing) {
    Words words = terminal.words();
    Judged.Perturbed other = weighing.perturbed();
    Paragraph.print(
        terminal,
        "survey.perturbed-ratio",
        Figures.perCent(other.ratio().at(), words),
        Figures.perCent(other.outside(), words));
    first(terminal, "survey.first-inside", other.inside());
    first(terminal, "survey.first-outside", other.outsideHits());
    Paragraph.print(
        terminal,
        "survey.wrong-ratio",
        Figures.perCent(weighing.wrongReadings().ratio().at(), words),
        Figures.perCent(weighing.wrongReadings().firstKept(), words));
    first(terminal, "survey.first-wrong", weighing.wrongReadings().wrong().hits());
  }

  private static void first(Terminal terminal, String key, Hits hits) {
    Words words = terminal.words();
    Paragraph.print(
        terminal,
        key,
        share(hits.first(), words),
        share(hits.topThree(), words),
        share(hits.sureAndWrong(), words));
  }

  private void dearest(Terminal terminal) {
    Words words = terminal.words();
    terminal.say("survey.dearest");
    Columns columns = new Columns();
    columns.row(
        words.say("survey.share"),
        words.say("survey.price"),
        words.say("survey.known"),
        words.say("survey.innocent"),
        words.say("survey.alike"),
        words.say("survey.fault"));
    for (Dear dear : judged.dearest()) {
      columns.row(
          Figures.oneDigit(100 * dear.share()),
          Figures.oneDigit(dear.price()),
          Figures.oneDigit(dear.known()),
          Figures.oneDigit(dear.innocent()),
          String.valueOf(dear.alike()),
          dear.fault());
    }
    columns.print(terminal.out(), WIDTH);
  }

  private static void row(Columns columns, String way, Costs costs) {
    columns.row(
        way,
        spread(costs.innocent(), Figures::twoDigits),
        spread(costs.minutes(), Figures::oneDigit),
        Figures.oneDigit(costs.minutes95().at()),
        spread(costs.price(), Figures::oneDigit),
        Figures.oneDigit(costs.looks().at()));
  }

  private static String spread(Estimate estimate, DoubleFunction<String> digits) {
    return digits.apply(estimate.at()) + " ± " + digits.apply(estimate.high() - estimate.at());
  }

  private static String share(Estimate estimate, Words words) {
    return Double.isNaN(estimate.at())
        ? words.say("survey.none")
        : words.say("figure.per-cent", Figures.oneDigit(100 * estimate.at()));
  }

  /** Puts all of it into an object for machines. */
  void json(Map<String, Object> json) {
    json.put("jobs", judged.jobs());
    json.put("seed", judged.seed());
    json.put("nobodyNotices", judged.silent());
    json.put("advisor", costs(judged.advisor(), judged.hits()));
    json.put("noPullReference", costs(judged.reference()));
    judged.practices().forEach((practice, costs) -> json.put(key(practice), costs(costs)));
    json.put("priceToBestPractice", interval(judged.ratio()));
    json.put("innocentChipsOverReference", interval(judged.over()));
    List<Object> dearest = new ArrayList<>();
    judged.dearest().forEach(d -> dearest.add(json(d)));
    json.put("dearest", dearest);
    judged.weighing().ifPresent(w -> weighing(w, json));
  }

  private static void weighing(Judged.Weighing weighing, Map<String, Object> json) {
    json.put("weighedJobs", weighing.jobs());
    json.put("weighing", costs(weighing.right()));
    json.put("matched", costs(weighing.matched()));
    Judged.Perturbed other = weighing.perturbed();
    Map<String, Object> perturbed = costs(other.all());
    perturbed.put("topThree", other.inside().topThree().at());
    perturbed.put("outside", other.outside());
    perturbed.put("inside", hits(other.inside()));
    perturbed.put("outsideTheList", hits(other.outsideHits()));
    perturbed.put("priceToMatched", interval(other.ratio()));
    json.put("perturbed", perturbed);
    Judged.WrongReadings readings = weighing.wrongReadings();
    Map<String, Object> wrong = costs(readings.wrong());
    wrong.put("withoutMistake", costs(readings.right()));
    wrong.put("priceToWithoutMistake", interval(readings.ratio()));
    wrong.put("firstToWithoutMistake", readings.firstKept());
    json.put("wrongReadings", wrong);
  }

  private static String key(Judged.Practised practice) {
    return switch (practice) {
      case BOARD_ORDER -> "boardOrder";
      case MOST_FAILING_FIRST -> "mostFailingFirst";
      case SYMPTOM_FIRST -> "symptomFirst";
      case PROBE_FIRST -> "probeFirst";
    };
  }

  private static Map<String, Object> costs(Judged.Case one) {
    return costs(one.costs(), one.hits());
  }

  private static Map<String, Object> costs(Costs costs, Hits hits) {
    Map<String, Object> json = costs(costs);
    json.putAll(hits(hits));
    return json;
  }

  private static Map<String, Object> costs(Costs costs) {
    Map<String, Object> json = new LinkedHashMap<>();
    put(json, "innocentChips", costs.innocent());
    put(json, "minutes", costs.minutes());
    put(json, "minutes95", costs.minutes95());
    put(json, "price", costs.price());
    put(json, "looks", costs.looks());
    return json;
  }

  private static Map<String, Object> hits(Hits hits) {
    Map<String, Object> json = new LinkedHashMap<>();
    put(json, "first", hits.first());
    put(json, "topThree", hits.topThree());
    put(json, "sureAndWrong", hits.sureAndWrong());
    return json;
  }

  /** The figure, and beside it between what it lies; nothing if no job says anything of it. */
  private static void put(Map<String, Object> json, String key, Estimate estimate) {
    if (!Double.isNaN(estimate.at())) {
      json.put(key, estimate.at());
      json.put(key + "Between", List.of(estimate.low(), estimate.high()));
    }
  }

  private static Map<String, Object> interval(Estimate estimate) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("at", estimate.at());
    json.put("between", List.of(estimate.low(), estimate.high()));
    return json;
  }

  private static Map<String, Object> json(Dear dear) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("fault", dear.fault());
    json.put("share", dear.share());
    json.put("price", dear.price());
    json.put("priceIfKnown", dear.known());
    json.put("innocentChips", dear.innocent());
    json.put("looks", dear.looks());
    json.put("repairs", dear.repairs());
    json.put("repairsAlike", dear.alike());
    return json;
  }
}
