package faultfinch.cli;

import faultfinch.bench.BenchRom;
import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.diagnosis.BuildSample;
import faultfinch.diagnosis.Coverage;
import faultfinch.diagnosis.DictionaryRows;
import faultfinch.diagnosis.ErrorRates;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.fault.FaultUniverse;
import faultfinch.judging.Judge;
import faultfinch.judging.Judged;
import faultfinch.judging.PairJudge;
import faultfinch.judging.PairsJudged;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.apache.commons.cli.Options;

/**
 * Tells how much of what can be wrong with a board changes anything, shows, and can be told apart,
 * and what drawn jobs cost that follow the advice or the usual practices.
 */
final class SurveyCommand implements Command {
  private static final String JSON = "json";
  private static final String COMPLETE = "complete";
  private static final String CSV = "csv";
  private static final String TIER = "tier";
  private static final String JOBS = "jobs";
  private static final String WEIGHED = "weighed";
  private static final String SEED = "seed";
  private static final String SPEED = "speed";
  private static final String PAIRS = "pairs";
  private static final int USUAL_JOBS = 1000;
  private static final int MOST_JOBS = 100_000;
  private static final int MOST_GROUPS = 10_000;

  /** Nobody tuned on the draw of this seed. */
  private static final int USUAL_SEED = 2;

  private static final int TOLD_EVERY = 100;
  private static final int TOLD_PAIRS = 10;
  private static final int WIDTH = 96;
  private static final int PER_CENT = 100;

  private final BiFunction<Board, Terminal, Known> knowledge;
  private final BiFunction<Board, Terminal, Known> whole;

  /**
   * @param knowledge finds what is known of a board
   * @param whole finds all that can be known, which may take long
   */
  SurveyCommand(
      BiFunction<Board, Terminal, Known> knowledge, BiFunction<Board, Terminal, Known> whole) {
    this.knowledge = knowledge;
    this.whole = whole;
  }

  /** All that is told; shares are of 1, each fault by how likely it is. */
  private record Told(
      Known known,
      int faults,
      int beforeCollapse,
      OptionalDouble excited,
      List<Coverage> tiers,
      Optional<Judged> judged,
      boolean weighed,
      Optional<BuildSample> build,
      Optional<PairsJudged> pairs) {

    Board board() {
      return known.board();
    }

    Coverage tier(ErrorRates.Tier tier) {
      return tiers.get(tier.ordinal());
    }

    Coverage any() {
      return tier(ErrorRates.Tier.ANY);
    }

    /** Whether rounds of the bench ROM are in the dictionary. */
    boolean benchRom() {
      return known.dictionary().looks().stream().anyMatch(l -> BenchRom.named(l).isPresent());
    }

    /** Share of the faults that no look shows. */
    double silent() {
      return 1 - any().visibleByWeight();
    }
  }

  @Override
  public Options options() {
    return new Options()
        .addOption(BoardChoice.option())
        .addOption(Given.flag(COMPLETE))
        .addOption(Given.value(CSV, "FILE"))
        .addOption(Given.value(TIER, "TIER"))
        .addOption(Given.value(JOBS, "N"))
        .addOption(Given.value(WEIGHED, "N"))
        .addOption(Given.value(SEED, "S"))
        .addOption(Given.value(PAIRS, "N"))
        .addOption(Given.value(SPEED, "N"))
        .addOption(Given.flag(JSON));
  }

  @Override
  public int run(Given given, Terminal terminal) {
    given.nothingElse();
    Board board = new BoardChoice(terminal.words()).board(given);
    ErrorRates.Tier tier = tier(given, terminal.words());
    int jobs = (int) given.whole(JOBS, USUAL_JOBS, 0, MOST_JOBS);
    int weighed = (int) given.whole(WEIGHED, given.has(JOBS) ? jobs : 0, 0, MOST_JOBS);
    int groups = (int) given.whole(SPEED, 0, 0, MOST_GROUPS);
    int pairs = (int) given.whole(PAIRS, 0, 0, MOST_JOBS);
    long seed = given.whole(SEED, USUAL_SEED, 0, Integer.MAX_VALUE);
    Optional<OutFile> csv = given.text(CSV).map(f -> OutFile.at(f, terminal.words()));
    Known known = (given.has(COMPLETE) ? whole : knowledge).apply(board, terminal);
    csv.ifPresent(
        file ->
            file.write(
                DictionaryCsv.bytes(
                    known.dictionary(), known.diagnosis().suspects(), ErrorRates.shipped(), tier)));
    Told told =
        new Told(
            known,
            collapsed(known.board(), known.dictionary()),
            known.dictionary().faults().size(),
            known.diagnosis().excited(),
            known.diagnosis().coverage(),
            judged(known, jobs, weighed, seed, terminal),
            weighed > 0,
            build(known.board(), groups, seed),
            pairs(known, pairs, seed, terminal));
    if (given.has(JSON)) {
      JsonPage.print(json(told, terminal.words()), terminal.out());
    } else {
      print(told, terminal);
    }
    return DONE;
  }

