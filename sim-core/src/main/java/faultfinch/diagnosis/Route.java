package faultfinch.diagnosis;

import faultfinch.bench.Price;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * The way a planner goes when it does not know what is wrong, and the board answers.
 *
 * @param cured false if no candidate was left before the board was cured
 */
public record Route(List<Leg> legs, boolean cured) {

  /** What a repair shows that helped, and one that did not. */
  public static final String CURED = "cured";

  public static final String NOT_CURED = "not cured";

  public Route {
    legs = List.copyOf(legs);
  }

  /**
   * One step of the way.
   *
   * @param saw what the look showed, or {@link #CURED} or {@link #NOT_CURED}
   * @param classes groups of candidates left after it
   */
  public record Leg(Choice choice, String saw, int classes) {}

  /** All steps together. */
  public Price price() {
    return legs.stream().map(l -> l.choice().price()).reduce(Price.NOTHING, Price::plus);
  }

  /** Chips taken out before the step that cured. */
  public int innocentPulls() {
    return legs.stream()
        .filter(l -> !l.saw().equals(CURED))
        .mapToInt(l -> l.choice().price().pulls())
        .sum();
  }

  /**
   * Plays a board through.
   *
   * @param start the candidates before the first step
   * @param shows what a look shows on the board; asked once for each that is made
   * @param cures whether a repair cures it
   */
  static Route of(
      Planner planner, Field start, UnaryOperator<String> shows, Predicate<RepairAction> cures) {
    List<Leg> legs = new ArrayList<>();
    Field field = start;
    while (!field.isEmpty()) {
      Choice choice = planner.choose(field);
      String saw;
      if (choice.step() instanceof Step.Act act) {
        if (cures.test(act.action())) {
          legs.add(new Leg(choice, CURED, 0));
          return new Route(legs, true);
        }
        saw = NOT_CURED;
        field = field.missed(act.action());
      } else {
        String look = ((Step.Observe) choice.step()).look();
        saw = shows.apply(look);
        field = field.seen(look, saw);
      }
      legs.add(new Leg(choice, saw, field.classes()));
    }
    return new Route(legs, false);
  }
}
