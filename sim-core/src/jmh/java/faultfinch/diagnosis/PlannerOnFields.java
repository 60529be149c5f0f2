package faultfinch.diagnosis;

import faultfinch.bench.Prices;
import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.diagnosis.PricePlanner.Effort;
import faultfinch.fault.FaultUniverse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * What the planner costs on fields of 13 to 20 classes of a shipped board, against the least
 * possible. A fault is drawn by its weight among those that show to the owner, and looks are drawn
 * and made until so many classes are left. Run it with {@code java -cp
 * sim-core/target/benchmarks.jar faultfinch.diagnosis.PlannerOnFields [BOARD [FIELDS [SEED
 * [MOVES]]]]}.
 */
public final class PlannerOnFields {
  private static final int FEWEST = 13;
  private static final int MOST = 20;
  private static final long BOUND = 200_000;

  private PlannerOnFields() {}

  /** Prints the figures. */
  public static void main(String[] arguments) {
    Board board = BoardReader.shipped(arguments.length > 0 ? arguments[0] : "tamarisk");
    int wanted = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 50;
    long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
    long moves = arguments.length > 3 ? Long.parseLong(arguments[3]) : 30_000_000;
    FaultDictionary dictionary = ShippedDictionaries.of(board).orElseThrow();
    Suspects suspects =
        Suspects.of(FaultUniverse.of(board))
            .knownTo(dictionary)
            .showing(dictionary, ErrorRates.shipped(), ErrorRates.Tier.OWNER);
    Field start =
        Field.strict(dictionary, suspects, new BenchPrices(Prices.shipped()), Evidence.NONE);
    Random random = new Random(seed);
    Set<List<Integer>> drawn = new HashSet<>();
    List<double[]> ratios = new ArrayList<>();
    int unsolved = 0;
    while (ratios.size() < wanted && unsolved < wanted) {
      int[] members = draw(start, random);
      if (members.length > 0 && drawn.add(Arrays.stream(members).boxed().toList())) {
        Field field = new Field(start.ground(), members).narrowed();
        Optional<Double> optimum =
            ExactPlan.of(field.ground(), field.members(), moves).map(ExactPlan::price);
        if (optimum.isEmpty()) {
          unsolved++;
          continue;
        }
        ratios.add(ratios(field, optimum.get()));
      }
    }
    System.out.printf(
        Locale.ROOT,
        "%s, seed %d: %d fields of %d to %d classes; %d more without an optimum in %d moves%n",
        board.name(),
        seed,
        ratios.size(),
        FEWEST,
        MOST,
        unsolved,
        moves);
    String[] names = {"exact end off", "as shipped", "gain per price", "lower bound"};
    for (int i = 0; i < names.length; i++) {
      int which = i;
      System.out.printf(
          Locale.ROOT,
          "%s: mean %.4f, least %.4f, most %.4f of the optimum%n",
          names[i],
          ratios.stream().mapToDouble(r -> r[which]).average().orElse(0),
          ratios.stream().mapToDouble(r -> r[which]).min().orElse(0),
          ratios.stream().mapToDouble(r -> r[which]).max().orElse(0));
    }
  }

  private static double[] ratios(Field field, double optimum) {
    Effort[] efforts = {
      Effort.SHIPPED.withoutExact(), Effort.SHIPPED, new Effort(0, 0, 0, 1, 1_000_000)
    };
    double[] ratios = new double[efforts.length + 1];
    for (int i = 0; i < efforts.length; i++) {
      ratios[i] = new PlayedOut(new PricePlanner(efforts[i])).price(field) / optimum;
    }
    ratios[efforts.length] = LowerBound.of(field.ground(), field.members(), BOUND) / optimum;
    return ratios;
  }

  /** What is left of a fault after drawn looks; nothing if it went by the number of classes. */
  private static int[] draw(Field start, Random random) {
    Ground ground = start.ground();
    double at = random.nextDouble() * new Gains(ground).weight(start.members());
    int truth = 0;
    while (truth < ground.atoms().length - 1 && at >= ground.atoms()[truth].weight()) {
      at -= ground.atoms()[truth++].weight();
    }
    int[] members = start.members();
    while (new Field(ground, members).classes() > MOST) {
      Ground.Column column = ground.columns()[random.nextInt(ground.columns().length)];
      members = Rollout.parts(column, members)[column.codes()[truth]];
    }
    return new Field(ground, members).classes() < FEWEST ? new int[0] : members;
  }
}
