package faultfinch.diagnosis;

import faultfinch.bench.Price;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/** Dictionaries small enough to solve on paper, and prices to go with them. */
final class Toy implements PriceList {
  private final Map<String, Double> looks = new LinkedHashMap<>();
  private final Map<RepairAction, Double> repairs = new LinkedHashMap<>();
  private final List<Suspect> suspects = new ArrayList<>();
  private final Map<String, SortedMap<String, String>> rows = new LinkedHashMap<>();
  private final SortedMap<String, String> healthy = new TreeMap<>();
  private final Set<String> excited = new LinkedHashSet<>();

  /** A look with its price; every board shows {@code normal} unless a fault says otherwise. */
  Toy look(String look, double minutes) {
    looks.put(look, minutes);
    healthy.put(look, "normal");
    return this;
  }

  /** The exchange of a part, with its price. */
  Toy exchange(String part, double minutes) {
    repairs.put(exchange(part), minutes);
    return this;
  }

  static RepairAction exchange(String part) {
    return new RepairAction(RepairAction.Kind.EXCHANGE, part);
  }

  static RepairAction reseat(String part) {
    return new RepairAction(RepairAction.Kind.RESEAT, part);
  }

  Toy repair(RepairAction action, double minutes) {
    repairs.put(action, minutes);
    return this;
  }

  /**
   * A fault that the exchange of its part cures.
   *
   * @param shows looks and outcomes in turn, where it differs from a healthy board
   */
  Toy fault(String name, String part, double weight, String... shows) {
    return fault(Suspect.of(name, part, weight, exchange(part)), shows);
  }

  Toy fault(Suspect suspect, String... shows) {
    suspects.add(suspect);
    SortedMap<String, String> row = new TreeMap<>(healthy);
    for (int i = 0; i < shows.length; i += 2) {
      if (row.put(shows[i], shows[i + 1]) == null) {
        throw new IllegalArgumentException("no look '" + shows[i] + "'");
      }
    }
    rows.put(suspect.fault(), row);
    return this;
  }

  /** These faults change something in their run. */
  Toy excited(String... faults) {
    excited.addAll(List.of(faults));
    return this;
  }

  FaultDictionary dictionary() {
    DictionaryDraft draft = new DictionaryDraft(new Origin("toy", "0"), List.of(healthy));
    Row sound = new Row(healthy, 0);
    rows.forEach(
        (fault, row) -> {
          Row shown = new Row(row, excited.contains(fault) ? 1 : 0);
          draft.add(fault, Departure.of(fault, sound, shown));
        });
    return draft.done();
  }

  Suspects suspects() {
    return new Suspects(suspects);
  }

  Diagnosis diagnosis() {
    return Diagnosis.of(dictionary(), suspects(), this);
  }

  Field field() {
    return Field.strict(dictionary(), suspects(), this, Evidence.NONE);
  }

  List<Suspect> all() {
    return suspects;
  }

  Map<String, String> row(String fault) {
    return rows.get(fault);
  }

  List<String> looks() {
    return List.copyOf(looks.keySet());
  }

  List<RepairAction> repairs() {
    return List.copyOf(repairs.keySet());
  }

  @Override
  public Price look(String look) {
    return price(looks.get(look));
  }

  @Override
  public Price repair(RepairAction action) {
    return price(repairs.get(action));
  }

  private static Price price(double minutes) {
    return new Price((int) minutes, 0, 0, minutes);
  }
}
