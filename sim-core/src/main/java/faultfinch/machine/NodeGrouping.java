package faultfinch.machine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntUnaryOperator;

/**
 * Puts outputs of one part side by side where the order of settling leaves the choice, so that one
 * settle of the part serves them all.
 *
 * <p>Nothing that could be told apart moves: an output stays behind all that feed it, and the
 * drivers of a net keep their order among themselves.
 */
final class NodeGrouping {
  private final List<List<Integer>> components;
  private final List<Set<Integer>> after;
  private final IntUnaryOperator partOf;
  private final Map<Integer, Integer> componentOf = new HashMap<>();
  private final int[] waitsFor;

  /** Per component those that must come after it. */
  private final List<Set<Integer>> later = new ArrayList<>();

  /** Per part how many of its components wait for another. */
  private final Map<Integer, Integer> waiting = new HashMap<>();

  /** Components in an order that holds, and for each node those that must come after it. */
  NodeGrouping(List<List<Integer>> components, List<Set<Integer>> after, IntUnaryOperator partOf) {
    this.components = components;
    this.after = after;
    this.partOf = partOf;
    this.waitsFor = new int[components.size()];
    for (int i = 0; i < components.size(); i++) {
      for (int node : components.get(i)) {
        componentOf.put(node, i);
      }
    }
    for (int i = 0; i < waitsFor.length; i++) {
      later.add(later(i));
      later.get(i).forEach(next -> waitsFor[next]++);
    }
    for (int i = 0; i < waitsFor.length; i++) {
      waiting.merge(part(i), waitsFor[i] > 0 ? 1 : 0, Integer::sum);
    }
  }

  private Set<Integer> later(int component) {
    Set<Integer> found = new HashSet<>();
    for (int node : components.get(component)) {
      for (int next : after.get(node)) {
        found.add(componentOf.get(next));
      }
    }
    found.remove(component);
    return found;
  }

  private int part(int component) {
    return partOf.applyAsInt(components.get(component).get(0));
  }

  /** Rearranges the components in place. */
  void arrange() {
    List<List<Integer>> arranged = new ArrayList<>();
    boolean[] placed = new boolean[waitsFor.length];
    int last = -1;
    while (arranged.size() < waitsFor.length) {
      int next = next(placed, last);
      placed[next] = true;
      last = part(next);
      arranged.add(components.get(next));
      for (int freed : later.get(next)) {
        waitsFor[freed]--;
        if (waitsFor[freed] == 0) {
          waiting.merge(part(freed), -1, Integer::sum);
        }
      }
    }
    components.clear();
    components.addAll(arranged);
  }

  /**
   * The first that is ready: of the last part, else of a part that is ready as a whole, else any.
   */
  private int next(boolean[] placed, int last) {
    int any = -1;
    int whole = -1;
    for (int i = 0; i < placed.length; i++) {
      if (placed[i] || waitsFor[i] > 0) {
        continue;
      }
      if (part(i) == last) {
        return i;
      }
      any = any < 0 ? i : any;
      whole = whole < 0 && waiting.get(part(i)) == 0 ? i : whole;
    }
    return whole < 0 ? any : whole;
  }
}
