package faultfinch.diagnosis;

import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;

/**
 * Computes a dictionary by running every fault in all stages: one run for each group of faults that
 * do the same. A group has all its stages before the next begins, so that what is done can be used.
 * Threads share the runs but rows are put together in the order of the faults: any number of
 * threads, and any number of interruptions, gives the same bytes.
 */
public final class DictionaryBuild {

  /** The board that faulty rows are made of, and three more healthy ones. */
  static final List<Long> BOARD_SEEDS = List.of(1L, 2L, 3L, 4L);

  private static final int MOST_THREADS = 16;

  /**
   * A part of every row.
   *
   * @param name by which a journal knows its runs
   */
  public record Stage(String name, RowSource source) {}

  private final Origin origin;
  private final List<List<Fault>> groups;
  private final List<String> faults;
  private final List<Stage> stages;
  private final Optional<Path> journal;
  private final Optional<FaultDictionary> had;

  private DictionaryBuild(
      Origin origin,
      List<List<Fault>> groups,
      List<String> faults,
      List<Stage> stages,
      Optional<Path> journal,
      Optional<FaultDictionary> had) {
    this.origin = origin;
    this.groups = groups.stream().map(List::copyOf).toList();
    this.faults = List.copyOf(faults);
    this.stages = List.copyOf(stages);
    this.journal = journal;
    this.had = had;
  }

  /**
   * What to compute, from what, for which faults.
   *
   * @param groups faults of which one run stands for all
   * @param faults all of them in the order of their rows
   * @param stages no two of which know the same look
   */
  public DictionaryBuild(
      Origin origin, List<List<Fault>> groups, List<? extends Fault> faults, List<Stage> stages) {
    this(
        origin,
        groups,
        faults.stream().map(Fault::text).toList(),
        stages,
        Optional.empty(),
        Optional.empty());
  }

  /** Each fault by itself, in one stage. */
  public DictionaryBuild(Origin origin, List<? extends Fault> faults, RowSource source) {
    this(
        origin,
        faults.stream().map(f -> List.of((Fault) f)).toList(),
        faults,
        List.of(new Stage("", source)));
  }

  /** All faults of a board; what is likeliest is run first. */
  public static DictionaryBuild of(Origin origin, FaultUniverse universe, List<Stage> stages) {
    List<List<Fault>> groups = new ArrayList<>(universe.groups());
    groups.sort(Comparator.comparingDouble(group -> -weight(universe, group)));
    return new DictionaryBuild(origin, groups, universe.faults(), stages);
  }

  private static double weight(FaultUniverse universe, List<Fault> group) {
    return group.stream().mapToDouble(fault -> universe.entry(fault).weight()).sum();
  }

  /** The same, noting every finished run in a file and going on from what is there. */
  public DictionaryBuild noting(Path file) {
    return new DictionaryBuild(origin, groups, faults, stages, Optional.of(file), had);
  }

  /**
   * The same for the first groups only, of a whole board the likeliest.
   *
   * @param howMany groups, 1 or more; those beyond are left out with their faults
   */
  public DictionaryBuild first(int howMany) {
    List<List<Fault>> some = groups.subList(0, Math.min(howMany, groups.size()));
    Set<String> in =
        some.stream().flatMap(List::stream).map(Fault::text).collect(Collectors.toSet());
    List<String> left = faults.stream().filter(in::contains).toList();
    return new DictionaryBuild(origin, some, left, stages, journal, had);
  }

  /**
   * The same, taking over what a dictionary of part of the faults has; one of another origin is of
   * no use.
   */
  public DictionaryBuild having(FaultDictionary part) {
    Optional<FaultDictionary> same = Optional.of(part).filter(d -> d.origin().equals(origin));
    return new DictionaryBuild(origin, groups, faults, stages, journal, same);
  }

  /**
   * Runs it.
   *
   * @param threads 1 to 16
   * @return the dictionary, or nothing if the progress said to stop
   * @throws UncheckedIOException if the journal cannot be read or written
   */
  public Optional<FaultDictionary> run(int threads, BuildProgress progress) {
    if (threads < 1 || threads > MOST_THREADS) {
      throw new IllegalArgumentException(
          "found " + threads + " threads, right would be 1 to " + MOST_THREADS);
    }
    try (BuildJournal done =
        journal.isPresent() ? BuildJournal.in(journal.get(), origin) : BuildJournal.inMemory()) {
      return run(threads, progress, done);
    } catch (IOException e) {
      throw new UncheckedIOException(
          "the journal " + journal.map(Path::toString).orElse("") + ": " + e.getMessage(), e);
    }
  }

