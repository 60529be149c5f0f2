package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * What a board costs from here if a given step is taken first and then always the one of most gain
 * per waste. Heavy branches are played first; what the counted budget leaves is estimated.
 */
final class Rollout {

  /** Minutes of repairing only, times weight, and the repair to begin with. */
  record Repairs(double price, int first) {}

  /** Candidates that are left somewhere in the tree of play. */
  private record Node(int[] members, double weight, int number) {}

  private final Ground ground;
  private final Gains gains;
  private final long budget;
  private int made;

  /**
   * @param budget for each step to judge, in pairs of candidate and look
   */
  Rollout(Ground ground, Gains gains, long budget) {
    this.ground = ground;
    this.gains = gains;
    this.budget = budget;
  }

  /** Expected minutes to the end, times the weight of the members. */
  double price(Option first, int[] members) {
    PriorityQueue<Node> open =
        new PriorityQueue<>(
            Comparator.comparingDouble(Node::weight).reversed().thenComparing(Node::number));
    double sum = take(first, members, open);
    double lookMinutes = first.isLook() ? first.waste() : 0;
    double lookBits = first.isLook() ? first.gain() : 0;
    long end = gains.cells() + budget;
    while (!open.isEmpty() && gains.cells() < end) {
      Node node = open.poll();
      Option option = gains.best(node.members);
      sum += take(option, node.members, open);
      if (option.isLook()) {
        lookMinutes += option.waste();
        lookBits += option.gain();
      }
    }
    double minutesABit = lookBits > 0 ? lookMinutes / lookBits : Double.POSITIVE_INFINITY;
    while (!open.isEmpty()) {
      sum += estimate(open.poll(), minutesABit);
    }
    return sum;
  }

  /** Puts what is left after a step among the open nodes; what the step costs, times weight. */
  private double take(Option option, int[] members, PriorityQueue<Node> open) {
    double weight = gains.weight(members);
    if (option.isLook()) {
      for (int[] part : parts(ground.columns()[option.column()], members)) {
        if (part.length > 0) {
          open.add(new Node(part, gains.weight(part), made++));
        }
      }
      return ground.columns()[option.column()].price() * weight;
    }
    int[] missed = gains.missed(option.action(), members);
    if (missed.length > 0) {
      open.add(new Node(missed, gains.weight(missed), made++));
    }
    return ground.price(option.action()) * weight;
  }

  /** The members by outcome. */
  static int[][] parts(Ground.Column column, int[] members) {
    int[] sizes = new int[column.outcomes()];
    for (int member : members) {
      sizes[column.codes()[member]]++;
    }
    int[][] parts = new int[sizes.length][];
    for (int i = 0; i < sizes.length; i++) {
      parts[i] = new int[sizes[i]];
    }
    for (int i = members.length - 1; i >= 0; i--) {
      int code = column.codes()[members[i]];
      parts[code][--sizes[code]] = members[i];
    }
    return parts;
  }

  /** The due repair, and either looks until it is known or repairs one after the other. */
  private double estimate(Node node, double minutesABit) {
    double due = 0;
    for (int member : node.members) {
      due += ground.price(ground.atoms()[member].own()) * ground.atoms()[member].weight();
    }
    double looking = due + minutesABit * gains.missing(node.members);
    return Math.min(repairingOnly(node.members).price, looking);
  }

  /** The due repairs one after the other, best first: the minutes, times weight, and the first. */
  Repairs repairingOnly(int[] members) {
    List<double[]> groups = new ArrayList<>();
    int own = -1;
    for (int member : members) {
      Ground.Atom atom = ground.atoms()[member];
      if (atom.own() != own) {
        own = atom.own();
        groups.add(new double[] {0, ground.price(own), own});
      }
      groups.get(groups.size() - 1)[0] += atom.weight();
    }
    groups.sort(Comparator.comparingDouble(g -> -g[0] / g[1]));
    double left = gains.weight(members);
    double sum = 0;
    for (double[] group : groups) {
      sum += group[1] * left;
      left = Math.max(0, left - group[0]);
    }
    return new Repairs(sum, (int) groups.get(0)[2]);
  }
}
