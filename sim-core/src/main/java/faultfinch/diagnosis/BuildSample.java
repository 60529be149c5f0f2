package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * What a dictionary costs, by a sample: groups of faults drawn alike are run as a build runs them,
 * and fault by fault with nothing shared and nothing spared, in the same minute.
 *
 * @param groups of the board, of which the costs are a sample
 * @param once seconds that a build takes once, whatever the faults
 */
public record BuildSample(int groups, double once, List<Cost> costs) {
  /** Of a group so many are run each by itself, the others taken to cost the same. */
  private static final int MOST_ALONE = 3;

  private static final double SECOND = 1e9;
  private static final long BOARD_SEED = 1;

  public BuildSample {
    costs = List.copyOf(costs);
  }

  /**
   * A group of faults and its seconds.
   *
   * @param together as a build runs it
   * @param each of a run of its own, the mean of some of its faults
   */
  public record Cost(List<Fault> group, double together, double each) {
    double naive() {
      return each * group.size();
    }
  }

  /**
   * Runs a sample.
   *
   * @param howMany groups, 1 or more
   * @param nanoseconds that this thread has taken so far; sim-core has no clock of its own
   * @param told of each group as it is done
   */
  public static BuildSample of(
      Board board, int howMany, long seed, LongSupplier nanoseconds, Consumer<Cost> told) {
    List<List<Fault>> groups = new ArrayList<>(FaultUniverse.of(board).groups());
    int all = groups.size();
    Collections.shuffle(groups, new Random(seed));
    List<List<Fault>> drawn = groups.subList(0, Math.min(howMany, all));
    SurveyRows alone = new SurveyRows(board);
    SurveyRows build = SurveyRows.ofMany(board);
    drawn.forEach(g -> alone.row(g.subList(0, 1), BOARD_SEED));
    double first = seconds(() -> build.rows(drawn.get(0), BOARD_SEED), nanoseconds);
    List<Cost> costs = new ArrayList<>();
    for (List<Fault> group : drawn) {
      List<Fault> some = group.subList(0, Math.min(MOST_ALONE, group.size()));
      Supplier<List<Row>> each =
          () -> some.stream().map(f -> alone.row(List.of(f), BOARD_SEED)).toList();
      double own = seconds(each, nanoseconds) / some.size();
      costs.add(new Cost(group, seconds(() -> build.rows(group, BOARD_SEED), nanoseconds), own));
      told.accept(costs.get(costs.size() - 1));
    }
    return new BuildSample(all, Math.max(0, first - costs.get(0).together()), costs);
  }

  private static double seconds(Supplier<List<Row>> run, LongSupplier nanoseconds) {
    long from = nanoseconds.getAsLong();
    List<Row> rows = run.get();
    long to = nanoseconds.getAsLong();
    if (rows.isEmpty()) {
      throw new IllegalStateException("no row");
    }
    return (to - from) / SECOND;
  }

  private double together() {
    return costs.stream().mapToDouble(Cost::together).sum();
  }

  /** How many of the groups were run, 0 to 1. */
  private double share() {
    return (double) costs.size() / groups;
  }

  /** What all groups of the board would take one thread, in seconds, by this sample. */
  public double buildSeconds() {
    return together() / share() + once;
  }

  /** How many times as long runs of their own take, each fault by itself. */
  public double speedUpOverNaive() {
    return costs.stream().mapToDouble(Cost::naive).sum() / (together() + once * share());
  }
}
