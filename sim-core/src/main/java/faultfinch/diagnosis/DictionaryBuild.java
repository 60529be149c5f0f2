package faultfinch.diagnosis;

import faultfinch.fault.Fault;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Computes a dictionary by running every fault. Threads share the runs but rows are put together in
 * the order of the faults: any number of threads gives the same bytes.
 */
public final class DictionaryBuild {

  /** The board that faulty rows are made of, and three more healthy ones. */
  static final List<Long> BOARD_SEEDS = List.of(1L, 2L, 3L, 4L);

  private final Origin origin;
  private final List<Fault> faults;
  private final RowSource source;

  /** What to compute, from what, for which faults. */
  public DictionaryBuild(Origin origin, List<? extends Fault> faults, RowSource source) {
    this.origin = origin;
    this.faults = List.copyOf(faults);
    this.source = source;
  }

  /**
   * Runs it.
   *
   * @param threads 1 or 2
   * @return the dictionary, or nothing if the progress said to stop
   */
  public Optional<FaultDictionary> run(int threads, BuildProgress progress) {
    if (threads < 1 || threads > 2) {
      throw new IllegalArgumentException("found " + threads + " threads, right would be 1 or 2");
    }
    AtomicBoolean stopped = new AtomicBoolean();
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Row>> healthy = new ArrayList<>();
      for (long seed : BOARD_SEEDS) {
        healthy.add(workers.submit(() -> source.row(List.of(), seed)));
      }
      List<Future<Row>> rows = new ArrayList<>();
      for (Fault fault : faults) {
        rows.add(
            workers.submit(
                () -> {
                  if (stopped.get()) {
                    throw new CancellationException();
                  }
                  return source.row(List.of(fault), BOARD_SEEDS.get(0));
                }));
      }
      return collect(healthy, rows, progress);
    } finally {
      stopped.set(true);
      workers.shutdown();
    }
  }

  private Optional<FaultDictionary> collect(
      List<Future<Row>> healthy, List<Future<Row>> rows, BuildProgress progress) {
    List<Row> boards = new ArrayList<>();
    for (Future<Row> board : healthy) {
      boards.add(got("the healthy board", board));
    }
    DictionaryDraft draft = new DictionaryDraft(origin, boards);
    for (int i = 0; i < rows.size(); i++) {
      if (!progress.goOn(i, rows.size())) {
        return Optional.empty();
      }
      String fault = faults.get(i).text();
      draft.add(fault, got(fault, rows.set(i, null)));
    }
    progress.goOn(rows.size(), rows.size());
    return Optional.of(draft.done());
  }

  private static Row got(String whose, Future<Row> f) {
    try {
      return f.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while " + whose + " was run", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException("no row for " + whose + ": " + e.getCause().getMessage(), e);
    }
  }
}
