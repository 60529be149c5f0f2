package faultfinch.fault;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Draws faults from a universe by a seed: the same seed draws the same faults, no fault twice. */
public final class Draw {
  private final FaultUniverse universe;
  private final long seed;

  /** Draws from a universe; another seed draws others. */
  public Draw(FaultUniverse universe, long seed) {
    this.universe = universe;
    this.seed = seed;
  }

  /**
   * Draws as boards fail: likely faults often.
   *
   * @param count 0 to the size of the universe
   */
  public List<Fault> byWeight(int count) {
    checked(count);
    List<FaultUniverse.Entry> left = new ArrayList<>(universe.entries());
    List<Fault> drawn = new ArrayList<>();
    while (drawn.size() < count) {
      double sum = left.stream().mapToDouble(FaultUniverse.Entry::weight).sum();
      double at = Lot.share(seed, 1, drawn.size()) * sum;
      int i = 0;
      while (i < left.size() - 1 && at >= left.get(i).weight()) {
        at -= left.get(i).weight();
        i++;
      }
      drawn.add(left.remove(i).fault());
    }
    return List.copyOf(drawn);
  }

  /**
   * Draws so that rare kinds come up as often as common ones: first a kind, then a fault of it.
   *
   * @param count 0 to the size of the universe
   */
  public List<Fault> overKinds(int count) {
    checked(count);
    List<List<Fault>> kinds =
        universe.byKind().values().stream().filter(k -> !k.isEmpty()).toList();
    Set<Fault> drawn = new LinkedHashSet<>();
    for (long turn = 0; drawn.size() < count; turn++) {
      List<Fault> open =
          kinds.get(Lot.below(kinds.size(), seed, 2, turn)).stream()
              .filter(f -> !drawn.contains(f))
              .toList();
      if (!open.isEmpty()) {
        drawn.add(open.get(Lot.below(open.size(), seed, 3, turn)));
      }
    }
    return List.copyOf(drawn);
  }

  private void checked(int count) {
    if (count < 0 || count > universe.size()) {
      throw new IllegalArgumentException(
          "found " + count + " faults to draw, right would be 0 to " + universe.size());
    }
  }
}
