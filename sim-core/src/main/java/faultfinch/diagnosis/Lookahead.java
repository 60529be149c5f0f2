package faultfinch.diagnosis;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * What a board costs from here if after each step the best few steps are tried again, and so on for
 * a number of steps; from there on always the one of most gain per waste, or repairs only if that
 * costs less. Each of these is a way to go on, so the price is never below the least possible.
 */
final class Lookahead {

  /** A set of candidates and how many steps are chosen with care; equal if it holds the same. */
  private record Left(int[] members, int depth) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Left left
          && depth == left.depth
          && Arrays.equals(members, left.members);
    }

    @Override
    public int hashCode() {
      return 31 * Arrays.hashCode(members) + depth;
    }
  }

  /** The least price found, times weight, and the step that leads to it. */
  private record Best(double price, Option option) {}

  private final Ground ground;
  private final Gains gains;
  private final Rollout rollout;
  private final int steps;
  private final long end;
  private final Map<Left, Best> known = new HashMap<>();

  /**
   * @param steps tried at each set of candidates
   * @param budget for all questions together, in pairs of candidate and look
   */
  Lookahead(Ground ground, Gains gains, Rollout rollout, int steps, long budget) {
    this.ground = ground;
    this.gains = gains;
    this.rollout = rollout;
    this.steps = steps;
    this.end = gains.cells() + budget;
  }

  /** Whether the budget is used up; what was answered last is worth nothing then. */
  boolean spent() {
    return gains.cells() >= end;
  }

  /**
   * Expected minutes to the end, times the weight of the members.
   *
   * @param depth how many steps after this one are chosen with care
   */
  double price(Option option, int[] members, int depth) {
    double sum = own(option, members);
    for (int[] part : parts(option, members)) {
      sum += part.length == 0 ? 0 : least(part, depth).price;
    }
    return sum;
  }

  /** The step that was found best for these candidates, if they came up. */
  Optional<Option> found(int[] members, int depth) {
    return Optional.ofNullable(known.get(new Left(members, depth))).map(Best::option);
  }

  private double own(Option option, int[] members) {
    double price =
        option.isLook() ? ground.columns()[option.column()].price() : ground.price(option.action());
    return price * gains.weight(members);
  }

  private int[][] parts(Option option, int[] members) {
    return option.isLook()
        ? Rollout.parts(ground.columns()[option.column()], members)
        : new int[][] {gains.missed(option.action(), members)};
  }

  private Best least(int[] members, int depth) {
    Left left = new Left(members, depth);
    Best before = known.get(left);
    if (before != null) {
      return before;
    }
    Rollout.Repairs repairs = rollout.repairingOnly(members);
    Best best = new Best(repairs.price(), new Option(-1, repairs.first(), 0, 0));
    if (spent()) {
      return best;
    }
    for (Option option : gains.ranked(members, depth == 0 ? 1 : steps)) {
      double sum = own(option, members);
      for (int[] part : parts(option, members)) {
        boolean counts = part.length > 0 && sum < best.price;
        sum += counts ? least(part, Math.max(0, depth - 1)).price : 0;
      }
      best = sum < best.price ? new Best(sum, option) : best;
    }
    if (!spent()) {
      known.put(left, best);
    }
    return best;
  }
}
