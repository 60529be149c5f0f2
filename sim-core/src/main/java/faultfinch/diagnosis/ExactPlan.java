package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The least expected price over every order of looks and repairs, by dynamic programming over sets
 * of candidates with branch and bound.
 *
 * <p>With V(S) the least price times the weight w(S) of a set: V(empty) = 0, else the least of
 * price x w(S) + sum of V over the outcomes, for each look that parts S, and price x w(S) + V(S
 * without what is cured), for each repair that cures some of S. Both kinds are moves with parts.
 */
final class ExactPlan {
  private static final int MOST_ATOMS = 64;

  /** A look or repair: sets of the atoms that stay together after it; the cured ones in none. */
  private record Move(Option option, double price, long[] parts) {}

  private final List<Move> moves = new ArrayList<>();
  private final List<Move> repairs = new ArrayList<>();
  private final SetValues exact = new SetValues();
  private final SetValues bounds = new SetValues();
  private final double[] weights;
  private final double[] due;
  private final long[] classes;
  private double leastLook = Double.POSITIVE_INFINITY;
  private long left;
  private double price;
  private final long all;
  private final Map<Integer, Integer> groupOf = new LinkedHashMap<>();

  private ExactPlan(Ground ground, List<int[]> groups, Map<Integer, Long> curing, long budget) {
    left = budget;
    for (int i = 0; i < groups.size(); i++) {
      for (int member : groups.get(i)) {
        groupOf.put(member, i);
      }
    }
    weights = new double[groups.size()];
    due = new double[groups.size()];
    Arrays.fill(due, Double.POSITIVE_INFINITY);
    classes = classes(ground, groups);
    all = groups.size() == MOST_ATOMS ? -1L : (1L << groups.size()) - 1;
    for (int i = 0; i < groups.size(); i++) {
      for (int member : groups.get(i)) {
        weights[i] += ground.atoms()[member].weight();
      }
    }
    curing.forEach(
        (action, set) -> {
          double price = ground.price(action);
          Move move = new Move(new Option(-1, action, 0, 0), price, new long[] {all & ~set});
          repairs.add(move);
          for (int i = 0; i < due.length; i++) {
            due[i] = (set >>> i & 1) == 1 ? Math.min(due[i], price) : due[i];
          }
        });
    moves.addAll(repairs);
    addLooks(ground, groups);
  }

  private static long[] classes(Ground ground, List<int[]> groups) {
    Map<Integer, Long> bySignature = new LinkedHashMap<>();
    for (int i = 0; i < groups.size(); i++) {
      int signature = ground.atoms()[groups.get(i)[0]].signature();
      bySignature.merge(signature, 1L << i, (a, b) -> a | b);
    }
    return bySignature.values().stream().mapToLong(Long::longValue).toArray();
  }

  private void addLooks(Ground ground, List<int[]> groups) {
    Map<List<Long>, Move> looks = new LinkedHashMap<>();
    for (int c = 0; c < ground.columns().length; c++) {
      Ground.Column column = ground.columns()[c];
      Map<Short, Long> byCode = new LinkedHashMap<>();
      for (int i = 0; i < groups.size(); i++) {
        byCode.merge(column.codes()[groups.get(i)[0]], 1L << i, (a, b) -> a | b);
      }
      if (byCode.size() > 1) {
        List<Long> parts = List.copyOf(byCode.values());
        long[] sets = parts.stream().mapToLong(Long::longValue).toArray();
        Move move = new Move(new Option(c, -1, 0, 0), column.price(), sets);
        looks.merge(parts, move, (a, b) -> b.price < a.price ? b : a);
      }
    }
    for (Move look : looks.values()) {
      moves.add(look);
      leastLook = Math.min(leastLook, look.price);
    }
  }

  /**
   * The best plan, or nothing if there are too many candidates or the budget, counted in moves
   * weighed, does not suffice.
   */
  static Optional<ExactPlan> of(Ground ground, int[] members, long budget) {
    Map<Integer, Long> none = new LinkedHashMap<>();
    List<int[]> groups = merged(ground, members, none);
    if (groups.size() > MOST_ATOMS) {
      return Optional.empty();
    }
    ExactPlan plan = new ExactPlan(ground, groups, none, budget);
    return plan.solve() ? Optional.of(plan) : Optional.empty();
  }

