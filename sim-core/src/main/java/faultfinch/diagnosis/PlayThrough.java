package faultfinch.diagnosis;

import faultfinch.bench.Price;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.function.Predicate;

/**
 * Plays every candidate through to its cure by a policy and notes what each end has cost. Heavy
 * branches are played first; in what the counted budget leaves, each class is looked for at the
 * rate so far, and what no look parts is repaired in the best order.
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

  /** Looked for until its class is known, then what no look parts is repaired in the best order. */
  private void estimate(Node node, double minutesABit) {
    int looking = (int) Math.round(minutesABit * gains.missing(node.members) / node.weight);
    Price looks = new Price(looking, 0, 0, looking);
    Map<Integer, List<Integer>> classes = new LinkedHashMap<>();
    for (int member : node.members) {
      int signature = ground.atoms()[member].signature();
      classes.computeIfAbsent(signature, k -> new ArrayList<>()).add(member);
    }
    for (List<Integer> one : classes.values()) {
      int[] left = one.stream().mapToInt(Integer::intValue).toArray();
      Price spent = node.spent.plus(looks);
      int pulls = node.pulls;
      boolean fitted = node.custom;
      for (int action : new OneClass(ground, one).order()) {
        Price cost = ground.cost(action);
        spent = spent.plus(cost);
        fitted |= custom.test(ground.actions().get(action));
        int[] missed = gains.missed(action, left);
        double cured = gains.weight(left) - gains.weight(missed);
        ends.add(new Forecast.End(cured, spent.total(), spent.minutes(), pulls, fitted));
        pulls += cost.pulls();
        left = missed;
      }
    }
  }
}
