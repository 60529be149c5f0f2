package faultfinch.attempt;

import faultfinch.bench.Bench;
import faultfinch.bench.BenchRom;
import faultfinch.bench.Job;
import faultfinch.bench.Look;
import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.bench.Price;
import faultfinch.bench.Prices;
import faultfinch.diagnosis.BenchPrices;
import faultfinch.diagnosis.CurrentRows;
import faultfinch.diagnosis.Diagnosis;
import faultfinch.diagnosis.DictionaryRows;
import faultfinch.diagnosis.Evidence;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.Route;
import faultfinch.diagnosis.RowSource;
import faultfinch.diagnosis.StartRows;
import faultfinch.diagnosis.Step;
import faultfinch.diagnosis.Suspects;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import faultfinch.fault.RepairAction;
import faultfinch.format.Case;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Advice out of the dictionary of the board: what every single fault would have shown. */
final class DictionaryAdviser implements Adviser {
  private static final int SURE = 100;

  private final FaultDictionary dictionary;
  private final Suspects suspects;
  private final Prices prices;
  private final Diagnosis diagnosis;

  DictionaryAdviser(FaultDictionary dictionary, FaultUniverse universe, Prices prices) {
    this(dictionary, Suspects.of(universe).knownTo(dictionary), prices);
  }

  DictionaryAdviser(FaultDictionary dictionary, Suspects suspects, Prices prices) {
    this.dictionary = dictionary;
    this.suspects = suspects;
    this.prices = prices;
    diagnosis = Diagnosis.of(dictionary, suspects, new BenchPrices(prices));
  }

  @Override
  public OptionalInt field(Facts facts) {
    Set<RepairAction> repairs = new HashSet<>();
    for (faultfinch.diagnosis.Suspect s : suspects.all()) {
      boolean missed = facts.missed().stream().anyMatch(a -> s.cures().getOrDefault(a, 0) == SURE);
      if (!missed && agrees(dictionary.row(s.fault()), facts)) {
        repairs.add(s.repair());
      }
    }
    return OptionalInt.of(repairs.size());
  }

  private boolean agrees(int row, Facts facts) {
    for (Facts.Seen seen : weighed(facts)) {
      OptionalInt look = dictionary.look(seen.look());
      if (look.isPresent() && !dictionary.shows(look.getAsInt(), row, seen.feature())) {
        return false;
      }
    }
    return true;
  }

  @Override
  public List<Suspect> suspects(Facts facts) {
    return diagnosis.belief(evidence(facts)).places().stream()
        .map(s -> new Suspect(s.what(), s.belief()))
        .toList();
  }

  /** The bench starts five times and the dictionary eight: what it tells is not compared. */
  private static List<Facts.Seen> weighed(Facts facts) {
    return facts.seen().stream().filter(s -> !s.look().equals(StartRows.LOOK)).toList();
  }

  private static Evidence evidence(Facts facts) {
    return new Evidence(
        weighed(facts).stream().map(s -> Observation.bench(s.look(), s.feature())).toList(),
        facts.missed());
  }

  @Override
  public boolean lookFirst(Facts facts) {
    return diagnosis.next(evidence(facts), 1).best().step() instanceof Step.Observe;
  }

  @Override
  public Debrief.Best best(Case job) {
    RowSource rows = DictionaryRows.of(job.board(), dictionary);
    List<Debrief.Leg> legs = new ArrayList<>();
    Price price = Price.NOTHING;
    List<Fault> left = job.faults();
    while (!left.isEmpty()) {
      List<Fault> now = left;
      Route route =
          diagnosis.route(
              rows.shown(now, job.seed()),
              a -> after(job, now, a).size() < now.size(),
              Evidence.NONE);
      route.legs().forEach(l -> legs.add(leg(l)));
      price = price.plus(route.price());
      if (!route.cured()) {
        return new Debrief.Best(legs, price, Optional.of(Texts.say("best.no-single")));
      }
      left = after(job, now, last(route));
    }
    return new Debrief.Best(legs, price, Optional.empty());
  }

  /** What is wrong after a repair on this very board, chance included. */
  private List<Fault> after(Case job, List<Fault> faults, RepairAction action) {
    Bench bench = new Bench(new Job(job.board(), faults, job.seed(), job.intake(), prices));
    if (job.intake().lidOn()) {
      bench.perform(new Move(Moves.LID_OFF, ""));
    }
    bench.perform(Move.repair(action));
    return bench.remaining();
  }

  private static RepairAction last(Route route) {
    Step step = route.legs().get(route.legs().size() - 1).choice().step();
    return ((Step.Act) step).action();
  }

  /** A round of the bench ROM is a move by its own name, every other look a look. */
  private static String move(String look) {
    if (BenchRom.named(look).isPresent()
        || look.equals(StartRows.LOOK)
        || Moves.handsOn(look).isPresent()) {
      return look;
    }
    return CurrentRows.move(look).orElseGet(() -> Move.look(Look.parse(look))).text();
  }

  private static Debrief.Leg leg(Route.Leg leg) {
    Step step = leg.choice().step();
    String move = step instanceof Step.Observe o ? move(o.look()) : step.text();
    OptionalInt field =
        leg.saw().equals(Route.CURED) ? OptionalInt.empty() : OptionalInt.of(leg.classes());
    return new Debrief.Leg(move, leg.saw(), leg.choice().price(), field);
  }
}