  /** Expected minutes to the cure. */
  double price() {
    return price;
  }

  /** The best first step. */
  Option option() {
    return option(all);
  }

  /** The best step with candidates left that the plan can come to. */
  Option at(int[] members) {
    long set = 0;
    for (int member : members) {
      set |= 1L << groupOf.get(member);
    }
    return option(set);
  }

  /**
   * The move whose parts cost least; of the best one all parts are known, since they were summed.
   */
  private Option option(long set) {
    double weight = weight(set);
    double best = Double.POSITIVE_INFINITY;
    Option option = moves.get(0).option;
    for (Move move : moves) {
      double sum = move.price * weight;
      boolean changes = true;
      for (long part : move.parts) {
        changes &= (set & part) != set;
        // Not a number if it was never worked out, and then not below the best either.
        sum += (set & part) == 0 ? 0 : exact.get(set & part);
      }
      if (changes && sum < best) {
        best = sum;
        option = move.option;
      }
    }
    return option;
  }

  /**
   * Members that no look and no repair worth making parts.
   *
   * @param curing filled with the groups each such repair cures
   */
  private static List<int[]> merged(Ground ground, int[] members, Map<Integer, Long> curing) {
    List<Integer> worth = worthMaking(ground, members);
    Map<List<Integer>, List<Integer>> groups = new LinkedHashMap<>();
    for (int member : members) {
      List<Integer> key = new ArrayList<>();
      key.add(ground.atoms()[member].signature());
      for (int action : ground.atoms()[member].cures()) {
        if (worth.contains(action)) {
          key.add(action);
        }
      }
      groups.computeIfAbsent(key, k -> new ArrayList<>()).add(member);
    }
    int i = 0;
    for (List<Integer> key : groups.keySet()) {
      if (i < MOST_ATOMS) {
        for (int action : key.subList(1, key.size())) {
          curing.merge(action, 1L << i, (a, b) -> a | b);
        }
      }
      i++;
    }
    return groups.values().stream()
        .map(g -> g.stream().mapToInt(Integer::intValue).toArray())
        .toList();
  }

  /** Repairs of which no other cures the same members and more for as little. */
  private static List<Integer> worthMaking(Ground ground, int[] members) {
    Map<Integer, BitSet> cured = new LinkedHashMap<>();
    for (int i = 0; i < members.length; i++) {
      for (int action : ground.atoms()[members[i]].cures()) {
        cured.computeIfAbsent(action, k -> new BitSet()).set(i);
      }
    }
    List<Integer> worth = new ArrayList<>();
    for (int action : cured.keySet()) {
      boolean beaten = false;
      for (int other : cured.keySet()) {
        BitSet more = (BitSet) cured.get(action).clone();
        more.andNot(cured.get(other));
        boolean covers = other != action && more.isEmpty();
        boolean same = covers && cured.get(action).equals(cured.get(other));
        double dearer = ground.price(action) - ground.price(other);
        beaten |= covers && (dearer > 0 || (dearer == 0 && (!same || other < action)));
      }
      if (!beaten) {
        worth.add(action);
      }
    }
    return worth;
  }

  private boolean solve() {
    price = solve(all, Double.POSITIVE_INFINITY) / weight(all);
    return left >= 0;
  }

  /** V(S) if it is below the limit, else infinity: rounding must not pass off one as the other. */
  private double solve(long set, double limit) {
    if (set == 0) {
      return 0;
    }
    double known = exact.get(set);
    if (!Double.isNaN(known)) {
      return known < limit ? known : Double.POSITIVE_INFINITY;
    }
    if (bound(set) >= limit) {
      return Double.POSITIVE_INFINITY;
    }
    double weight = weight(set);
    List<Map.Entry<Move, Double>> order = promising(set, weight);
    left -= order.size();
    double best = Double.POSITIVE_INFINITY;
    for (Map.Entry<Move, Double> entry : order) {
      double cut = Math.min(best, limit);
      if (entry.getValue() >= cut || left < 0) {
        break;
      }
      double price = price(entry.getKey(), set, cut);
      if (price < best) {
        best = price;
      }
    }
    if (left < 0) {
      return Double.POSITIVE_INFINITY;
    }
    if (best < limit) {
      exact.put(set, best);
      return best;
    }
    bounds.put(set, limit);
    return Double.POSITIVE_INFINITY;
  }

