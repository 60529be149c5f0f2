package faultfinch.machine;

import faultfinch.signal.Output;
import faultfinch.signal.Pin;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Puts the outputs of a circuit in the order in which they settle. An output feeds another if a net
 * it drives, or one coupled to that, is read by a pin the other follows. The control of an analogue
 * switch stands in the order like an output that drives all nets of its group. What feeds itself
 * round a loop is an island, and stands together in board-file order. Strong components after
 * Tarjan (1972).
 */
final class NodeOrder {
  private final Circuit c;
  private final List<int[]> nodes = new ArrayList<>();
  private final List<Output> outputs = new ArrayList<>();
  private final List<List<Integer>> feeds = new ArrayList<>();
  private final List<List<Integer>> components = new ArrayList<>();
  private final Deque<Integer> stack = new ArrayDeque<>();
  private int[] number;
  private int[] low;
  private boolean[] onStack;
  private int counter;

  NodeOrder(Circuit c) {
    this.c = c;
  }

  void arrange() {
    for (int p = 0; p < c.parts.length; p++) {
      if (c.alive[p]) {
        for (Output o : c.parts[p].pinout().outputs()) {
          nodes.add(new int[] {p, -1});
          outputs.add(o);
        }
        for (int[] control : c.controls) {
          if (c.partOf[control[0]] == p) {
            nodes.add(new int[] {p, control[1]});
            outputs.add(new Output(0, 1L << c.bitOf[control[0]], 0));
          }
        }
      }
    }
    List<List<Integer>> followers = followers();
    for (int n = 0; n < nodes.size(); n++) {
      feeds.add(fedBy(n, followers));
    }
    components();
    new NodeGrouping(components, before(), n -> nodes.get(n)[0]).arrange();
    store(followers);
  }

  private List<List<Integer>> followers() {
    List<List<Integer>> followers = new ArrayList<>();
    for (int g = 0; g < c.partOf.length; g++) {
      followers.add(new ArrayList<>());
    }
    for (int n = 0; n < nodes.size(); n++) {
      int p = nodes.get(n)[0];
      for (Pin pin : c.parts[p].pinout().pins()) {
        if ((outputs.get(n).follows() & pin.mask()) != 0) {
          followers.get(c.pinBase[p] + pin.bit()).add(n);
        }
      }
    }
    return followers;
  }

  private List<Integer> fedBy(int node, List<List<Integer>> followers) {
    Set<Integer> fed = new LinkedHashSet<>();
    for (int net : driven(node)) {
      for (int g : c.receivers[net]) {
        fed.addAll(followers.get(g));
      }
    }
    return List.copyOf(fed);
  }

  /** The nets an output drives, and all that are coupled to them. */
  private Set<Integer> driven(int node) {
    int p = nodes.get(node)[0];
    Set<Integer> driven = new LinkedHashSet<>();
    if (nodes.get(node)[1] >= 0) {
      addAll(driven, c.groups[nodes.get(node)[1]].nets());
    }
    for (Pin pin : c.parts[p].pinout().pins()) {
      if ((outputs.get(node).pins() & pin.mask()) != 0) {
        int net = c.netOf[c.pinBase[p] + pin.bit()];
        int group = c.groupOf[net];
        addAll(driven, group < 0 ? new int[] {net} : c.groups[group].nets());
      }
    }
    return driven;
  }

  private static void addAll(Set<Integer> to, int[] nets) {
    for (int net : nets) {
      to.add(net);
    }
  }

  /** Per node those that come after it: what it feeds, and later drivers of the nets it drives. */
  private List<Set<Integer>> before() {
    List<Set<Integer>> after = new ArrayList<>();
    for (List<Integer> fed : feeds) {
      after.add(new LinkedHashSet<>(fed));
    }
    int[] lastOn = new int[c.netCount];
    Arrays.fill(lastOn, -1);
    for (List<Integer> component : components) {
      for (int node : component) {
        for (int net : driven(node)) {
          if (lastOn[net] >= 0) {
            after.get(lastOn[net]).add(node);
          }
          lastOn[net] = node;
        }
      }
    }
    return after;
  }

  private void components() {
    int n = nodes.size();
    number = new int[n];
    low = new int[n];
    onStack = new boolean[n];
    for (int v = 0; v < n; v++) {
      if (number[v] == 0) {
        visit(v);
      }
    }
    Collections.reverse(components);
  }

  private void visit(int v) {
    number[v] = ++counter;
    low[v] = counter;
    stack.push(v);
    onStack[v] = true;
    for (int w : feeds.get(v)) {
      if (number[w] == 0) {
        visit(w);
        low[v] = Math.min(low[v], low[w]);
      } else if (onStack[w]) {
        low[v] = Math.min(low[v], number[w]);
      }
    }
    if (low[v] == number[v]) {
      List<Integer> component = new ArrayList<>();
      int w;
      do {
        w = stack.pop();
        onStack[w] = false;
        component.add(w);
      } while (w != v);
      Collections.sort(component);
      components.add(component);
    }
  }

