package faultfinch.diagnosis;

import faultfinch.bench.Price;
import java.util.ArrayList;
import java.util.List;
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
    return exact(field).orElseGet(() -> best(field, ranked(field, effort.steps)));
  }

  /** The best step of a field with few classes, if the effort suffices. */
  Optional<Choice> exact(Field field) {
    if (field.classes() > effort.exactClasses) {
      return Optional.empty();
    }
    return ExactPlan.of(field.ground(), field.members(), effort.exactMoves)
        .map(best -> choice(field, best.getKey(), best.getValue(), Choice.Method.EXACT));
  }

  /** The best of ranked steps: by what they cost to the end, or the first of a large field. */
  Choice best(Field field, List<Ranked> ranked) {
    boolean played = field.classes() <= effort.rolloutClasses;
    Ranked best = ranked.get(0);
    for (Ranked other : ranked) {
      if (other.expectedPrice.isPresent()
          && other.expectedPrice.get() < best.expectedPrice.orElseThrow()) {
        best = other;
      }
    }
    Choice.Method method = played ? Choice.Method.ROLLOUT : Choice.Method.GAIN_PER_PRICE;
    return choice(field, best.option, best.expectedPrice.orElseThrow(), method);
  }

  /**
   * Steps by gain per waste; the first few played through, of a large field only the first.
   *
   * @param most how many; those played through are always among them
   */
  List<Ranked> ranked(Field field, int most) {
    Gains gains = new Gains(field.ground());
    int[] members = field.members();
    double weight = gains.weight(members);
    Rollout rollout = new Rollout(field.ground(), gains, effort.cells);
    int played = field.classes() <= effort.rolloutClasses ? effort.steps : 1;
    List<Ranked> ranked = new ArrayList<>();
    for (Option option : gains.ranked(members, Math.max(most, effort.steps))) {
      Optional<Double> price =
          ranked.size() < played
              ? Optional.of(rollout.price(option, members) / weight)
              : Optional.empty();
      ranked.add(new Ranked(option, option.gain() / weight, price));
    }
    return List.copyOf(ranked);
  }

  private static Choice choice(Field field, Option option, double price, Choice.Method method) {
    Ground ground = field.ground();
    return new Choice(step(ground, option), price(ground, option), price, method);
  }

  static Step step(Ground ground, Option option) {
    return option.isLook()
        ? new Step.Observe(ground.columns()[option.column()].look())
        : new Step.Act(ground.actions().get(option.action()));
  }

  static Price price(Ground ground, Option option) {
    return option.isLook()
        ? ground.columns()[option.column()].cost()
        : ground.cost(option.action());
  }
}
