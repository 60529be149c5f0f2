package faultfinch.diagnosis;

import faultfinch.bench.Price;
import faultfinch.diagnosis.Advice.Branch;
import faultfinch.diagnosis.Advice.Proposal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Ranks the next steps and says what each outcome would mean. */
final class Advisor {
  private static final int REPAIRS_SHOWN = 3;

  private final PricePlanner planner;

  Advisor(PricePlanner planner) {
    this.planner = planner;
  }

  /**
   * The next steps.
   *
   * @param most proposals
   */
  Advice advise(Field field, double outside, int most) {
    List<PricePlanner.Ranked> all = planner.ranked(field, most);
    Choice best = planner.exact(field).orElseGet(() -> planner.best(field, all));
    List<Proposal> proposals = new ArrayList<>();
    for (PricePlanner.Ranked ranked : all) {
      Step step = PricePlanner.step(field.ground(), ranked.option());
      Price cost = PricePlanner.price(field.ground(), ranked.option());
      boolean chosen = step.equals(best.step());
      proposals.add(
          chosen ? 0 : proposals.size(),
          new Proposal(
              step,
              cost,
              ranked.bits(),
              chosen ? Optional.of(best.expectedPrice()) : ranked.expectedPrice(),
              outcomes(field, step)));
    }
    if (proposals.isEmpty() || !proposals.get(0).step().equals(best.step())) {
      Optional<Double> price = Optional.of(best.expectedPrice());
      List<Branch> outcomes = outcomes(field, best.step());
      proposals.add(0, new Proposal(best.step(), best.price(), bits(field, best), price, outcomes));
    }
    return new Advice(
        best,
        proposals.subList(0, Math.min(Math.max(1, most), proposals.size())),
        field.classes(),
        outside);
  }

  private double bits(Field field, Choice best) {
    Gains gains = new Gains(field.ground());
    double after = 0;
    for (Field part : parts(field, best.step()).values()) {
      after += gains.missing(part.members());
    }
    return (gains.missing(field.members()) - after) / gains.weight(field.members());
  }

  private static Map<String, Field> parts(Field field, Step step) {
    Map<String, Field> parts = new LinkedHashMap<>();
    if (step instanceof Step.Observe observe) {
      for (int member : field.members()) {
        String outcome = field.ground().outcome(observe.look(), member);
        if (!parts.containsKey(outcome)) {
          parts.put(outcome, field.seen(observe.look(), outcome));
        }
      }
    } else {
      parts.put(Route.NOT_CURED, field.missed(((Step.Act) step).action()));
    }
    return parts;
  }

  private static List<Branch> outcomes(Field field, Step step) {
    Gains gains = new Gains(field.ground());
    double all = gains.weight(field.members());
    List<Branch> branches = new ArrayList<>();
    double told = 0;
    for (Map.Entry<String, Field> part : parts(field, step).entrySet()) {
      double chance = gains.weight(part.getValue().members()) / all;
      told += chance;
      if (!part.getValue().isEmpty()) {
        branches.add(branch(part.getKey(), chance, part.getValue()));
      }
    }
    if (step instanceof Step.Act) {
      branches.add(new Branch(Route.CURED, Math.max(0, 1 - told), 0, List.of()));
    }
    branches.sort(Comparator.comparingDouble(Branch::chance).reversed());
    return branches;
  }

  private static Branch branch(String outcome, double chance, Field left) {
    Map<Integer, Double> byAction = new LinkedHashMap<>();
    double all = 0;
    for (int member : left.members()) {
      Ground.Atom atom = left.ground().atoms()[member];
      byAction.merge(atom.own(), atom.weight(), Double::sum);
      all += atom.weight();
    }
    List<Share> repairs = new ArrayList<>();
    for (Map.Entry<Integer, Double> entry : byAction.entrySet()) {
      String repair = left.ground().actions().get(entry.getKey()).text();
      repairs.add(new Share(repair, entry.getValue() / all));
    }
    repairs.sort(Comparator.comparingDouble(Share::belief).reversed());
    List<Share> shown = repairs.subList(0, Math.min(REPAIRS_SHOWN, repairs.size()));
    return new Branch(outcome, chance, left.classes(), shown);
  }
}
