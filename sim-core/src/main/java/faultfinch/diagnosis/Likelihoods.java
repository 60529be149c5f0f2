package faultfinch.diagnosis;

import faultfinch.bench.Starts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * How well each row of a dictionary explains each observation, as natural logarithms. By StrictMath
 * and in the order of the entries, so that every computer gets the same bits.
 */
final class Likelihoods {
  private static final double NOTHING = 1e-9;
  private static final String SCREEN = "screen";

  /** Of what no row tells: one more row, of which half do. */
  private static final double UNKNOWN = 0.5;

  /**
   * One look a sight may have been, with what is to be had of it by cell value.
   *
   * @param look index into the dictionary; of a trial that of the same look as a board comes
   * @param cells of a trial by row; else empty
   * @param byAnother by row of a trial, the chance that the board is as a healthy one there though
   *     the row was not run; else empty
   */
  private record Column(
      int look, int[] cells, double[] chance, boolean[] meant, double[] byAnother) {

    int cell(FaultDictionary dictionary, int row) {
      return cells.length > 0 ? cells[row] : dictionary.cell(look, row);
    }

    double had(FaultDictionary dictionary, int row) {
      double shown = chance[cell(dictionary, row)];
      double healthy = chance[FaultDictionary.HEALTHY];
      return cells.length > 0 ? shown + byAnother[row] * (healthy - shown) : shown;
    }
  }

  /** Whether a healthy board shows what was seen, and the chance of it there. */
  private record Healthy(boolean matches, double chance) {}

  /**
   * A weighed observation; a sight is a list of columns.
   *
   * @param trial what its looks are of, if of a board that stands otherwise; all of the same
   * @param matches by row, whether it is what would be seen, starts that go wrong included
   * @param always by row, the same of a board that starts as its row says
   */
  private record Entry(
      Observation observation,
      Optional<Trial> trial,
      List<List<Column>> sights,
      double error,
      Healthy healthy,
      double best,
      double[] byRow,
      boolean[] matches,
      boolean[] always) {}

  private final List<Observation> weighed = new ArrayList<>();
  private final List<Observation> notWeighed = new ArrayList<>();
  private final List<Entry> entries = new ArrayList<>();
  private final FaultDictionary dictionary;
  private final ErrorRates rates;
  private final Map<String, Trial> trials = new LinkedHashMap<>();

  Likelihoods(FaultDictionary dictionary, ErrorRates rates, Evidence evidence) {
    this.dictionary = dictionary;
    this.rates = rates;
    evidence.trials().forEach(t -> trials.put(t.look(), t));
    for (Observation observation : evidence.seen()) {
      List<List<Column>> sights = sights(observation);
      if (sights.isEmpty()) {
        notWeighed.add(observation);
      } else {
        weighed.add(observation);
        entries.add(entry(observation, sights));
      }
    }
  }

  private List<List<Column>> sights(Observation observation) {
    double error = rates.error(observation);
    List<List<Column>> sights = new ArrayList<>();
    for (Sight sight : observation.reach().sights()) {
      List<Column> columns = new ArrayList<>();
      for (String look : sight.looks()) {
        OptionalInt index = dictionary.look(look);
        if (index.isPresent()) {
          columns.add(column(look, index.getAsInt(), sight.outcomes(), error));
        } else if (trials.containsKey(look)) {
          columns.add(column(trials.get(look), sight.outcomes(), error));
        }
      }
      if (!columns.isEmpty()) {
        sights.add(columns);
      }
    }
    return sights;
  }

  private Column column(String look, int index, List<String> meant, double error) {
    List<String> named = meant.stream().map(o -> dictionary.named(index, o)).toList();
    List<String> outcomes = dictionary.outcomes(index);
    return column(look, index, new int[0], outcomes, named, error, new double[0]);
  }

  /** Of a row that was not run it is believed that the parts that are out make no difference. */
  private Column column(Trial trial, List<String> meant, double error) {
    int look = dictionary.look(trial.usual()).orElseThrow();
    List<String> outcomes = new ArrayList<>(trial.outcomes());
    int[] cells = new int[dictionary.rows()];
    double[] byAnother = new double[cells.length];
    for (int row = 0; row < cells.length; row++) {
      Optional<String> run = trial.outcome(row);
      String shown = run.orElse(dictionary.outcomes(look).get(dictionary.cell(look, row)));
      if (!outcomes.contains(shown)) {
        outcomes.add(shown);
      }
      cells[row] = outcomes.indexOf(shown);
      byAnother[row] = run.isPresent() ? 0 : rates.curedByAnotherOut();
    }
    return column(trial.look(), look, cells, outcomes, meant, error, byAnother);
  }

  private Column column(
      String look,
      int index,
      int[] cells,
      List<String> outcomes,
      List<String> meant,
      double error,
      double[] byAnother) {
    double[] chance = new double[outcomes.size()];
    boolean[] hit = new boolean[chance.length];
    for (int i = 0; i < chance.length; i++) {
      chance[i] = rates.taken(look, outcomes.get(i), meant, chance.length, error);
      hit[i] = meant.contains(outcomes.get(i));
    }
    return new Column(index, cells, chance, hit, byAnother);
  }

