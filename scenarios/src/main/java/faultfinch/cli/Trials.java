package faultfinch.cli;

import faultfinch.bench.Look;
import faultfinch.bench.Survey;
import faultfinch.desk.Desk;
import faultfinch.desk.Lookbook;
import faultfinch.diagnosis.Belief;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.Share;
import faultfinch.diagnosis.Trial;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.machine.Setup;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * The board with parts out, run here and now: healthy, which is also what it shows with a fault of
 * those parts, and with the likeliest other faults so far. Faults that no look tells apart are run
 * once.
 */
final class Trials {
  private static final int MOST = 24;
  private static final double SHARE = 0.99;
  private static final int THREADS = 2;
  private static final long THE_BOARD = 1;
  private static final int FIRST_POWER_ON = 0;

  private final Map<String, Map<Integer, String>> byLook = new LinkedHashMap<>();
  private final Set<String> looks;
  private final List<String> out;

  private Trials(Set<String> looks, List<String> out) {
    this.looks = looks;
    this.out = out;
  }

  /**
   * Runs them, and tells how far it is.
   *
   * @param asked faults that are run in any case, as far as the dictionary knows them
   */
  static Trials of(
      Known known, List<String> out, List<String> asked, Belief belief, Terminal terminal) {
    FaultDictionary dictionary = known.dictionary();
    Trials trials = new Trials(new LinkedHashSet<>(dictionary.looks()), out);
    Map<Integer, List<Fault>> faults = new LinkedHashMap<>();
    faults.put(FaultDictionary.HEALTHY, List.of());
    for (String fault : asked) {
      if (dictionary.knows(fault) && !trials.takesAway(fault, known)) {
        faults.putIfAbsent(dictionary.row(fault), List.of(FaultKinds.parse(fault, known.board())));
      }
    }
    double rest = belief.faults().stream().mapToDouble(Share::belief).sum() * SHARE;
    for (Share share : belief.faults()) {
      int row = dictionary.row(share.what());
      if (faults.size() <= MOST && rest > 0 && !trials.takesAway(share.what(), known)) {
        faults.putIfAbsent(row, List.of(FaultKinds.parse(share.what(), known.board())));
      }
      rest -= faults.containsKey(row) ? share.belief() : 0;
    }
    Words words = terminal.words();
    terminal.err().println(words.say("trials.begin", faults.size(), String.join(", ", out)));
    Survey survey = Survey.on(known.board());
    ExecutorService workers = Executors.newFixedThreadPool(THREADS);
    try {
      Map<Integer, Future<SortedMap<Look, String>>> runs = new LinkedHashMap<>();
      faults.forEach(
          (row, wrong) ->
              runs.put(
                  row,
                  workers.submit(
                      () ->
                          survey.features(
                              new Setup(
                                  known.board(),
                                  wrong,
                                  Set.copyOf(out),
                                  THE_BOARD,
                                  FIRST_POWER_ON)))));
      int done = 0;
      for (Map.Entry<Integer, Future<SortedMap<Look, String>>> run : runs.entrySet()) {
        trials.add(run.getKey(), run.getValue().get());
        terminal.err().println(words.say("trials.progress", ++done, faults.size()));
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while running the board", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    } finally {
      workers.shutdownNow();
    }
    return trials;
  }

  private boolean takesAway(String fault, Known known) {
    Trial any = new Trial("", "", Set.copyOf(out), "", Map.of());
    return any.takesAway(known.diagnosis().suspects().of(fault));
  }

  private void add(int row, SortedMap<Look, String> features) {
    features.forEach(
        (look, shown) -> {
          if (looks.contains(look.text())) {
            byLook.computeIfAbsent(look.text(), k -> new LinkedHashMap<>()).put(row, shown);
          }
        });
  }

  /** What can be said of a board that stands so. */
  Lookbook lookbook() {
    return new Lookbook() {
      @Override
      public Set<String> looks() {
        return byLook.keySet();
      }

      @Override
      public List<String> outcomes(String look) {
        return trial(look).outcomes();
      }

      @Override
      public Set<String> differing() {
        return Set.of();
      }
    };
  }

  private Trial trial(String look) {
    Map<Integer, String> rows = byLook.get(look);
    String healthy = rows.get(FaultDictionary.HEALTHY);
    return new Trial(look + Desk.suffix(out), look, Set.copyOf(out), healthy, rows);
  }

  /** Those of these looks. */
  List<Trial> used(Set<String> wanted) {
    List<Trial> used = new ArrayList<>();
    for (String look : byLook.keySet()) {
      if (wanted.contains(look + Desk.suffix(out))) {
        used.add(trial(look));
      }
    }
    return used;
  }
}
