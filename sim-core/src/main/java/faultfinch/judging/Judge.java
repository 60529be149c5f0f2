package faultfinch.judging;

import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.bench.Price;
import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.diagnosis.BenchPrices;
import faultfinch.diagnosis.BuildProgress;
import faultfinch.diagnosis.Diagnosis;
import faultfinch.diagnosis.Due;
import faultfinch.diagnosis.ErrorRates;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Outlook;
import faultfinch.diagnosis.PriceList;
import faultfinch.diagnosis.PricePlanner;
import faultfinch.diagnosis.Suspect;
import faultfinch.diagnosis.Suspects;
import faultfinch.diagnosis.Whereabouts;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Draws jobs of one kind of board and follows each to the end, as the advisor goes and as others
 * go. Same seed, same figures.
 *
 * <p>Not judged: boards of another seed, thresholds and leaks between the values of the list, which
 * need runs of the machine; of two faults at once see {@link PairJudge}.
 */
public final class Judge {
  private static final int DEAREST = 8;

  /** How often readings go wrong in the case named after it, and are taken to. */
  private static final double WRONG = 0.05;

  private static final double TOLD_WRONG = 0.1;

  private final Board board;
  private final FaultDictionary dictionary;
  private final Suspects suspects;
  private final PriceList prices;
  private final Price retest;
  private final ErrorRates rates = ErrorRates.shipped();
  private final Whereabouts whereabouts;

  /**
   * @param suspects that the dictionary knows
   */
  public Judge(Board board, FaultDictionary dictionary, Suspects suspects, Prices prices) {
    this.board = board;
    this.dictionary = dictionary;
    this.suspects = suspects;
    this.prices = new BenchPrices(prices);
    retest = prices.of(new Move(Moves.RETEST, ""));
    whereabouts = Whereabouts.of(board);
  }

  /**
   * Follows jobs that are taken at their word; empty if nobody would notice any fault.
   *
   * @param weighed how many jobs are weighed as well, in each case; 0 for none
   * @param progress told of jobs; it cannot end this
   */
  public Optional<Judged> jobs(int count, int weighed, long seed, BuildProgress progress) {
    Population population = population(suspects);
    return population.noticed().isEmpty()
        ? Optional.empty()
        : Optional.of(jobs(population, count, weighed, seed, progress));
  }

  private Judged jobs(
      Population population, int count, int weighed, long seed, BuildProgress progress) {
    List<Job> jobs = population.draw(count, seed);
    Ways ways = new Ways(board, dictionary, suspects, prices, population);
    Following following = new Following(progress, jobs.size() + 5 * weighed);
    Readings right = new TrueReadings(dictionary);
    Map<Job, Bill> advised = following.follow(jobs, atItsWord().then(ways.unlisted()), right);
    Map<Job, Bill> reference = bills(jobs, ways.noPullReference(), right);
    Map<Judged.Practised, Map<Job, Bill>> practised = new EnumMap<>(Judged.Practised.class);
    for (Judged.Practised practice : Judged.Practised.values()) {
      practised.put(practice, bills(jobs, practice(practice, ways), right));
    }
    Map<Judged.Practised, Costs> costs = new EnumMap<>(Judged.Practised.class);
    practised.forEach((practice, bills) -> costs.put(practice, Costs.of(bills)));
    Judged.Practised best =
        costs.keySet().stream()
            .min(Comparator.comparingDouble(p -> costs.get(p).price().at()))
            .orElseThrow();
    return new Judged(
        seed,
        jobs.size(),
        population.silent(),
        Costs.of(advised),
        Hits.of(advised),
        Costs.of(reference),
        costs,
        ratio(advised, practised.get(best)),
        Estimate.mean(pairs(advised, reference, Bill::innocent), p -> p[0] - p[1]),
        dearest(advised),
        weighed == 0
            ? Optional.empty()
            : Optional.of(weighing(weighed, seed, population, ways, following)));
  }

  private Population population(Suspects faults) {
    return new Population(
        dictionary,
        faults,
        new Signs(board, dictionary),
        s -> FaultKinds.parse(s.fault(), board).kind().name());
  }

  private Practice atItsWord() {
    return new Advised(
        c -> Outlook.atItsWord(dictionary, suspects, prices, c.evidence()),
        new PricePlanner(),
        Advised.Patience.FIRM);
  }

  private Practice weighing(Suspects listed, ErrorRates assumed) {
    ErrorRates doubting = assumed.doubting();
    return new Advised(
            c -> Outlook.weighed(dictionary, listed, assumed, prices, c.evidence()),
            new PricePlanner(),
            Advised.Patience.USUAL)
        .then(new CloseBy(nearby(listed, assumed)))
        .then(
            new SecondThoughts(
                v -> Outlook.weighed(dictionary, listed, doubting, prices, v.evidence()),
                new PricePlanner()));
  }

  private Function<Evidence, List<Due>> nearby(Suspects listed, ErrorRates assumed) {
    Diagnosis diagnosis = new Diagnosis(dictionary, listed, assumed, prices, new PricePlanner());
    Set<RepairAction> possible = suspects.repairs();
    return evidence -> diagnosis.nearby(evidence, whereabouts, possible);
  }

  private static Practice practice(Judged.Practised practice, Ways ways) {
    return switch (practice) {
      case BOARD_ORDER -> ways.boardOrder();
      case MOST_FAILING_FIRST -> ways.mostFailingFirst();
      case SYMPTOM_FIRST -> ways.symptomFirst();
      case PROBE_FIRST -> ways.probeFirst();
    };
  }

  private Map<Job, Bill> bills(List<Job> jobs, Practice practice, Readings readings) {
    return Ways.follow(jobs, practice, readings, prices, retest);
  }