  private Entry entry(Observation observation, List<List<Column>> sights) {
    double error = rates.error(observation);
    boolean healthy = matches(observation, sights, FaultDictionary.HEALTHY);
    double whole = once(observation, sights, FaultDictionary.HEALTHY, error, healthy);
    double asHealthy = tallied(observation.reach().tally(), whole, healthy, healthy);
    Healthy beside = new Healthy(healthy, asHealthy);
    double best =
        Math.max(
            chance(observation, beside, 1 - error, true),
            chance(observation, beside, error, false));
    double floor = Math.min(rates.floor(observation), best);
    double[] byRow = new double[dictionary.rows()];
    boolean[] matches = new boolean[byRow.length];
    for (int row = 0; row < byRow.length; row++) {
      matches[row] = matches(observation, sights, row);
      double once = once(observation, sights, row, error, matches[row]);
      byRow[row] = StrictMath.log(Math.max(chance(observation, beside, once, matches[row]), floor));
    }
    boolean[] always = matches.clone();
    for (int row = 0; row < byRow.length; row++) {
      Optional<Starts.Said> starts = starts(observation, row);
      if (starts.isPresent()) {
        double failed = failed(observation, starts.get(), error, always);
        matches[row] = healthy || failed > error;
        double chance = startsNowAndThen(observation, starts.get(), whole, failed);
        byRow[row] = StrictMath.log(Math.max(chance, floor));
      }
    }
    Optional<Trial> trial = observation.looks().stream().flatMap(this::trial).findFirst();
    return new Entry(
        observation, trial, sights, error, beside, StrictMath.log(best), byRow, matches, always);
  }

  /**
   * Of an observation whose sights have this chance at one time. A fault that waits for the board
   * to be cold or warm shows itself then, or not.
   */
  private double chance(Observation seen, Healthy healthy, double once, boolean matches) {
    double chance = tallied(seen.reach().tally(), once, matches, healthy.matches);
    return seen.reach().climate() == Observation.Climate.USUAL
        ? chance
        : chance + rates.waits() * (healthy.chance - chance) / 2;
  }

  /** How often a board starts, if an owner looked at one that starts now and then. */
  private Optional<Starts.Said> starts(Observation observation, int row) {
    OptionalInt look = dictionary.look(StartRows.LOOK);
    return look.isEmpty() || dictionary.cell(look.getAsInt(), row) == FaultDictionary.HEALTHY
        ? Optional.empty()
        : starts(observation, dictionary.outcome(look.getAsInt(), row));
  }

  private Optional<Starts.Said> starts(Observation observation, String outcome) {
    boolean owners =
        observation.looks().stream()
            .allMatch(l -> rates.tier(l) == ErrorRates.Tier.OWNER && !l.equals(StartRows.LOOK));
    return owners ? Starts.said(outcome) : Optional.empty();
  }

  /**
   * Chance of an observation when such a board has not started: on its set it shows what is known
   * of it, else what of the rows that show the same on their sets so many do.
   *
   * @param always whether a row shows what was seen
   */
  private double failed(
      Observation observation, Starts.Said starts, double error, boolean[] always) {
    for (Sight sight : observation.reach().sights()) {
      if (sight.looks().contains(SCREEN)) {
        return sight.outcomes().contains(starts.otherwise()) ? 1 - error : error;
      }
    }
    OptionalInt screen = dictionary.look(SCREEN);
    int there =
        screen.isPresent()
            ? dictionary.outcomes(screen.getAsInt()).indexOf(starts.otherwise())
            : -1;
    int alike = 0;
    int show = 0;
    for (int row = 0; row < always.length && there >= 0; row++) {
      if (dictionary.cell(screen.getAsInt(), row) == there) {
        alike++;
        show += always[row] ? 1 : 0;
      }
    }
    double share = (show + UNKNOWN) / (alike + 1);
    return Math.max(error, Math.min(1 - error, share));
  }

  /** What such a board shows is decided anew at each start. */
  private static double startsNowAndThen(
      Observation observation, Starts.Said starts, double started, double failed) {
    double once = starts.chance() * started + (1 - starts.chance()) * failed;
    return observation.reach().tally().chance(once);
  }

  private Stream<Trial> trial(String look) {
    return Stream.ofNullable(trials.get(look));
  }

  private boolean matches(Observation observation, List<List<Column>> sights, int row) {
    boolean every = observation.reach().every();
    for (List<Column> sight : sights) {
      boolean had = false;
      for (Column column : sight) {
        had |= column.meant[column.cell(dictionary, row)];
      }
      if (had != every) {
        return had;
      }
    }
    return every;
  }

