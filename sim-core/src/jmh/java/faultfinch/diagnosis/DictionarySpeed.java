package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.KeyPress;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.Supplier;

/**
 * What a dictionary costs, in processor time of one thread: groups of faults drawn alike are run as
 * a build runs them, and fault by fault with nothing shared, in the same minute; then how the time
 * grows with the faults and with the length of the exercise. Run it with {@code java -cp
 * sim-core/target/benchmarks.jar faultfinch.diagnosis.DictionarySpeed [BOARD [GROUPS [SEED]]]}.
 */
public final class DictionarySpeed {
  private static final int MOST_ALONE = 3;
  private static final double SECOND = 1e9;
  private static final long BOARD_SEED = 1;

  private DictionarySpeed() {}

  /** Prints the figures. */
  public static void main(String[] arguments) {
    Board board = BoardReader.shipped(arguments.length > 0 ? arguments[0] : "sorrel");
    int howMany = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 12;
    long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
    FaultUniverse universe = FaultUniverse.of(board);
    List<List<Fault>> groups = new ArrayList<>(universe.groups());
    Collections.shuffle(groups, new Random(seed));
    List<List<Fault>> drawn = groups.subList(0, Math.min(howMany, groups.size()));
    SurveyRows source = new SurveyRows(board);
    drawn.forEach(g -> source.row(g.subList(0, 1), BOARD_SEED));
    double naive = 0;
    double shared = 0;
    int done = 0;
    for (List<Fault> group : drawn) {
      List<Fault> some = group.subList(0, Math.min(MOST_ALONE, group.size()));
      double alone = seconds(() -> some.stream().map(f -> source.row(List.of(f), 1)).toList());
      double each = alone / some.size();
      double together = seconds(() -> source.rows(group, BOARD_SEED));
      naive += each * group.size();
      shared += together;
      done++;
      System.out.printf(
          Locale.ROOT,
          "%6.2f s for %4d faults as one group, %6.2f s each alone: %s%n",
          together,
          group.size(),
          each,
          group.get(0).text());
      if (done * 4 % drawn.size() == 0) {
        System.out.printf(Locale.ROOT, "%d groups: %.1f s%n", done, shared);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "speed-up over runs of their own %.2f; all %d groups would take %.0f s of one thread%n",
        naive / shared,
        groups.size(),
        shared / drawn.size() * groups.size());
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
