package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.KeyPress;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import java.lang.management.ManagementFactory;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * What a dictionary costs, in processor time of one thread: a {@link BuildSample} and its dearest
 * groups; then how the time grows with the length of the exercise. Run it with {@code java -cp
 * sim-core/target/benchmarks.jar faultfinch.diagnosis.DictionarySpeed [BOARD [GROUPS [SEED]]]}.
 */
public final class DictionarySpeed {
  private static final int DEAREST = 5;
  private static final double SECOND = 1e9;
  private static final long BOARD_SEED = 1;

  private DictionarySpeed() {}

  /** Prints the figures. */
  public static void main(String[] arguments) {
    Board board = BoardReader.shipped(arguments.length > 0 ? arguments[0] : "sorrel");
    int howMany = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 12;
    long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
    BuildSample sample =
        BuildSample.of(
            board,
            howMany,
            seed,
            DictionarySpeed::nanoseconds,
            cost -> System.out.println(says(cost)));
    System.out.printf(
        Locale.ROOT,
        "once, whatever the faults: %.1f s%n"
            + "speed-up over runs of their own %.2f; all %d groups would take %.0f s of one thread%n"
            + "dearest:%n",
        sample.once(),
        sample.speedUpOverNaive(),
        sample.groups(),
        sample.buildSeconds());
    sample.costs().stream()
        .sorted(Comparator.comparingDouble((BuildSample.Cost c) -> -c.together()))
        .limit(DEAREST)
        .forEach(c -> System.out.println(says(c)));
    lengths(board, FaultUniverse.of(board).groups().get(0).get(0));
  }

  private static String says(BuildSample.Cost cost) {
    return String.format(
        Locale.ROOT,
        "%6.2f s for %4d faults as one group, %6.2f s each alone: %s",
        cost.together(),
        cost.group().size(),
        cost.each(),
        cost.group().get(0).text());
  }

  private static void lengths(Board board, Fault fault) {
    List<KeyPress> keys = board.exercise();
    for (int some : new int[] {1, (keys.size() + 1) / 2, keys.size()}) {
      SurveyRows source = new SurveyRows(board.exercised(keys.subList(0, some)));
      source.row(List.of(fault), BOARD_SEED);
      long from = nanoseconds();
      source.row(List.of(fault), BOARD_SEED);
      System.out.printf(
          Locale.ROOT, "an exercise of %d keys: %.2f s%n", some, (nanoseconds() - from) / SECOND);
    }
  }

  private static long nanoseconds() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}
