package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Takes the step of least expected price to the end. With few classes left that is computed; with
 * more, the best steps by gain are each played through; with very many the best by gain is taken.
 *
 * <p>Not modelled: outcomes that are wrong, looks whose price depends on the step before.
 */
public final class PricePlanner implements Planner {

  /**
   * How much work a choice may take. It is counted, never timed: a slow computer chooses the same.
   *
   * @param exactClasses most classes for the exact stage
   * @param exactMoves moves it may weigh
   * @param rolloutClasses most classes for playing steps through
   * @param steps how many steps are played through
   * @param cells work for each, in pairs of candidate and look
   */
  public record Effort(
      int exactClasses, long exactMoves, int rolloutClasses, int steps, long cells) {

    /** As much as a person waits for without noticing. */
    public static final Effort SHIPPED = new Effort(24, 200_000, 500, 8, 1_000_000);
  }

  /** A step with what it is worth; the price in minutes to the end, if it was worked out. */
  record Ranked(Option option, double bits, Optional<Double> expectedPrice) {}

  private final Effort effort;

  /** With the effort that is shipped. */
  public PricePlanner() {
    this(Effort.SHIPPED);
  }

  /** With another effort. */
  public PricePlanner(Effort effort) {
    this.effort = effort;
  }

  @Override
  public Choice choose(Field field) {
    if (field.isEmpty()) {
      throw new IllegalArgumentException("found no candidate left, right would be one or more");
    }
    Ground ground = field.ground();
    int classes = field.classes();
    if (classes <= effort.exactClasses) {
      Optional<Map.Entry<Option, Double>> exact =
          ExactPlan.of(ground, field.members(), effort.exactMoves);
      if (exact.isPresent()) {
        Map.Entry<Option, Double> best = exact.get();
        return choice(ground, best.getKey(), best.getValue(), Choice.Method.EXACT);
      }
    }
    List<Ranked> ranked = ranked(field, effort.steps);
    boolean played = classes <= effort.rolloutClasses;
    Ranked best = ranked.get(0);
    for (Ranked other : ranked) {
      if (played && other.expectedPrice.orElseThrow() < best.expectedPrice.orElseThrow()) {
        best = other;
      }
    }
    return choice(
        ground,
        best.option,
        best.expectedPrice.orElseThrow(),
        played ? Choice.Method.ROLLOUT : Choice.Method.GAIN_PER_PRICE);
  }

  /**
   * Steps by gain per waste; the first few played through, of a large field only the first.
   *
   * @param most how many
   */
  List<Ranked> ranked(Field field, int most) {
    Gains gains = new Gains(field.ground());
    int[] members = field.members();
    double weight = gains.weight(members);
    Rollout rollout = new Rollout(field.ground(), gains, effort.cells);
    int played = field.classes() <= effort.rolloutClasses ? effort.steps : 1;
    List<Ranked> ranked = new ArrayList<>();
    for (Option option : gains.ranked(members, most)) {
      Optional<Double> price =
          ranked.size() < played
              ? Optional.of(rollout.price(option, members) / weight)
              : Optional.empty();
      ranked.add(new Ranked(option, option.gain() / weight, price));
    }
    return List.copyOf(ranked);
  }

  private static Choice choice(Ground ground, Option option, double price, Choice.Method method) {
    return new Choice(step(ground, option), cost(ground, option), price, method);
  }

  static Step step(Ground ground, Option option) {
    return option.isLook()
        ? new Step.Observe(ground.columns()[option.column()].look())
        : new Step.Act(ground.actions().get(option.action()));
  }

  static Cost cost(Ground ground, Option option) {
    return option.isLook()
        ? ground.columns()[option.column()].cost()
        : ground.cost(option.action());
  }
}