  /** Boards with two faults followed to the end; empty of none. */
  private static Optional<PairsJudged> pairs(Known known, int count, long seed, Terminal terminal) {
    return count == 0
        ? Optional.empty()
        : Optional.of(
            new PairJudge(
                    known.board(),
                    known.dictionary(),
                    known.diagnosis().suspects(),
                    Prices.shipped(),
                    () -> DictionaryRows.of(known.board(), known.dictionary()))
                .follow(
                    count,
                    seed,
                    (soFar, all) -> {
                      int done = soFar.jobs() + soFar.masked();
                      if (done % TOLD_PAIRS == 0 || done == all) {
                        terminal.err().println(soFar(soFar, done, all, terminal.words()));
                      }
                      return true;
                    }));
  }

  private static String soFar(PairsJudged soFar, int done, int all, Words words) {
    return words.say(
        "survey.pairs-progress",
        done,
        all,
        share(soFar.cured(), words),
        Figures.twoDigits(soFar.innocent()),
        Figures.twoDigits(soFar.ratio()));
  }

  /** A sample of the runs a dictionary takes; empty of none. */
  private static Optional<BuildSample> build(Board board, int groups, long seed) {
    return groups == 0
        ? Optional.empty()
        : Optional.of(
            BuildSample.of(
                board,
                groups,
                seed,
                () -> ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime(),
                cost -> {}));
  }

  /** Jobs followed to the end; empty if there are none to follow. */
  private static Optional<Judged> judged(
      Known known, int jobs, int weighed, long seed, Terminal terminal) {
    Judge judge =
        new Judge(
            known.board(), known.dictionary(), known.diagnosis().suspects(), Prices.shipped());
    return jobs == 0
        ? Optional.empty()
        : judge.jobs(
            jobs,
            weighed,
            seed,
            (done, all) -> {
              if (weighed > 0 && (done % TOLD_EVERY == 0 || done == all)) {
                terminal.err().println(terminal.words().say("survey.progress", done, all));
              }
              return true;
            });
  }

  /** The last tier whose looks are written down; those of owner and bench ROM if none is given. */
  private static ErrorRates.Tier tier(Given given, Words words) {
    String asked = given.text(TIER).orElse(ErrorRates.Tier.BENCH_ROM.word());
    return Arrays.stream(ErrorRates.Tier.values())
        .filter(t -> t.word().equals(asked))
        .findFirst()
        .orElseThrow(
            () ->
                words.misuse(
                    "survey.no-tier",
                    asked,
                    Arrays.stream(ErrorRates.Tier.values())
                        .map(ErrorRates.Tier::word)
                        .collect(Collectors.joining(", "))));
  }

  private static int collapsed(Board board, FaultDictionary dictionary) {
    return (int)
        FaultUniverse.of(board).groups().stream()
            .filter(group -> group.stream().anyMatch(f -> dictionary.knows(f.text())))
            .count();
  }

  private static Map<String, Object> json(Told told, Words words) {
    Map<String, Object> detected = new LinkedHashMap<>();
    detected.put("owner", told.tier(ErrorRates.Tier.OWNER).visibleByWeight());
    if (told.benchRom()) {
      detected.put("benchRom", told.tier(ErrorRates.Tier.BENCH_ROM).visibleByWeight());
    }
    detected.put("poweredLooks", told.tier(ErrorRates.Tier.POWERED).visibleByWeight());
    detected.put("anyLook", told.any().visibleByWeight());
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("board", told.board().name());
    json.put("faults", told.faults);
    json.put("faultsBeforeCollapse", told.beforeCollapse);
    json.put("notRun", told.known.notRun());
    json.put("notRunByWeight", 1 - told.known.weightRun());
    json.put("silent", told.silent());
    told.excited.ifPresent(share -> json.put("excited", share));
    json.put("detected", detected);
    json.put("classes", told.any().classes());
    json.put("meanGroupByFault", told.any().meanFaults());
    json.put("meanGroupByAction", told.any().meanActions());
    json.put("isolatedToOneAction", told.any().isolatedByWeight());
    told.build.ifPresent(
        sample -> {
          json.put("buildSeconds", sample.buildSeconds());
          json.put("speedUpOverNaive", sample.speedUpOverNaive());
        });
    told.judged.ifPresent(j -> new JudgedPage(j).json(json));
    told.pairs.ifPresent(p -> json.put("pairs", pairs(p)));
    json.put("notComputed", notComputed(told, words));
    return json;
  }

