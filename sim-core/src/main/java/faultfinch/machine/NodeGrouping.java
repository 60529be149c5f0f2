package faultfinch.machine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
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
      for (int later : later(i)) {
        waitsFor[later]++;
      }
    }
  }

  private Collection<Integer> later(int component) {
    Set<Integer> later = new TreeSet<>();
    for (int node : components.get(component)) {
      for (int next : after.get(node)) {
        later.add(componentOf.get(next));
      }
    }
    later.remove(component);
    return later;
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
      for (int later : later(next)) {
        waitsFor[later]--;
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
      whole = whole < 0 && ready(part(i), placed) ? i : whole;
    }
    return whole < 0 ? any : whole;
  }

  private boolean ready(int part, boolean[] placed) {
    for (int i = 0; i < placed.length; i++) {
      if (!placed[i] && part(i) == part && waitsFor[i] > 0) {
        return false;
      }
    }
    return true;
  }
}
