package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.KeyPress;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Supplier;

/**
 * What a dictionary costs, in processor time of one thread: groups of faults drawn alike are run as
 * a build runs them, and fault by fault with nothing shared and nothing spared, in the same minute;
 * which cost most; then how the time grows with the length of the exercise. Run it with {@code java
 * -cp sim-core/target/benchmarks.jar faultfinch.diagnosis.DictionarySpeed [BOARD [GROUPS [SEED]]]}.
 */
public final class DictionarySpeed {
  private static final int MOST_ALONE = 3;
  private static final int DEAREST = 5;
  private static final double SECOND = 1e9;
  private static final long BOARD_SEED = 1;

  private DictionarySpeed() {}

  /**
   * A group of faults and its seconds.
   *
   * @param each of a run of its own, the mean of some of its faults
   */
  private record Cost(List<Fault> group, double together, double each) {
    double naive() {
      return each * group.size();
    }

    String says() {
      return String.format(
          Locale.ROOT,
          "%6.2f s for %4d faults as one group, %6.2f s each alone: %s",
          together,
          group.size(),
          each,
          group.get(0).text());
    }
  }

  /** Prints the figures. */
  public static void main(String[] arguments) {
    Board board = BoardReader.shipped(arguments.length > 0 ? arguments[0] : "sorrel");
    int howMany = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 12;
    long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
    FaultUniverse universe = FaultUniverse.of(board);
    List<List<Fault>> groups = new ArrayList<>(universe.groups());
    Collections.shuffle(groups, new Random(seed));
    List<List<Fault>> drawn = groups.subList(0, Math.min(howMany, groups.size()));
    SurveyRows alone = new SurveyRows(board);
    SurveyRows build = SurveyRows.ofMany(board);
    drawn.forEach(g -> alone.row(g.subList(0, 1), BOARD_SEED));
    double once = seconds(() -> build.rows(drawn.get(0), BOARD_SEED));
    List<Cost> costs = new ArrayList<>();
    for (List<Fault> group : drawn) {
      List<Fault> some = group.subList(0, Math.min(MOST_ALONE, group.size()));
      double each =
          seconds(() -> some.stream().map(f -> alone.row(List.of(f), BOARD_SEED)).toList())
              / some.size();
      costs.add(new Cost(group, seconds(() -> build.rows(group, BOARD_SEED)), each));
      System.out.println(costs.get(costs.size() - 1).says());
    }
    once = Math.max(0, once - costs.get(0).together());
    double naive = costs.stream().mapToDouble(Cost::naive).sum();
    double shared = costs.stream().mapToDouble(Cost::together).sum();
    double share = (double) drawn.size() / groups.size();
    System.out.printf(
        Locale.ROOT,
        "following the healthy board, once: %.1f s, of which %.2f s for these groups%n",
        once,
        once * share);
    System.out.printf(
        Locale.ROOT,
        "speed-up over runs of their own %.2f; all %d groups would take %.0f s of one thread%n",
        naive / (shared + once * share),
        groups.size(),
        shared / share + once);
    System.out.println("dearest:");
    costs.stream()
        .sorted(Comparator.comparingDouble(c -> -c.together()))
        .limit(DEAREST)
        .forEach(c -> System.out.println(c.says()));
    lengths(board, drawn.get(0));
  }

  private static void lengths(Board board, List<Fault> group) {
    List<KeyPress> keys = board.exercise();
    for (int some : new int[] {1, (keys.size() + 1) / 2, keys.size()}) {
      SurveyRows source = new SurveyRows(board.exercised(keys.subList(0, some)));
      source.row(group.subList(0, 1), BOARD_SEED);
      double time = seconds(() -> List.of(source.row(group.subList(0, 1), BOARD_SEED)));
      System.out.printf(Locale.ROOT, "an exercise of %d keys: %.2f s%n", some, time);
    }
  }

  private static double seconds(Supplier<List<Row>> run) {
    long from = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    List<Row> rows = run.get();
    long to = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    if (rows.isEmpty()) {
      throw new IllegalStateException("no row");
    }
    return (to - from) / SECOND;
  }
}
