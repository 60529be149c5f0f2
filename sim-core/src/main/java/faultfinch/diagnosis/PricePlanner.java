package faultfinch.diagnosis;

import faultfinch.bench.Price;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Takes the step of least expected price to the end. With few classes left that is computed; with
 * more, the best steps by gain are each played through, and as far as the budget goes the best few
 * steps after each outcome; with very many the best by gain is taken.
 *
 * <p>Not modelled: outcomes that are wrong, looks whose price depends on the step before.
 */
public final class PricePlanner implements Planner {

  /** Steps after the first that are chosen with care, if the budget suffices. */
  private static final int DEPTH = 2;

  /** Share of the work of playing steps through that choosing with care may take, in its parts. */
  private static final int CARE = 4;

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

    /** The same without the exact stage. */
    public Effort withoutExact() {
      return new Effort(0, 0, rolloutClasses, steps, cells);
    }
  }

  /** A step with what it is worth; the price in minutes to the end, if it was worked out. */
  record Ranked(Option option, double bits, Optional<Double> expectedPrice) {}

  /**
   * Ranked steps, and how to go on after each.
   *
   * @param toTheEnd whether every price is that of a way that was played to the end
   */
  private record Weighed(List<Ranked> steps, Policy after, boolean toTheEnd) {}

  /**
   * A choice with all that was worked out for it.
   *
   * @param field the same candidates, on the ground the options speak of
   * @param gains of that ground, which count the work of the policy too
   * @param ranked by gain per waste
   * @param policy the choice first, then what the price counts on
   * @param toTheEnd whether the price is that of the policy, and not an estimate in part
   */
  record Plan(
      Field field,
      Gains gains,
      Choice best,
      List<Ranked> ranked,
      Policy policy,
      boolean toTheEnd) {}

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
  public Choice choose(Field whole) {
    Field field = toPlanOn(whole);
    return exact(field)
        .map(plan -> choice(field, plan.option(), plan.price(), Choice.Method.EXACT))
        .orElseGet(
            () -> best(field, weighed(field, new Gains(field.ground()), effort.steps).steps));
  }

  private static Field toPlanOn(Field whole) {
    if (whole.isEmpty()) {
      throw new IllegalArgumentException("found no candidate left, right would be one or more");
    }
    return whole.narrowed();
  }

  /**
   * The choice and what it rests on.
   *
   * @param most steps ranked; those played through are always among them
   */
  Plan plan(Field whole, int most) {
    Field field = toPlanOn(whole);
    Gains gains = new Gains(field.ground());
    Weighed weighed = weighed(field, gains, most);
    Optional<ExactPlan> exact = exact(field);
    if (exact.isPresent()) {
      ExactPlan plan = exact.get();
      Choice best = choice(field, plan.option(), plan.price(), Choice.Method.EXACT);
      return new Plan(field, gains, best, weighed.steps, (members, made) -> plan.at(members), true);
    }
    Ranked first = least(weighed.steps);
    return new Plan(
        field,
        gains,
        best(field, weighed.steps),
        weighed.steps,
        (members, made) -> made == 0 ? first.option : weighed.after.at(members, made),
        weighed.toTheEnd);
  }

  /** The best plan of a field with few classes, if the effort suffices. */
  private Optional<ExactPlan> exact(Field field) {
    return field.classes() > effort.exactClasses
        ? Optional.empty()
        : ExactPlan.of(field.ground(), field.members(), effort.exactMoves);
  }

  /** The best of ranked steps: by what they cost to the end, or the first of a large field. */
  private Choice best(Field field, List<Ranked> ranked) {
    boolean played = field.classes() <= effort.rolloutClasses;
    Ranked best = least(ranked);
    Choice.Method method = played ? Choice.Method.ROLLOUT : Choice.Method.GAIN_PER_PRICE;
    return choice(field, best.option, best.expectedPrice.orElseThrow(), method);
  }

  private static Ranked least(List<Ranked> ranked) {
    Ranked best = ranked.get(0);
    for (Ranked other : ranked) {
      if (other.expectedPrice.isPresent()
          && other.expectedPrice.get() < best.expectedPrice.orElseThrow()) {
        best = other;
      }
    }
    return best;
  }

  /** Steps by gain per waste; the first few played through, of a large field only the first. */
  private Weighed weighed(Field field, Gains gains, int most) {
    int[] members = field.members();
    double weight = gains.weight(members);
    Rollout rollout = new Rollout(field.ground(), gains, effort.cells);
    boolean small = field.classes() <= effort.rolloutClasses;
    int played = small ? effort.steps : 1;
    List<Ranked> ranked = new ArrayList<>();
    for (Option option : gains.ranked(members, Math.max(most, effort.steps))) {
      Optional<Double> price =
          ranked.size() < played
              ? Optional.of(rollout.price(option, members) / weight)
              : Optional.empty();
      ranked.add(new Ranked(option, option.gain() / weight, price));
    }
    Weighed weighed = new Weighed(List.copyOf(ranked), (left, made) -> gains.best(left), false);
    if (!small) {
      return weighed;
    }
    long budget = effort.cells * effort.steps / CARE;
    Lookahead ahead = new Lookahead(field.ground(), gains, rollout, effort.steps, budget);
    for (int depth = 1; depth <= DEPTH; depth++) {
      List<Ranked> better = new ArrayList<>();
      for (Ranked step : weighed.steps) {
        Optional<Double> price = Optional.empty();
        if (step.expectedPrice.isPresent() && !ahead.spent()) {
          price = Optional.of(ahead.price(step.option, members, depth) / weight);
        }
        better.add(new Ranked(step.option, step.bits, price));
      }
      if (ahead.spent()) {
        break;
      }
      int careful = depth;
      weighed =
          new Weighed(
              List.copyOf(better),
              (left, made) ->
                  ahead
                      .found(left, Math.max(0, careful + 1 - made))
                      .orElseGet(() -> gains.best(left)),
              true);
    }
    return weighed;
  }

  /** The ranked steps of a plan, and behind them all others that tell something. */
  static List<Ranked> allRanked(Plan plan) {
    List<Ranked> all = new ArrayList<>(plan.ranked);
    int[] members = plan.field.members();
    double weight = plan.gains.weight(members);
    List<Option> options = plan.gains.ranked(members, Integer.MAX_VALUE);
    for (Option option : options.subList(all.size(), options.size())) {
      all.add(new Ranked(option, option.gain() / weight, Optional.empty()));
    }
    return all;
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
