package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.AbstractMap;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * What cures a suspect, with what chance in per cent. It never changes, so that the thousands of
 * suspects of one remedy can share it, and be told to do so.
 */
final class Cures extends AbstractMap<RepairAction, Integer> {
  private final Set<Entry<RepairAction, Integer>> entries;

  private Cures(Map<RepairAction, Integer> cures) {
    entries = Collections.unmodifiableMap(new LinkedHashMap<>(cures)).entrySet();
  }

  /** These, in their order. */
  static Cures of(Map<RepairAction, Integer> cures) {
    return cures instanceof Cures same ? same : new Cures(cures);
  }

  @Override
  public Set<Entry<RepairAction, Integer>> entrySet() {
    return entries;
  }
}