  /**
   * A dictionary of the faults whose runs are noted in the journal or were taken over, all stages
   * of them.
   *
   * @throws UncheckedIOException if there is no journal that can be read
   */
  public FaultDictionary soFar() {
    ExecutorService worker = Executors.newSingleThreadExecutor();
    try (BuildJournal done = BuildJournal.in(journal.orElseThrow(), origin)) {
      List<List<Row>> healthy = healthy(worker);
      DictionaryDraft draft = new DictionaryDraft(origin, boards(healthy));
      Map<String, Departure> byFault = new HashMap<>();
      for (List<Fault> group : groups) {
        List<List<Departure>> all = new ArrayList<>();
        for (int stage = 0; stage < stages.size(); stage++) {
          known(stages.get(stage), group, healthy.get(0).get(stage), done).ifPresent(all::add);
        }
        for (int i = 0; i < group.size() && all.size() == stages.size(); i++) {
          for (List<Departure> stage : all) {
            byFault.merge(group.get(i).text(), stage.get(i), Departure::and);
          }
        }
      }
      faults.stream().filter(byFault::containsKey).forEach(f -> draft.add(f, byFault.get(f)));
      return draft.done();
    } catch (IOException e) {
      throw new UncheckedIOException("the journal " + journal.get() + ": " + e.getMessage(), e);
    } finally {
      worker.shutdown();
    }
  }

  private static String run(Stage stage, List<Fault> group) {
    return stage.name() + " " + group.get(0).text();
  }

  private static List<SortedMap<String, String>> boards(List<List<Row>> healthy) {
    List<SortedMap<String, String>> boards = new ArrayList<>();
    for (List<Row> board : healthy) {
      SortedMap<String, String> shows = new TreeMap<>();
      board.forEach(stage -> shows.putAll(stage.shows()));
      boards.add(shows);
    }
    return boards;
  }

  private Optional<FaultDictionary> run(int threads, BuildProgress progress, BuildJournal done) {
    AtomicBoolean stopped = new AtomicBoolean();
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      List<List<Row>> healthy = healthy(workers);
      List<Future<List<Departure>>> runs = new ArrayList<>();
      for (List<Fault> group : groups) {
        for (int stage = 0; stage < stages.size(); stage++) {
          Stage at = stages.get(stage);
          Row sound = healthy.get(0).get(stage);
          runs.add(
              workers.submit(
                  () -> {
                    if (stopped.get()) {
                      throw new CancellationException();
                    }
                    return departures(at, group, sound, done);
                  }));
        }
      }
      return collect(healthy, runs, progress);
    } finally {
      stopped.set(true);
      workers.shutdown();
      awaitEnd(workers);
    }
  }

  /** A run that is under way ends before the journal is closed. */
  private static void awaitEnd(ExecutorService workers) {
    try {
      while (!workers.awaitTermination(1, TimeUnit.MINUTES)) {
        // Each run ends by itself.
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** By board, then by stage. */
  private List<List<Row>> healthy(ExecutorService workers) {
    List<List<Future<Row>>> asked = new ArrayList<>();
    for (long seed : BOARD_SEEDS) {
      asked.add(
          stages.stream().map(s -> workers.submit(() -> s.source().row(List.of(), seed))).toList());
    }
    return asked.stream()
        .map(board -> board.stream().map(row -> got("the healthy board", row)).toList())
        .toList();
  }

  /** What need not be run: it is noted, or was taken over. */
  private Optional<List<Departure>> known(
      Stage stage, List<Fault> group, Row healthy, BuildJournal done) {
    return done.find(run(stage, group))
        .or(() -> had.flatMap(d -> d.departures(group, healthy.shows().keySet())));
  }

  private List<Departure> departures(
      Stage stage, List<Fault> group, Row healthy, BuildJournal done) {
    return known(stage, group, healthy, done)
        .orElseGet(
            () -> {
              List<Row> rows = stage.source().rows(group, BOARD_SEEDS.get(0));
              List<Departure> departures = new ArrayList<>();
              for (int i = 0; i < rows.size(); i++) {
                departures.add(Departure.of(group.get(i).text(), healthy, rows.get(i)));
              }
              done.add(run(stage, group), departures);
              return departures;
            });
  }

  private Optional<FaultDictionary> collect(
      List<List<Row>> healthy, List<Future<List<Departure>>> runs, BuildProgress progress) {
    Map<String, Departure> byFault = new HashMap<>();
    for (int i = 0; i < runs.size(); i++) {
      if (!progress.goOn(i, runs.size())) {
        return Optional.empty();
      }
      List<Fault> group = groups.get(i / stages.size());
      List<Departure> departures = got(group.get(0).text(), runs.set(i, null));
      for (int j = 0; j < group.size(); j++) {
        byFault.merge(group.get(j).text(), departures.get(j), Departure::and);
      }
    }
    progress.goOn(runs.size(), runs.size());
    DictionaryDraft draft = new DictionaryDraft(origin, boards(healthy));
    faults.forEach(fault -> draft.add(fault, byFault.get(fault)));
    return Optional.of(draft.done());
  }

  private static <T> T got(String whose, Future<T> f) {
    try {
      return f.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while " + whose + " was run", e);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IllegalArgumentException wrongRow) {
        throw wrongRow;
      }
      throw new IllegalStateException("no row for " + whose + ": " + e.getCause().getMessage(), e);
    }
  }
}