  private static Map<String, Object> pairs(PairsJudged pairs) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("jobs", pairs.jobs());
    json.put("bothCured", pairs.cured());
    json.put("bothCuredAtLeast", pairs.atLeast());
    json.put("innocentChips", pairs.innocent());
    json.put("minutes", pairs.minutes());
    json.put("price", pairs.price());
    json.put("priceOfTwoJobs", pairs.ratio());
    json.put("masked", pairs.masked());
    json.put("bothCuredOfMasked", pairs.curedMasked());
    return json;
  }

  /** Why a figure is not there. */
  private static Map<String, Object> notComputed(Told told, Words words) {
    Map<String, Object> reasons = new LinkedHashMap<>();
    if (told.judged.isEmpty()) {
      reasons.put("advisor", words.say("survey.no-jobs"));
    } else if (!told.weighed) {
      reasons.put("perturbed", words.say("survey.not-weighed"));
      reasons.put("wrongReadings", words.say("survey.not-weighed"));
    }
    if (told.build.isEmpty()) {
      reasons.put("buildSeconds", words.say("survey.no-speed"));
      reasons.put("speedUpOverNaive", words.say("survey.no-speed"));
    }
    if (told.pairs.isEmpty()) {
      reasons.put("pairs", words.say("survey.no-pairs"));
    }
    return reasons;
  }

  private static void print(Told told, Terminal terminal) {
    Words words = terminal.words();
    Paragraph.print(
        terminal, "survey.faults", told.board().title(), told.beforeCollapse, told.faults);
    terminal.out().println();
    Columns columns = new Columns();
    row(columns, words, "owner", share(told.tier(ErrorRates.Tier.OWNER).visibleByWeight(), words));
    row(
        columns,
        words,
        "bench-rom",
        told.benchRom()
            ? share(told.tier(ErrorRates.Tier.BENCH_ROM).visibleByWeight(), words)
            : words.say(
                told.board().benchRom().isPresent()
                    ? "survey.bench-rom-not-run"
                    : "survey.no-bench-rom"));
    row(
        columns,
        words,
        "powered",
        share(told.tier(ErrorRates.Tier.POWERED).visibleByWeight(), words));
    row(columns, words, "any", share(told.any().visibleByWeight(), words));
    row(columns, words, "silent", share(told.silent(), words));
    if (!told.known.whole()) {
      row(columns, words, "not-run", share(1 - told.known.weightRun(), words));
    }
    row(
        columns,
        words,
        "excited",
        told.excited.isPresent()
            ? share(told.excited.getAsDouble(), words)
            : words.say("survey.not-noted"));
    columns.print(terminal.out(), WIDTH);
    terminal.out().println();
    Paragraph.print(
        terminal,
        "survey.groups",
        told.any().classes(),
        Figures.oneDigit(told.any().meanFaults()),
        Figures.oneDigit(told.any().meanActions()),
        share(told.any().isolatedByWeight(), words));
    told.judged.ifPresent(j -> new JudgedPage(j).print(terminal));
    told.pairs.ifPresent(
        pairs ->
            Paragraph.print(
                terminal,
                "survey.pairs-judged",
                pairs.jobs(),
                share(pairs.cured(), words),
                share(pairs.atLeast(), words),
                Figures.twoDigits(pairs.innocent()),
                Figures.oneDigit(pairs.minutes()),
                Figures.oneDigit(pairs.price()),
                Figures.twoDigits(pairs.ratio()),
                pairs.masked(),
                share(pairs.curedMasked(), words)));
    told.build.ifPresent(
        sample ->
            Paragraph.print(
                terminal,
                "survey.build",
                sample.costs().size(),
                sample.groups(),
                Figures.noDigit(sample.buildSeconds()),
                Figures.oneDigit(sample.speedUpOverNaive())));
    terminal.out().println();
    notComputed(told, words)
        .forEach((what, why) -> Paragraph.print(terminal, "survey.not-computed", what, why));
  }

  private static void row(Columns columns, Words words, String key, String share) {
    columns.row("  " + words.say("survey." + key), share);
  }

  private static String share(double share, Words words) {
    return words.say("figure.per-cent", Figures.oneDigit(PER_CENT * share));
  }
}