  private void store(List<List<Integer>> followers) {
    int n = nodes.size();
    int[] rank = new int[n];
    c.nodePart = new int[n];
    c.nodeGroup = new int[n];
    c.nodePins = new long[n];
    c.nodeFollows = new long[n];
    c.nodeEnables = new long[n];
    c.silentHigh = new long[n];
    c.silentLow = new long[n];
    c.islandFrom = new int[n];
    c.islandTo = new int[n];
    c.looped = new boolean[n];
    int at = 0;
    for (List<Integer> component : components) {
      int from = at;
      for (int node : component) {
        rank[node] = at;
        c.nodePart[at] = nodes.get(node)[0];
        c.nodeGroup[at] = nodes.get(node)[1];
        c.nodePins[at] = outputs.get(node).pins();
        c.nodeFollows[at] = outputs.get(node).follows();
        c.nodeEnables[at] = outputs.get(node).enables();
        silence(at);
        c.islandFrom[at] = from;
        c.islandTo[at] = from + component.size();
        c.looped[at] = component.size() > 1 || feeds.get(node).contains(node);
        at++;
      }
    }
    boolean[][] fed = fed(rank);
    c.batchTo = batches(fed);
    c.sweepTo = sweeps(fed);
    c.nodesOf = new int[c.parts.length][];
    for (int p = 0; p < c.parts.length; p++) {
      c.nodesOf[p] = nodesOf(p);
    }
    c.followers = new int[c.partOf.length][];
    for (int g = 0; g < c.partOf.length; g++) {
      List<Integer> of = followers.get(g);
      int[] ranks = new int[of.size()];
      for (int i = 0; i < ranks.length; i++) {
        ranks[i] = rank[of.get(i)];
      }
      Arrays.sort(ranks);
      c.followers[g] = ranks;
    }
  }

  private boolean[][] fed(int[] rank) {
    int n = rank.length;
    boolean[][] fed = new boolean[n][n];
    for (int node = 0; node < n; node++) {
      for (int other : feeds.get(node)) {
        fed[rank[node]][rank[other]] = true;
      }
    }
    return fed;
  }

  // A driver that a fault holds on, or that has a defect inside, may never be silent.
  private void silence(int node) {
    int p = c.nodePart[node];
    if (c.nodeGroup[node] < 0 && sound(node)) {
      c.silentHigh[node] = c.parts[p].pinout().silentWhileHigh(c.nodeEnables[node]);
      c.silentLow[node] = c.parts[p].pinout().silentWhileLow(c.nodeEnables[node]);
    }
  }

  private boolean sound(int node) {
    int p = c.nodePart[node];
    return (c.forceMask[p] & c.nodePins[node]) == 0
        && c.harm.defects.getOrDefault(c.refs[p], Set.of()).isEmpty();
  }

  /** For each node one past the last of those behind it that one settle of their part serves. */
  private int[] batches(boolean[][] fed) {
    int n = fed.length;
    int[] batchTo = new int[n];
    for (int from = 0; from < n; from++) {
      int to = from + 1;
      while (to < n && joins(from, to, fed)) {
        to++;
      }
      batchTo[from] = to;
    }
    return batchTo;
  }

  /** For the first node of an island one past the last of those that can be swept with it. */
  private int[] sweeps(boolean[][] fed) {
    int[] sweepTo = c.islandTo.clone();
    for (int from = 0; from < sweepTo.length; from++) {
      int to = sweepTo[from];
      while (c.looped[from] && to < sweepTo.length && alike(from, to, fed)) {
        to = c.islandTo[to];
      }
      sweepTo[from] = to;
    }
    return sweepTo;
  }

  /** Whether the island that begins at a node is made like another and strange to all since. */
  private boolean alike(int from, int other, boolean[][] fed) {
    int n = c.islandTo[from] - from;
    boolean alike = c.looped[other] && c.islandTo[other] - other == n;
    for (int i = 0; alike && i < n; i++) {
      alike =
          c.nodePart[from + i] == c.nodePart[other + i]
              && c.nodeGroup[from + i] < 0
              && c.nodeGroup[other + i] < 0;
      for (int earlier = from; alike && earlier < other; earlier++) {
        alike = !fed[earlier][other + i] && !fed[other + i][earlier];
      }
    }
    return alike;
  }

  private boolean joins(int from, int to, boolean[][] fed) {
    boolean alike =
        c.nodePart[to] == c.nodePart[from]
            && c.nodeGroup[from] < 0
            && c.nodeGroup[to] < 0
            && !c.looped[from]
            && !c.looped[to];
    for (int earlier = from; alike && earlier < to; earlier++) {
      alike = !fed[earlier][to];
    }
    return alike;
  }

  private int[] nodesOf(int part) {
    int[] found = new int[c.nodePart.length];
    int n = 0;
    for (int i = 0; i < c.nodePart.length; i++) {
      if (c.nodePart[i] == part) {
        found[n++] = i;
      }
    }
    return Arrays.copyOf(found, n);
  }
}