  /** Chance of the sights at one time. */
  private double once(
      Observation observation, List<List<Column>> sights, int row, double error, boolean matches) {
    if (matches) {
      return 1 - error;
    }
    double all = 1;
    double none = 1;
    for (List<Column> sight : sights) {
      double chance = 0;
      boolean had = false;
      for (Column column : sight) {
        chance = Math.max(chance, column.had(dictionary, row));
        had |= column.meant[column.cell(dictionary, row)];
      }
      all *= had ? 1 : chance;
      none *= 1 - chance;
    }
    return observation.reach().every() ? all : Math.min(1 - error, 1 - none);
  }

  /**
   * Of a fault that is always there, and, for tallies that differ, of one that comes and goes: then
   * the board shows now what the fault shows, now what a healthy one does.
   */
  private double tallied(Tally tally, double once, boolean matches, boolean healthy) {
    if (tally.equals(Tally.ONCE)) {
      return once;
    }
    double always = tally.chance(once);
    if (tally.always() || matches == healthy) {
      return always;
    }
    double share = rates.comesAndGoes();
    return (1 - share) * always + share * tally.chanceIfAnyRate();
  }

  /** The observations the dictionary can express, in order. */
  List<Observation> weighed() {
    return weighed;
  }

  List<Observation> notWeighed() {
    return notWeighed;
  }

  /** The row that a suspect has in the i-th weighed observation: the healthy one if it is out. */
  int row(int i, Suspect suspect, int row) {
    Optional<Trial> trial = entries.get(i).trial;
    return trial.isPresent() && trial.get().takesAway(suspect) ? FaultDictionary.HEALTHY : row;
  }

  /** Of the i-th weighed observation under a row. */
  double of(int i, int row) {
    return entries.get(i).byRow[row];
  }

  /** Whether the i-th weighed observation is what a row shows. */
  boolean matches(int i, int row) {
    return entries.get(i).matches[row];
  }

  /** The same of a board that starts as its row says: one that starts wildly shows anything. */
  boolean shows(int i, int row) {
    return entries.get(i).always[row];
  }

  /** Whether the i-th weighed observation is not what would be seen of a healthy board. */
  boolean isOdd(int i) {
    return of(i, FaultDictionary.HEALTHY) < best(i) - NOTHING;
  }

  /** Whether a row shows anything but the healthy in the looks of the i-th weighed observation. */
  boolean differs(int i, int row) {
    if (starts(entries.get(i).observation, row).isPresent()) {
      return true;
    }
    for (List<Column> sight : entries.get(i).sights) {
      for (Column column : sight) {
        if (column.cell(dictionary, row) > 0) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Of the i-th weighed observation under what a board is said to show; 0 if it lacks the looks.
   */
  double under(int i, Map<String, String> shows) {
    Entry entry = entries.get(i);
    boolean every = entry.observation.reach().every();
    double all = 1;
    double none = 1;
    boolean known = false;
    boolean matches = every;
    for (Sight sight : entry.observation.reach().sights()) {
      double chance = 0;
      boolean had = false;
      boolean shown = false;
      for (String look : sight.looks()) {
        int outcomes = outcomes(look);
        if (shows.containsKey(look) && outcomes > 0) {
          String outcome = named(look, shows.get(look));
          List<String> meant = sight.outcomes().stream().map(o -> named(look, o)).toList();
          shown = true;
          had |= meant.contains(outcome);
          double taken = rates.taken(look, outcome, meant, outcomes, entry.error);
          chance = Math.max(chance, taken);
        }
      }
      if (shown) {
        known = true;
        matches = every ? matches && had : matches || had;
        all *= had ? 1 : chance;
        none *= 1 - chance;
      }
    }
    if (!known) {
      return 0;
    }
    double mistaken = every ? all : Math.min(1 - entry.error, 1 - none);
    double once = matches ? 1 - entry.error : mistaken;
    Optional<Starts.Said> starts =
        starts(entry.observation, shows.getOrDefault(StartRows.LOOK, Starts.ALIKE));
    double chance = chance(entry.observation, entry.healthy, once, matches);
    if (starts.isPresent()) {
      double failed = failed(entry.observation, starts.get(), entry.error, entry.always);
      double started = entry.healthy.matches ? 1 - entry.error : entry.error;
      chance = startsNowAndThen(entry.observation, starts.get(), started, failed);
    }
    double floor = Math.min(rates.floor(entry.observation), StrictMath.exp(entry.best));
    return StrictMath.log(Math.max(chance, floor));
  }

  private String named(String look, String outcome) {
    OptionalInt index = dictionary.look(look);
    return index.isPresent() ? dictionary.named(index.getAsInt(), outcome) : outcome;
  }

  /** How many outcomes a look has; 0 of a look that is not known. */
  private int outcomes(String look) {
    OptionalInt index = dictionary.look(look);
    if (index.isPresent()) {
      return dictionary.outcomes(index.getAsInt()).size();
    }
    return trials.containsKey(look) ? trials.get(look).outcomes().size() : 0;
  }

  /** Of the likeliest reading of the i-th weighed observation. */
  double best(int i) {
    return entries.get(i).best;
  }

  /** How many repairs came before the i-th weighed observation. */
  int after(int i) {
    return entries.get(i).observation.after();
  }
}
