package faultfinch.diagnosis;

import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All single faults that could be the one. A fault that some action cures half of the time stands
 * as two hypotheses of half weight: one that the action cures, one that it does not.
 */
public final class Suspects {
  private static final int SURE = 100;
  private static final int HALF = 50;

  /**
   * A suspect, or half of one.
   *
   * @param suspect index into {@link #all()}
   * @param cures indexes into {@link #actions()} of what surely cures this, rising
   */
  record Hypothesis(int suspect, double weight, List<Integer> cures) {
    Hypothesis {
      cures = List.copyOf(cures);
    }
  }

  /** Indexes of the actions that cure for sure, and of those that do with luck, rising. */
  private record Curing(List<Integer> sure, List<Integer> lucky, boolean alike) {

    static Curing of(Map<RepairAction, Integer> cures, Map<RepairAction, Integer> indexOfAction) {
      List<Integer> sure = new ArrayList<>();
      List<Integer> lucky = new ArrayList<>();
      for (Map.Entry<RepairAction, Integer> cure : cures.entrySet()) {
        Integer known = indexOfAction.putIfAbsent(cure.getKey(), indexOfAction.size());
        int index = known == null ? indexOfAction.size() - 1 : known;
        if (cure.getValue() >= HALF) {
          lucky.add(index);
        }
        if (cure.getValue() >= SURE) {
          sure.add(index);
        }
      }
      Collections.sort(sure);
      Collections.sort(lucky);
      // Copied once: all hypotheses of a remedy have the same list.
      return new Curing(List.copyOf(sure), List.copyOf(lucky), sure.equals(lucky));
    }
  }

  /**
   * What is looked up in them.
   *
   * @param actions in the order of the suspects
   */
  private record Index(
      Map<String, Integer> ofFault, List<RepairAction> actions, List<Hypothesis> hypotheses) {}

  private final List<Suspect> all;
  private volatile Optional<Index> index = Optional.empty();

  /** These and no others; their order decides ties. */
  public Suspects(List<Suspect> all) {
    this(all, false);
    index();
  }

  private Suspects(List<Suspect> all, boolean later) {
    this.all = later ? Collections.unmodifiableList(all) : List.copyOf(all);
  }

  /**
   * The same of suspects that are known to be all right: what is looked up in them is put in order
   * when something is, which of those of a file may be never.
   */
  static Suspects proven(List<Suspect> all) {
    return new Suspects(all, true);
  }

  private Index index() {
    Optional<Index> made = index;
    if (made.isEmpty()) {
      made = Optional.of(made());
      index = made;
    }
    return made.get();
  }

  private Index made() {
    Map<String, Integer> ofFault = new HashMap<>(2 * all.size());
    List<Hypothesis> hypotheses = new ArrayList<>(2 * all.size());
    Map<RepairAction, Integer> indexOfAction = new LinkedHashMap<>();
    Map<Map<RepairAction, Integer>, Curing> curing = new IdentityHashMap<>();
    for (int i = 0; i < all.size(); i++) {
      Suspect suspect = all.get(i);
      if (ofFault.putIfAbsent(suspect.fault(), i) != null) {
        throw new IllegalArgumentException(
            "found '" + suspect.fault() + "' twice, right would be once");
      }
      Curing by = curing.get(suspect.cures());
      if (by == null) {
        by = Curing.of(suspect.cures(), indexOfAction);
        curing.put(suspect.cures(), by);
      }
      if (by.alike) {
        hypotheses.add(new Hypothesis(i, suspect.weight(), by.sure));
      } else {
        hypotheses.add(new Hypothesis(i, suspect.weight() / 2, by.lucky));
        hypotheses.add(new Hypothesis(i, suspect.weight() / 2, by.sure));
      }
    }
    return new Index(
        ofFault, List.copyOf(indexOfAction.keySet()), Collections.unmodifiableList(hypotheses));
  }

