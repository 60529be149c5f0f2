package faultfinch.fault;

import faultfinch.board.Board;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Every single fault a board can have, with how likely it is, what cures it, and which others one
 * run can stand for. Conditions are no faults of their own here.
 */
public final class FaultUniverse {

  /**
   * One fault of the board.
   *
   * @param weight how likely before anybody looked; all weights together are 1
   * @param group index into {@link FaultUniverse#groups()}
   * @param repair the least action that surely cures it
   */
  public record Entry(Fault fault, double weight, int group, RepairAction repair) {}

  private final Map<Fault, Entry> entries = new LinkedHashMap<>();
  private final List<List<Fault>> groups;

  private FaultUniverse(Board board) {
    Anatomy anatomy = new Anatomy(board);
    Set<Fault> faults = new LinkedHashSet<>();
    for (FaultKinds kind : FaultKinds.values()) {
      faults.addAll(kind.sites(anatomy));
    }
    List<Fault> all = new ArrayList<>(faults);
    Map<Fault, Double> weights = Weights.of(anatomy, all);
    groups = Collapse.groups(anatomy, all);
    Map<Fault, Integer> groupOf = new LinkedHashMap<>();
    for (int i = 0; i < groups.size(); i++) {
      for (Fault fault : groups.get(i)) {
        groupOf.put(fault, i);
      }
    }
    for (Fault f : all) {
      RepairAction repair = RepairAction.curing(f, board);
      entries.put(f, new Entry(f, weights.get(f), groupOf.get(f), repair));
    }
  }

  /** All the faults this board can have. */
  public static FaultUniverse of(Board board) {
    return new FaultUniverse(board);
  }

  /** All entries by kind, then in board order. */
  public List<Entry> entries() {
    return List.copyOf(entries.values());
  }

  /** All faults by kind, then in board order. */
  public List<Fault> faults() {
    return List.copyOf(entries.keySet());
  }

  /** What is known of one fault. */
  public Entry entry(Fault fault) {
    Entry entry = entries.get(fault.base());
    if (entry == null) {
      throw new IllegalArgumentException("'" + fault.text() + "' is not in this universe");
    }
    return entry;
  }

  /** Faults that share one run, each group led by its representative. */
  public List<List<Fault>> groups() {
    return groups;
  }

  /** The leader of each group: these must be run, no others. */
  public List<Fault> representatives() {
    return groups.stream().map(g -> g.get(0)).toList();
  }

  /** How many faults there are before equivalent ones are grouped. */
  public int size() {
    return entries.size();
  }

  /** How many runs they need. */
  public int collapsedSize() {
    return groups.size();
  }

  /** The faults of each kind, kinds without a site with an empty list. */
  public Map<FaultKinds, List<Fault>> byKind() {
    Map<FaultKinds, List<Fault>> kinds = new EnumMap<>(FaultKinds.class);
    for (FaultKinds kind : FaultKinds.values()) {
      kinds.put(kind, faults().stream().filter(f -> f.kind() == kind).toList());
    }
    return Collections.unmodifiableMap(kinds);
  }

  /** The actions that between them cure everything, each once, in the order of the faults. */
  public List<RepairAction> repairs() {
    Set<RepairAction> actions = new LinkedHashSet<>();
    entries.values().forEach(e -> actions.add(e.repair()));
    return List.copyOf(actions);
  }
}
