package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A price below which no plan can be: the told-class bound. If somebody told for nothing which
 * class of equal rows the board is of, only repairs would be left to do; not told, one has to make
 * moves first. Derived in docs/decisions/told-for-nothing-bounds-the-price.md.
 *
 * <p>Everything here is minutes times weight. Excess is what is due above the price with the class
 * told. Looks never part a class, so a set of candidates is a set of classes; of a class that a
 * repair cures in part, what is left is counted at its price when told.
 */
final class LowerBound {

  private static final int DEEPEST = 6;

  /** Classes that are left somewhere. */
  private record Left(int level, int[] classes) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Left left
          && level == left.level
          && Arrays.equals(classes, left.classes);
    }

    @Override
    public int hashCode() {
      return 31 * Arrays.hashCode(classes) + level;
    }
  }

  /**
   * A first move.
   *
   * @param excess the least that it and all to come can cost
   * @param own share of it that is due at once
   * @param parts classes that can be left after it
   */
  private record First(double excess, int number, double own, int[][] parts) {}

  private final Ground ground;
  private final double[] weights;
  private final double[] told;
  private final int[][] repairs;
  private final double[][] spared;
  private final double[] repairPrices;
  private final int[][] codes;
  private final double leastLook;
  private final double[] sparedHere;
  private final int[] touching;
  private final boolean[] touched;
  private final Map<Left, Double> known = new HashMap<>();
  private long left;

  private LowerBound(Ground ground, int[] members, long budget) {
    this.ground = ground;
    left = budget;
    Map<Integer, List<Integer>> bySignature = new LinkedHashMap<>();
    for (int member : members) {
      bySignature
          .computeIfAbsent(ground.atoms()[member].signature(), k -> new ArrayList<>())
          .add(member);
    }
    List<List<Integer>> classes = List.copyOf(bySignature.values());
    int size = classes.size();
    weights = new double[size];
    told = new double[size];
    repairs = new int[size][];
    spared = new double[size][];
    Map<Integer, Integer> numberOfAction = new LinkedHashMap<>();
    for (int i = 0; i < size; i++) {
      toldAndSpared(i, classes.get(i), numberOfAction);
    }
    repairPrices = numberOfAction.keySet().stream().mapToDouble(ground::price).toArray();
    touching = new int[repairPrices.length];
    touched = new boolean[repairPrices.length];
    double least = Double.POSITIVE_INFINITY;
    Ground.Column[] columns = ground.columns();
    // With more pairs than may be looked at, no look is followed.
    boolean follows = (long) columns.length * size <= budget;
    codes = new int[columns.length][follows ? size : 0];
    for (int c = 0; c < codes.length; c++) {
      for (int i = 0; i < codes[c].length; i++) {
        codes[c][i] = columns[c].codes()[classes.get(i).get(0)];
      }
      least = Math.min(least, columns[c].price());
    }
    leastLook = least;
    sparedHere = new double[repairPrices.length];
  }

  /**
   * Minutes below which no way to the cure is in the mean.
   *
   * @param budget of work, in pairs of class and look
   */
  static double of(Ground ground, int[] members, long budget) {
    LowerBound bound = new LowerBound(ground, members, budget);
    int[] all = new int[bound.told.length];
    Arrays.setAll(all, i -> i);
    double excess = 0;
    for (int level = 0; level <= DEEPEST && bound.left > 0; level++) {
      excess = Math.max(excess, bound.excess(all, level));
    }
    return (Arrays.stream(bound.told).sum() + excess) / Arrays.stream(bound.weights).sum();
  }

  /** What a class costs by itself, and how much less after one of its repairs was made. */
  private void toldAndSpared(
      int number, List<Integer> members, Map<Integer, Integer> numberOfAction) {
    for (int member : members) {
      weights[number] += ground.atoms()[member].weight();
    }
    OneClass one = new OneClass(ground, members);
    int[] actions = one.actions();
    repairs[number] = new int[actions.length];
    spared[number] = new double[actions.length];
    double[] after = one.few() ? one.byRepairsMade() : new double[0];
    told[number] = one.few() ? after[0] : one.atLeastAfter(-1);
    for (int i = 0; i < spared[number].length; i++) {
      repairs[number][i] = numberOfAction.computeIfAbsent(actions[i], k -> numberOfAction.size());
      double then = one.few() ? after[1 << i] : one.atLeastAfter(i);
      spared[number][i] = told[number] - then;
    }
  }

  /**
   * No more than what some classes cost above their price when told.
   *
   * @param level how many moves are tried one after the other
   */
  private double excess(int[] classes, int level) {
    if (classes.length < 2) {
      return 0;
    }
    if (level == 0 || (long) classes.length * codes.length > left) {
      return atOnce(classes);
    }
    Left key = new Left(level, classes);
    Double before = known.get(key);
    if (before != null) {
      return before;
    }
    List<First> firsts = firsts(classes);
    double best = Double.POSITIVE_INFINITY;
    for (First first : firsts) {
      if (first.excess >= best || level == 1 || left <= 0) {
        best = Math.min(best, first.excess);
        break;
      }
      double sum = first.own;
      for (int[] part : first.parts) {
        sum += excess(part, level - 1);
      }
      best = Math.min(best, Math.max(sum, first.excess));
    }
    known.put(key, best);
    return best;
  }

  /**
   * All pay for the first move; if it is a repair, the classes it cures something of save a share.
   */
  private double atOnce(int[] classes) {
    double weight = weight(classes);
    double least = leastLook * weight;
    int count = touch(classes);
    for (int i = 0; i < count; i++) {
      int repair = touching[i];
      least = Math.min(least, repairPrices[repair] * weight - spared(repair));
    }
    return Math.max(0, least);
  }

  /** How many repairs cure something of some classes: which, and what they spare, is noted. */
  private int touch(int[] classes) {
    int count = 0;
    for (int one : classes) {
      for (int i = 0; i < repairs[one].length; i++) {
        int repair = repairs[one][i];
        if (!touched[repair]) {
          touched[repair] = true;
          touching[count++] = repair;
        }
        sparedHere[repair] += spared[one][i];
      }
    }
    return count;
  }

  /** What a touched repair spares; asked once. */
  private double spared(int repair) {
    double spared = sparedHere[repair];
    sparedHere[repair] = 0;
    touched[repair] = false;
    return spared;
  }

  /** Moves that change something, the one that leaves least to do first. */
  private List<First> firsts(int[] classes) {
    List<First> firsts = new ArrayList<>();
    double weight = weight(classes);
    left -= (long) classes.length * codes.length;
    for (int c = 0; c < codes.length; c++) {
      int[][] parts = parts(c, classes);
      if (parts.length > 1) {
        firsts.add(first(firsts.size(), ground.columns()[c].price() * weight, parts));
      }
    }
    int[] made = Arrays.copyOf(touching, touch(classes));
    double[] owns = new double[made.length];
    for (int i = 0; i < owns.length; i++) {
      owns[i] = Math.max(0, repairPrices[made[i]] * weight - spared(made[i]));
    }
    for (int i = 0; i < owns.length; i++) {
      firsts.add(first(firsts.size(), owns[i], new int[][] {without(made[i], classes)}));
    }
    firsts.sort(Comparator.comparingDouble(First::excess).thenComparingInt(First::number));
    return firsts;
  }

  private First first(int number, double own, int[][] parts) {
    double sum = own;
    for (int[] part : parts) {
      sum += excess(part, 0);
    }
    return new First(sum, number, own, parts);
  }

  /** The classes of which a repair cures nothing. */
  private int[] without(int repair, int[] classes) {
    int count = 0;
    int[] others = new int[classes.length];
    for (int one : classes) {
      boolean touched = false;
      for (int curing : repairs[one]) {
        touched |= curing == repair;
      }
      if (!touched) {
        others[count++] = one;
      }
    }
    return Arrays.copyOf(others, count);
  }

  private int[][] parts(int column, int[] classes) {
    int[] sizes = new int[ground.columns()[column].outcomes()];
    int some = 0;
    for (int one : classes) {
      some += sizes[codes[column][one]]++ == 0 ? 1 : 0;
    }
    if (some < 2) {
      return new int[0][];
    }
    int[][] parts = new int[some][];
    int[] at = new int[sizes.length];
    int next = 0;
    for (int code = 0; code < sizes.length; code++) {
      if (sizes[code] > 0) {
        at[code] = next;
        parts[next++] = new int[sizes[code]];
      }
    }
    int[] filled = new int[some];
    for (int one : classes) {
      int part = at[codes[column][one]];
      parts[part][filled[part]++] = one;
    }
    return parts;
  }

  private double weight(int[] classes) {
    double sum = 0;
    for (int one : classes) {
      sum += weights[one];
    }
    return sum;
  }
}