  /** Every fault of a universe that can come about: on a board without sockets no hand errs. */
  public static Suspects of(FaultUniverse universe) {
    Map<String, Set<RepairAction>> actionsAt = new LinkedHashMap<>();
    for (RepairAction action : universe.repairs()) {
      at(action, action.place(), actionsAt);
      // A link wire between two pads cures their joints too.
      int dash = action.place().indexOf('-');
      if (dash > 0) {
        at(action, action.place().substring(0, dash), actionsAt);
        at(action, action.place().substring(dash + 1), actionsAt);
      }
    }
    List<Suspect> all = new ArrayList<>();
    for (FaultUniverse.Entry entry : universe.entries()) {
      if (entry.weight() == 0) {
        continue;
      }
      Fault fault = entry.fault();
      Set<RepairAction> near = new LinkedHashSet<>();
      near.add(entry.repair());
      near.addAll(actionsAt.getOrDefault(fault.place(), Set.of()));
      near.addAll(actionsAt.getOrDefault(fault.spot(), Set.of()));
      Map<RepairAction, Integer> cures = new LinkedHashMap<>();
      for (RepairAction action : near) {
        int chance = action.cureChance(fault);
        if (chance > 0) {
          cures.put(action, chance);
        }
      }
      all.add(new Suspect(fault.text(), fault.place(), entry.weight(), entry.repair(), cures));
    }
    return new Suspects(all);
  }

  /** Those of them whose run a dictionary has. */
  public Suspects knownTo(FaultDictionary dictionary) {
    List<Suspect> known = new ArrayList<>(all.size());
    for (Suspect suspect : all) {
      if (dictionary.knows(suspect.fault())) {
        known.add(suspect);
      }
    }
    return known.size() == all.size() ? this : new Suspects(known);
  }

  /** Weights of all of them together. */
  public double weight() {
    return all.stream().mapToDouble(Suspect::weight).sum();
  }

  private static void at(RepairAction action, String place, Map<String, Set<RepairAction>> map) {
    map.computeIfAbsent(place, k -> new LinkedHashSet<>()).add(action);
  }

  /**
   * Those that some look of this tier or a tier before shows. A fault that its owner cannot notice
   * brings no board to a bench.
   */
  public Suspects showing(FaultDictionary dictionary, ErrorRates rates, ErrorRates.Tier tier) {
    List<Integer> looks = new ArrayList<>();
    for (String look : dictionary.looks()) {
      if (rates.tier(look).compareTo(tier) <= 0) {
        looks.add(dictionary.look(look).getAsInt());
      }
    }
    return new Suspects(
        all.stream()
            .filter(
                s -> {
                  int row = dictionary.row(s.fault());
                  return looks.stream().anyMatch(look -> dictionary.cell(look, row) != 0);
                })
            .toList());
  }

  /** Whether this fault is among them. */
  public boolean contains(String fault) {
    return index().ofFault.containsKey(fault);
  }

  /** All of them, in order. */
  public List<Suspect> all() {
    return all;
  }

  /** The suspect of a fault. */
  public Suspect of(String fault) {
    Integer index = index().ofFault.get(fault);
    if (index == null) {
      throw new IllegalArgumentException(
          "found fault '" + fault + "', right would be one of the board's");
    }
    return all.get(index);
  }

  /** Every action that cures one of them, in the order of the suspects. */
  public List<RepairAction> actions() {
    return index().actions;
  }

  /** Weight of all hypotheses together. */
  double prior() {
    double sum = 0;
    for (Hypothesis h : hypotheses()) {
      sum += h.weight();
    }
    return sum;
  }

  /** Numbers of some actions among all; -1 for one that cures none of them. */
  List<Integer> numbers(List<RepairAction> some) {
    List<Integer> numbers = new ArrayList<>();
    for (RepairAction action : some) {
      numbers.add(actions().indexOf(action));
    }
    return numbers;
  }

  /** The least repair of each, in the order of the suspects. */
  public Set<RepairAction> repairs() {
    Set<RepairAction> repairs = new LinkedHashSet<>();
    all.forEach(s -> repairs.add(s.repair()));
    return repairs;
  }

  /** Share of the prior by row. */
  double[] weightOfRow(FaultDictionary dictionary) {
    double[] weights = new double[dictionary.rows()];
    double sum = 0;
    for (Suspect suspect : all) {
      weights[dictionary.row(suspect.fault())] += suspect.weight();
      sum += suspect.weight();
    }
    for (int row = 0; row < weights.length; row++) {
      weights[row] /= sum;
    }
    return weights;
  }

  List<Hypothesis> hypotheses() {
    return index().hypotheses;
  }
}
