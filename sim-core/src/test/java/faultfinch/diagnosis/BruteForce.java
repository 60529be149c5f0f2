package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Tries every order of looks and repairs, without a single thought; a second model of the plan. */
final class BruteForce {
  private final Toy toy;

  BruteForce(Toy toy) {
    this.toy = toy;
  }

  /** Least expected minutes until cured. */
  double optimum() {
    double all = toy.all().stream().mapToDouble(Suspect::weight).sum();
    return least(toy.all()) / all;
  }

  private double least(List<Suspect> left) {
    if (left.isEmpty()) {
      return 0;
    }
    double weight = left.stream().mapToDouble(Suspect::weight).sum();
    double best = Double.POSITIVE_INFINITY;
    for (String look : toy.looks()) {
      Map<String, List<Suspect>> parts = new LinkedHashMap<>();
      for (Suspect s : left) {
        parts.computeIfAbsent(toy.row(s.fault()).get(look), k -> new ArrayList<>()).add(s);
      }
      if (parts.size() > 1) {
        double price = toy.look(look).total() * weight;
        for (List<Suspect> part : parts.values()) {
          price += least(part);
        }
        best = Math.min(best, price);
      }
    }
    for (RepairAction action : toy.repairs()) {
      List<Suspect> missed = left.stream().filter(s -> !s.cures().containsKey(action)).toList();
      if (missed.size() < left.size()) {
        best = Math.min(best, toy.repair(action).total() * weight + least(missed));
      }
    }
    return best;
  }

  /** Expected minutes if a planner decides, each fault played through. */
  double playedBy(Planner planner) {
    double sum = 0;
    double all = 0;
    for (Suspect truth : toy.all()) {
      Route route =
          Route.of(planner, toy.field(), toy.row(truth.fault())::get, truth.cures()::containsKey);
      if (!route.cured()) {
        throw new IllegalStateException(truth.fault() + " was never cured");
      }
      sum += truth.weight() * route.price().total();
      all += truth.weight();
    }
    return sum / all;
  }
}
