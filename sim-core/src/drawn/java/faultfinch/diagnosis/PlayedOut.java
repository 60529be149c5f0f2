package faultfinch.diagnosis;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a planner costs on a field: every outcome is played to the end, and it is asked anew. */
final class PlayedOut {
  private final Planner planner;
  private final Map<List<Integer>, Double> known = new LinkedHashMap<>();

  PlayedOut(Planner planner) {
    this.planner = planner;
  }

  /** Expected minutes to the cure. */
  double price(Field field) {
    double weight = 0;
    for (int member : field.members()) {
      weight += field.ground().atoms()[member].weight();
    }
    return total(field) / weight;
  }

  private double total(Field field) {
    if (field.isEmpty()) {
      return 0;
    }
    List<Integer> members = Arrays.stream(field.members()).boxed().toList();
    Double before = known.get(members);
    if (before != null) {
      return before;
    }
    Step step = planner.choose(field).step();
    Ground ground = field.ground();
    double weight = 0;
    for (int member : field.members()) {
      weight += ground.atoms()[member].weight();
    }
    double sum;
    if (step instanceof Step.Act act) {
      int action = ground.actions().indexOf(act.action());
      sum = ground.price(action) * weight + total(field.missed(act.action()));
    } else {
      String look = ((Step.Observe) step).look();
      Ground.Column column =
          Arrays.stream(ground.columns()).filter(c -> c.look().equals(look)).findFirst().get();
      sum = column.price() * weight;
      for (int[] part : Rollout.parts(column, field.members())) {
        sum += total(new Field(ground, part));
      }
    }
    known.put(members, sum);
    return sum;
  }

  /**
   * The least expected minutes of any order of looks and repairs.
   *
   * @param moves that may be weighed for it
   * @throws IllegalStateException if they do not suffice
   */
  static double optimum(Field field, long moves) {
    return ExactPlan.of(field.ground(), field.members(), moves)
        .orElseThrow(() -> new IllegalStateException("found no optimum in " + moves + " moves"))
        .price();
  }
}