  /** Follows jobs one by one and tells of it. */
  private final class Following {
    private final BuildProgress progress;
    private final int all;
    private int done;

    Following(BuildProgress progress, int all) {
      this.progress = progress;
      this.all = all;
    }

    Map<Job, Bill> follow(List<Job> jobs, Practice practice, Readings readings) {
      Map<Job, Bill> bills = new LinkedHashMap<>();
      for (Job job : jobs) {
        bills.putAll(bills(List.of(job), practice, readings));
        done++;
        progress.goOn(Math.min(done, all), all);
      }
      return bills;
    }
  }

  private Judged.Weighing weighing(
      int count, long seed, Population population, Ways ways, Following following) {
    List<Job> jobs = population.draw(count, seed);
    Readings right = new TrueReadings(dictionary);
    Practice after = ways.unlisted();
    Practice usual = weighing(suspects, rates).then(after);
    Map<Job, Bill> sure = following.follow(jobs, usual, right);
    Misreadings asAssumed =
        new Misreadings(right, dictionary, rates, rates.bench(), rates.told(), seed);
    Map<Job, Bill> matched = following.follow(jobs, usual, asAssumed);
    ErrorRates careless = rates.assuming("error.bench", WRONG);
    Practice doubting = weighing(suspects, careless).then(after);
    Map<Job, Bill> doubted = following.follow(jobs, doubting, right);
    Misreadings wrong = new Misreadings(right, dictionary, rates, WRONG, WRONG, seed);
    Map<Job, Bill> misread = following.follow(jobs, doubting, wrong);
    Hits without = Hits.of(doubted);
    Hits with = Hits.of(misread);
    return new Judged.Weighing(
        jobs.size(),
        new Judged.Case(Costs.of(sure), Hits.of(sure)),
        new Judged.Case(Costs.of(matched), Hits.of(matched)),
        perturbed(count, seed, matched, following),
        new Judged.WrongReadings(
            new Judged.Case(Costs.of(misread), with),
            new Judged.Case(Costs.of(doubted), without),
            ratio(misread, doubted),
            with.first().at() / without.first().at()));
  }

  private Judged.Perturbed perturbed(
      int count, long seed, Map<Job, Bill> matched, Following following) {
    OtherWorld world = OtherWorld.of(suspects, seed);
    Population population = population(world.faults());
    List<Job> jobs = population.draw(count, seed);
    SymptomFirst known =
        new SymptomFirst(
            population(world.listed()).byComplaint(), population(suspects).truths(), prices);
    Practice advised =
        weighing(world.listed(), rates).then(new Unlisted(new Wires(board, dictionary), known));
    Misreadings readings =
        new Misreadings(
            new TrueReadings(dictionary), dictionary, rates, rates.bench(), TOLD_WRONG, seed);
    Map<Job, Bill> bills = following.follow(jobs, advised, readings);
    Map<Job, Bill> outside = new LinkedHashMap<>(bills);
    outside.keySet().removeIf(j -> !world.hidden().contains(j.truth().suspect().fault()));
    Map<Job, Bill> inside = new LinkedHashMap<>(bills);
    inside.keySet().removeAll(outside.keySet());
    return new Judged.Perturbed(
        new Judged.Case(Costs.of(bills), Hits.of(bills)),
        outside.keySet().stream().mapToDouble(Job::share).sum(),
        Hits.of(inside),
        Hits.of(outside),
        Estimate.quotient(Costs.of(bills).price(), Costs.of(matched).price()));
  }

  private static Estimate ratio(Map<Job, Bill> above, Map<Job, Bill> below) {
    return Estimate.ratio(pairs(above, below, b -> b.price().total()));
  }

  private static Map<Job, double[]> pairs(
      Map<Job, Bill> one, Map<Job, Bill> other, ToDoubleFunction<Bill> of) {
    Map<Job, double[]> pairs = new LinkedHashMap<>();
    one.forEach(
        (job, bill) ->
            pairs.put(
                job, new double[] {of.applyAsDouble(bill), of.applyAsDouble(other.get(job))}));
    return pairs;
  }

  private List<Dear> dearest(Map<Job, Bill> bills) {
    Map<Integer, Set<RepairAction>> due = new LinkedHashMap<>();
    for (Suspect suspect : suspects.all()) {
      for (Truth truth : Truth.of(suspect)) {
        due.computeIfAbsent(dictionary.row(suspect.fault()), k -> new LinkedHashSet<>())
            .add(truth.due(prices));
      }
    }
    Map<String, List<Map.Entry<Job, Bill>>> byFault = new LinkedHashMap<>();
    bills
        .entrySet()
        .forEach(
            e ->
                byFault
                    .computeIfAbsent(e.getKey().truth().suspect().fault(), k -> new ArrayList<>())
                    .add(e));
    return byFault.entrySet().stream()
        .map(e -> dear(e.getKey(), e.getValue(), due.get(dictionary.row(e.getKey())).size()))
        .sorted(Comparator.comparingDouble(Dear::added).reversed())
        .limit(DEAREST)
        .toList();
  }

  private Dear dear(String fault, List<Map.Entry<Job, Bill>> jobs, int alike) {
    double share = 0;
    double price = 0;
    double known = 0;
    double innocent = 0;
    double looks = 0;
    double repairs = 0;
    for (Map.Entry<Job, Bill> e : jobs) {
      double each = e.getKey().share();
      share += each;
      price += each * e.getValue().price().total();
      known += each * prices.repair(e.getKey().truth().due(prices)).plus(retest).total();
      innocent += each * e.getValue().innocent();
      looks += each * e.getValue().looks();
      repairs += each * e.getValue().repairs();
    }
    return new Dear(
        fault,
        share,
        price / share,
        known / share,
        innocent / share,
        looks / share,
        repairs / share,
        alike);
  }
}
