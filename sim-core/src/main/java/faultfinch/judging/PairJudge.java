package faultfinch.judging;

import faultfinch.bench.Move;
import faultfinch.bench.Moves;
import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.diagnosis.BenchPrices;
import faultfinch.diagnosis.Diagnosis;
import faultfinch.diagnosis.FaultDictionary;
import faultfinch.diagnosis.PriceList;
import faultfinch.diagnosis.RowSource;
import faultfinch.diagnosis.Suspect;
import faultfinch.diagnosis.Suspects;
import faultfinch.diagnosis.Whereabouts;
import faultfinch.fault.Contradictions;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.fault.RepairAction;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/**
 * Draws boards with two faults, runs each pair on the machine, and follows them to the end. A
 * repair that cures a fault half of the time does not, here; what one fault shows alone is its row.
 */
public final class PairJudge {
  private static final long THE_BOARD = 1;

  /** Of a normal distribution, 95 in 100 lie within so many standard deviations. */
  private static final double WIDE = 1.96;

  /** What a board shows in all looks takes a megabyte or two; so few wait to be followed. */
  private static final int RUN_AHEAD = 16;

  private final Board board;
  private final FaultDictionary dictionary;
  private final Suspects suspects;
  private final ThreadLocal<RowSource> rows;
  private final Signs signs;
  private final DeskJob desk;

  /**
   * @param suspects that the dictionary knows
   * @param rows from runs of the machine, one source for each thread
   */
  public PairJudge(
      Board board,
      FaultDictionary dictionary,
      Suspects suspects,
      Prices prices,
      Supplier<RowSource> rows) {
    this.board = board;
    this.dictionary = dictionary;
    this.suspects = suspects;
    this.rows = ThreadLocal.withInitial(rows);
    signs = new Signs(board, dictionary);
    PriceList list = new BenchPrices(prices);
    desk =
        new DeskJob(
            Diagnosis.of(dictionary, suspects, list),
            signs,
            list,
            prices.of(new Move(Moves.RETEST, "")),
            Whereabouts.of(board));
  }

  /** Faults that are left on a board, and what it shows. */
  private final class Ailing implements DeskJob.Sick {
    private final UnaryOperator<String> both;
    private final Set<Suspect> left = new LinkedHashSet<>();

    Ailing(UnaryOperator<String> both, Suspect... faults) {
      this.both = both;
      left.addAll(List.of(faults));
    }

    @Override
    public String shows(String look) {
      int at = dictionary.look(look).orElseThrow();
      if (left.size() > 1) {
        return dictionary.named(at, both.apply(look));
      }
      int row =
          left.isEmpty() ? FaultDictionary.HEALTHY : dictionary.row(left.iterator().next().fault());
      return dictionary.outcome(at, row);
    }

    @Override
    public boolean repair(RepairAction action) {
      return left.removeIf(s -> s.surelyCuredBy(action));
    }
  }

  /** What became of one board. */
  private record Followed(boolean masked, boolean cured, DeskJob.Ended ended, double twoJobs) {}

  /** Told after each board how it stands, and asked whether to go on. */
  @FunctionalInterface
  public interface Progress {

    /** Whether to go on to {@code all} boards; if not, what is judged so far is all. */
    boolean goOn(PairsJudged soFar, int all);
  }

  /**
   * Follows boards with two faults each; they are run on all processors, in no order that shows.
   */
  public PairsJudged follow(int count, long seed, Progress progress) {
    List<Suspect> noticed =
        suspects.all().stream()
            .filter(s -> signs.complaint(dictionary.row(s.fault())).isPresent())
            .toList();
    List<PairJob> jobs =
        new PairDraw(board, noticed)
            .draw(count, seed).stream()
                .filter(j -> Contradictions.in(faults(j)).isEmpty())
                .toList();
    ExecutorService workers =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try {
      Deque<Future<Ailing>> runs = new ArrayDeque<>();
      Iterator<PairJob> ahead = jobs.iterator();
      List<Followed> all = new ArrayList<>();
      boolean goesOn = true;
      for (int i = 0; i < jobs.size() && goesOn; i++) {
        while (runs.size() < RUN_AHEAD && ahead.hasNext()) {
          PairJob next = ahead.next();
          runs.add(workers.submit(() -> begun(next)));
        }
        all.add(followed(jobs.get(i), begun(runs.remove())));
        goesOn = progress.goOn(judged(all), jobs.size());
      }
      return judged(all);
    } finally {
      workers.shutdownNow();
    }
  }

  private List<Fault> faults(PairJob job) {
    return List.of(job.one(), job.other()).stream()
        .map(s -> FaultKinds.parse(s.fault(), board))
        .toList();
  }

  /** With both faults: the run of the first looks is made here, others when they are asked for. */
  private Ailing begun(PairJob job) {
    Ailing board = new Ailing(rows.get().shown(faults(job), THE_BOARD), job.one(), job.other());
    signs.complaint(board::shows);
    return board;
  }

  private static Ailing begun(Future<Ailing> run) {
    try {
      return run.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException();
    } catch (ExecutionException e) {
      throw new IllegalStateException("the run of a pair failed", e.getCause());
    }
  }

  private Followed followed(PairJob job, Ailing board) {
    Optional<Complaint> complaint = signs.complaint(board::shows);
    boolean masked =
        List.of(job.one(), job.other()).stream()
            .allMatch(s -> signs.complaint(dictionary.row(s.fault())).equals(complaint));
    DeskJob.Ended ended = desk.follow(board);
    double two =
        desk.follow(new Ailing(board.both, job.one())).price().total()
            + desk.follow(new Ailing(board.both, job.other())).price().total();
    return new Followed(masked, ended.passed() && board.left.isEmpty(), ended, two);
  }

  private static PairsJudged judged(List<Followed> all) {
    List<Followed> open = all.stream().filter(f -> !f.masked).toList();
    List<Followed> masked = all.stream().filter(f -> f.masked).toList();
    double price = open.stream().mapToDouble(f -> f.ended.price().total()).average().orElse(0);
    double two = open.stream().mapToDouble(f -> f.twoJobs).average().orElse(0);
    double cured = share(open);
    return new PairsJudged(
        open.size(),
        masked.size(),
        cured,
        lower(cured, open.size()),
        share(masked),
        open.stream().mapToDouble(f -> f.ended.innocent()).average().orElse(0),
        open.stream().mapToDouble(f -> f.ended.price().minutes()).average().orElse(0),
        price,
        two > 0 ? price / two : 0);
  }

  private static double share(List<Followed> some) {
    return some.stream().mapToDouble(f -> f.cured ? 1 : 0).average().orElse(0);
  }

  /** Wilson's lower limit of a share of so many. */
  static double lower(double share, int of) {
    if (of == 0) {
      return 0;
    }
    double z2 = WIDE * WIDE;
    double middle = share + z2 / (2 * of);
    double reach = WIDE * StrictMath.sqrt(share * (1 - share) / of + z2 / (4.0 * of * of));
    return (middle - reach) / (1 + z2 / of);
  }
}
