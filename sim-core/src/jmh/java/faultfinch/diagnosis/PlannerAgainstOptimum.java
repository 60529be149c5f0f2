package faultfinch.diagnosis;

import faultfinch.diagnosis.PricePlanner.Effort;
import java.util.Arrays;
import java.util.Locale;

/**
 * What the planner costs on small drawn boards, its exact end switched off, against the least
 * possible: the mean, the 95th percentile and the worst ratio. Run it with {@code java -cp
 * sim-core/target/benchmarks.jar faultfinch.diagnosis.PlannerAgainstOptimum [BOARDS [FIRST_SEED]]}.
 */
public final class PlannerAgainstOptimum {
  private static final long MOVES = 20_000_000;
  private static final long BOUND = 200_000;

  private PlannerAgainstOptimum() {}

  /** Prints the figures. */
  public static void main(String[] arguments) {
    int boards = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 500;
    long first = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1_000;
    Effort shipped = Effort.SHIPPED;
    double[] ratios = new double[boards];
    double[] gain = new double[boards];
    double[] bound = new double[boards];
    Effort noExact = shipped.withoutExact();
    for (int i = 0; i < boards; i++) {
      Field field = DrawnBoard.of(first + i).field();
      double optimum = PlayedOut.optimum(field, MOVES);
      ratios[i] = new PlayedOut(new PricePlanner(noExact)).price(field) / optimum;
      bound[i] = LowerBound.of(field.ground(), field.members(), BOUND) / optimum;
      gain[i] =
          new PlayedOut(new PricePlanner(new Effort(0, 0, 0, 1, 1_000_000))).price(field) / optimum;
    }
    print("planner", ratios, first);
    print("gain per price", gain, first);
    print("lower bound", bound, first);
  }

  private static void print(String what, double[] ratios, long first) {
    int worst = 0;
    for (int i = 0; i < ratios.length; i++) {
      worst = ratios[i] > ratios[worst] ? i : worst;
    }
    double most = ratios[worst];
    double[] rising = ratios.clone();
    Arrays.sort(rising);
    System.out.printf(
        Locale.ROOT,
        "%s: mean %.4f, 95th percentile %.4f, worst %.4f (seed %d) of the optimum; %d boards%n",
        what,
        Arrays.stream(ratios).average().orElseThrow(),
        rising[rising.length * 95 / 100],
        most,
        first + worst,
        ratios.length);
  }
}
