package faultfinch.diagnosis;

import faultfinch.bench.Price;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Predicate;

/**
 * Plays every candidate through to its cure by a policy and notes what each end has cost. Heavy
 * branches are played first; in what the counted budget leaves, each candidate is looked for at the
 * rate so far and cured by its own repair.
 */
final class PlayThrough {

  /** Candidates that are left, and what was spent until then. */
  private record Node(
      int[] members, double weight, int number, int made, Price spent, int pulls, boolean custom) {}

  private final Ground ground;
  private final Gains gains;
  private final Policy policy;
  private final Predicate<RepairAction> custom;
  private final List<Forecast.End> ends = new ArrayList<>();
  private final PriorityQueue<Node> open =
      new PriorityQueue<>(
          Comparator.comparingDouble(Node::weight).reversed().thenComparing(Node::number));
  private int number;
  private double lookMinutes;
  private double lookBits;

  /**
   * @param custom whether a repair fits a custom part
   */
  PlayThrough(Ground ground, Gains gains, Policy policy, Predicate<RepairAction> custom) {
    this.ground = ground;
    this.gains = gains;
    this.policy = policy;
    this.custom = custom;
  }

  /**
   * What it comes to.
   *
   * @param budget in pairs of candidate and look
   */
  Forecast of(int[] members, long budget) {
    long end = gains.cells() + budget;
    leave(members, new Node(members, 0, 0, -1, Price.NOTHING, 0, false), Price.NOTHING, 0, false);
    while (!open.isEmpty() && gains.cells() < end) {
      Node node = open.poll();
      play(node, policy.at(node.members, node.made));
    }
    double minutesABit = lookBits > 0 ? lookMinutes / lookBits : 0;
    while (!open.isEmpty()) {
      estimate(open.poll(), minutesABit);
    }
    return Forecast.of(ends);
  }

  private void play(Node node, Option option) {
    Price cost = PricePlanner.price(ground, option);
    if (option.isLook()) {
      double missing = gains.missing(node.members);
      for (int[] part : Rollout.parts(ground.columns()[option.column()], node.members)) {
        missing -= gains.missing(part);
        leave(part, node, cost, cost.pulls(), false);
      }
      lookMinutes += cost.minutes() * node.weight;
      lookBits += missing;
      return;
    }
    boolean fitted = custom.test(ground.actions().get(option.action()));
    int[] missed = gains.missed(option.action(), node.members);
    end(node, node.weight - gains.weight(missed), cost, fitted);
    leave(missed, node, cost, cost.pulls(), fitted);
  }

  private void leave(int[] members, Node before, Price cost, int pulls, boolean fitted) {
    if (members.length > 0) {
      open.add(
          new Node(
              members,
              gains.weight(members),
              number++,
              before.made + 1,
              before.spent.plus(cost),
              before.pulls + pulls,
              before.custom || fitted));
    }
  }

  private void end(Node node, double weight, Price cost, boolean fitted) {
    Price spent = node.spent.plus(cost);
    ends.add(
        new Forecast.End(
            weight, spent.total(), spent.minutes(), node.pulls, node.custom || fitted));
  }

  private void estimate(Node node, double minutesABit) {
    double looking = minutesABit * gains.missing(node.members) / node.weight;
    for (int member : node.members) {
      Ground.Atom atom = ground.atoms()[member];
      Price spent = node.spent.plus(ground.cost(atom.own()));
      ends.add(
          new Forecast.End(
              atom.weight(),
              spent.total() + looking,
              spent.minutes() + looking,
              node.pulls,
              node.custom || custom.test(ground.actions().get(atom.own()))));
    }
  }
}
