package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.AbstractMap;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What cures a suspect, with what chance in per cent. It never changes, so that the thousands of
 * suspects of one remedy can share it, and be told to do so. They are asked by the thousand too,
 * and of few actions each: so they are gone through, the same one first.
 */
final class Cures extends AbstractMap<RepairAction, Integer> {
  private final List<RepairAction> actions;
  private final List<Integer> chances;

  private Cures(List<RepairAction> actions, List<Integer> chances) {
    this.actions = List.copyOf(actions);
    this.chances = List.copyOf(chances);
  }

  /** These, in their order. */
  static Cures of(Map<RepairAction, Integer> cures) {
    return cures instanceof Cures same
        ? same
        : new Cures(new ArrayList<>(cures.keySet()), new ArrayList<>(cures.values()));
  }

  @Override
  public boolean containsKey(Object action) {
    return at(action) >= 0;
  }

  @Override
  public Integer get(Object action) {
    int at = at(action);
    return at < 0 ? null : chances.get(at);
  }

  @Override
  public Integer getOrDefault(Object action, Integer otherwise) {
    int at = at(action);
    return at < 0 ? otherwise : chances.get(at);
  }

  private int at(Object action) {
    for (int i = 0; i < actions.size(); i++) {
      if (actions.get(i) == action) {
        return i;
      }
    }
    return actions.indexOf(action);
  }

  @Override
  public Set<Entry<RepairAction, Integer>> entrySet() {
    Set<Entry<RepairAction, Integer>> entries = new LinkedHashSet<>();
    for (int i = 0; i < actions.size(); i++) {
      entries.add(Map.entry(actions.get(i), chances.get(i)));
    }
    return Collections.unmodifiableSet(entries);
  }
}