  /** Moves that change something, with the least they can cost; the cheapest first. */
  private List<Map.Entry<Move, Double>> promising(long set, double weight) {
    List<Map.Entry<Move, Double>> order = new ArrayList<>();
    for (Move move : moves) {
      double least = move.price * weight;
      boolean changes = true;
      for (long part : move.parts) {
        changes &= (set & part) != set;
        least += bound(set & part);
      }
      if (changes) {
        order.add(Map.entry(move, least));
      }
    }
    order.sort(Comparator.comparingDouble(Map.Entry::getValue));
    return order;
  }

  /** What a move costs with all that follows; the cut or more if that is reached. */
  private double price(Move move, long set, double cut) {
    double price = move.price * weight(set);
    double[] least = new double[move.parts.length];
    // Noted once: solving one part can raise what is known of another.
    for (int i = 0; i < least.length; i++) {
      least[i] = bound(set & move.parts[i]);
      price += least[i];
    }
    for (int i = 0; i < least.length && price < cut; i++) {
      double others = price - least[i];
      price = others + solve(set & move.parts[i], cut - others);
    }
    return price;
  }

  /**
   * No more than V(S). If somebody told for nothing which class it is, each class would cost its
   * own bound; not told, one has to make a first move, a look or a repair, that all pay for.
   */
  private double bound(long set) {
    if (set == 0) {
      return 0;
    }
    double known = bounds.get(set);
    if (!Double.isNaN(known)) {
      return known;
    }
    double weight = weight(set);
    double told = 0;
    boolean oneClass = false;
    for (long one : classes) {
      oneClass |= (set & ~one) == 0;
    }
    double least;
    if (oneClass) {
      least = boundOfClass(set, weight);
    } else {
      for (long one : classes) {
        told += bound(set & one);
      }
      least = leastLook * weight + told;
      for (Move repair : repairs) {
        if ((set & ~repair.parts[0]) != 0) {
          least = Math.min(least, repair.price * weight + told - spared(set, repair));
        }
      }
    }
    bounds.put(set, least);
    return least;
  }

  /** How much less the classes cost each by itself after a repair. */
  private double spared(long set, Move repair) {
    double spared = 0;
    for (long one : classes) {
      if ((set & one & ~repair.parts[0]) != 0) {
        spared += bound(set & one) - bound(set & one & repair.parts[0]);
      }
    }
    return spared;
  }

  /**
   * Inside a class only repairs help. If none cures what another does, the best order is by weight
   * cured for the price, and the bound is V itself.
   */
  private double boundOfClass(long set, double weight) {
    List<double[]> order = new ArrayList<>();
    long cured = 0;
    boolean apart = true;
    double first = Double.POSITIVE_INFINITY;
    for (Move repair : repairs) {
      long here = set & ~repair.parts[0];
      if (here != 0) {
        apart &= (here & cured) == 0;
        cured |= here;
        order.add(new double[] {repair.price, weight(here)});
        first = Math.min(first, repair.price * weight - due(here));
      }
    }
    if (!apart) {
      return due(set) + first;
    }
    order.sort(Comparator.comparingDouble(r -> r[0] / r[1]));
    double sum = 0;
    double uncured = weight;
    for (double[] repair : order) {
      sum += repair[0] * uncured;
      uncured -= repair[1];
    }
    return sum;
  }

  private double weight(long set) {
    double sum = 0;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      sum += weights[Long.numberOfTrailingZeros(rest)];
    }
    return sum;
  }

  private double due(long set) {
    double sum = 0;
    for (long rest = set; rest != 0; rest &= rest - 1) {
      int i = Long.numberOfTrailingZeros(rest);
      sum += weights[i] * due[i];
    }
    return sum;
  }
}
