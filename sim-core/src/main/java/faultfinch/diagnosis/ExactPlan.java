package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

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
  private double leastLook = Double.POSITIVE_INFINITY;
  private long left;
  private Option bestAtTop;
  private final long all;

  private ExactPlan(Ground ground, List<int[]> groups, Map<Integer, Long> curing, long budget) {
    left = budget;
    weights = new double[groups.size()];
    due = new double[groups.size()];
    Arrays.fill(due, Double.POSITIVE_INFINITY);
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
   * The best step and its expected price in minutes, or nothing if there are too many candidates or
   * the budget, counted in moves weighed, does not suffice.
   */
  static Optional<Map.Entry<Option, Double>> of(Ground ground, int[] members, long budget) {
    Map<Integer, Long> none = new LinkedHashMap<>();
    List<int[]> groups = merged(ground, members, none);
    if (groups.size() > MOST_ATOMS) {
      return Optional.empty();
    }
    ExactPlan plan = new ExactPlan(ground, groups, none, budget);
    OptionalDouble price = plan.solve();
    return price.isEmpty()
        ? Optional.empty()
        : Optional.of(Map.entry(plan.bestAtTop, price.getAsDouble()));
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

  private OptionalDouble solve() {
    double price = solve(all, Double.POSITIVE_INFINITY);
    return left < 0 ? OptionalDouble.empty() : OptionalDouble.of(price / weight(all));
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
        bestAtTop = set == all ? entry.getKey().option : bestAtTop;
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
   * No more than V(S): everyone pays the cheapest repair that cures it, and all pay the first move,
   * which is a look or a repair that is due for some only.
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
    double first = leastLook * weight;
    for (Move repair : repairs) {
      long cured = set & ~repair.parts[0];
      if (cured != 0) {
        first = Math.min(first, repair.price * weight - due(cured));
      }
    }
    double bound = due(set) + first;
    bounds.put(set, bound);
    return bound;
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
