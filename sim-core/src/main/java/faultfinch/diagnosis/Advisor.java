package faultfinch.diagnosis;

import faultfinch.diagnosis.Advice.Branch;
import faultfinch.diagnosis.Advice.Group;
import faultfinch.diagnosis.Advice.Proposal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Ranks the next steps and says what each outcome would mean. */
final class Advisor {
  private static final int REPAIRS_SHOWN = 3;
  private static final int GROUPS_SHOWN = 3;

  /** Steps that are ranked for each that is proposed: many are at the same point. */
  private static final int RANKED_EACH = 12;

  /** For playing a plan through, in pairs of candidate and look. */
  private static final long PLAYED = 1_000_000;

  /** For the lower bound, in pairs of class and look. */
  private static final long BOUNDED = 200_000;

  /** Candidates that no look parts. */
  private record Alike(List<Integer> members, double weight) {}

  private final PricePlanner planner;
  private final Whereabouts whereabouts;

  Advisor(PricePlanner planner, Whereabouts whereabouts) {
    this.planner = planner;
    this.whereabouts = whereabouts;
  }

  /**
   * The next steps, one for each net.
   *
   * @param most proposals
   */
  Advice advise(Field whole, double outside, int most) {
    PricePlanner.Plan plan = planner.plan(whole, RANKED_EACH * Math.max(1, most));
    Field field = plan.field();
    Forecast forecast =
        new PlayThrough(field.ground(), plan.gains(), plan.policy(), whereabouts::custom)
            .of(field.members(), PLAYED);
    double atLeast = plan.best().expectedPrice();
    if (plan.best().method() != Choice.Method.EXACT) {
      atLeast = LowerBound.of(field.ground(), field.members(), BOUNDED);
    }
    Choice best = plan.toTheEnd() ? plan.best() : estimated(plan.best(), forecast, atLeast);
    return new Advice(
        best,
        proposals(plan, best, Math.max(1, most)),
        field.classes(),
        outside,
        forecast,
        atLeast,
        plan.toTheEnd()
            ? Optional.of(Math.max(0, best.expectedPrice() - atLeast))
            : Optional.empty(),
        groups(field, plan.gains()));
  }

  /** By what the job comes to where that was estimated too, and not below what is possible. */
  private static Choice estimated(Choice best, Forecast forecast, double atLeast) {
    double price = Math.max(atLeast, forecast.price());
    return new Choice(best.step(), best.price(), price, best.method());
  }

  /** The best step, then others at other points by what they tell for what they waste. */
  private List<Proposal> proposals(PricePlanner.Plan plan, Choice best, int most) {
    List<PricePlanner.Ranked> ranked = plan.ranked();
    List<Proposal> proposals = proposals(plan, ranked, best, most);
    boolean cut = ranked.size() >= RANKED_EACH * most;
    return proposals.size() < most && cut
        ? proposals(plan, PricePlanner.allRanked(plan), best, most)
        : proposals;
  }

  private List<Proposal> proposals(
      PricePlanner.Plan plan, List<PricePlanner.Ranked> all, Choice best, int most) {
    Field field = plan.field();
    Ground ground = field.ground();
    List<Proposal> proposals = new ArrayList<>();
    Set<String> points = new LinkedHashSet<>();
    points.add(whereabouts.point(best.step()));
    proposals.add(
        new Proposal(
            best.step(),
            best.price(),
            bits(field, plan.gains(), best),
            Optional.of(best.expectedPrice()),
            outcomes(field, plan.gains(), best.step())));
    for (PricePlanner.Ranked ranked : all) {
      Step step = PricePlanner.step(ground, ranked.option());
      if (proposals.size() < most && points.add(whereabouts.point(step))) {
        proposals.add(
            new Proposal(
                step,
                PricePlanner.price(ground, ranked.option()),
                ranked.bits(),
                ranked.expectedPrice(),
                outcomes(field, plan.gains(), step)));
      }
    }
    return proposals;
  }

  private static List<Group> groups(Field field, Gains gains) {
    Map<Integer, List<Integer>> bySignature = new LinkedHashMap<>();
    for (int member : field.members()) {
      int signature = field.ground().atoms()[member].signature();
      bySignature.computeIfAbsent(signature, k -> new ArrayList<>()).add(member);
    }
    List<Alike> classes = new ArrayList<>();
    for (List<Integer> one : bySignature.values()) {
      if (isOfMany(field, one)) {
        classes.add(new Alike(one, gains.weight(array(one))));
      }
    }
    classes.sort(Comparator.comparingDouble(Alike::weight).reversed());
    List<Group> groups = new ArrayList<>();
    for (Alike alike : classes.subList(0, Math.min(GROUPS_SHOWN, classes.size()))) {
      groups.add(group(field, gains, alike.members));
    }
    return groups;
  }

  /** Whether more than one repair may be due. */
  private static boolean isOfMany(Field field, List<Integer> one) {
    int first = field.ground().atoms()[one.get(0)].own();
    for (int member : one) {
      if (field.ground().atoms()[member].own() != first) {
        return true;
      }
    }
    return false;
  }

  private static Group group(Field field, Gains gains, List<Integer> one) {
    int[] left = array(one);
    double weight = gains.weight(left);
    List<Share> order = new ArrayList<>();
    for (int action : new OneClass(field.ground(), one).order()) {
      int[] missed = gains.missed(action, left);
      double cured = gains.weight(left) - gains.weight(missed);
      order.add(new Share(field.ground().actions().get(action).text(), cured / weight));
      left = missed;
    }
    return new Group(weight / gains.weight(field.members()), order);
  }

  private static int[] array(List<Integer> members) {
    return members.stream().mapToInt(Integer::intValue).toArray();
  }

  private static double bits(Field field, Gains gains, Choice best) {
    double after = 0;
    for (Field part : parts(field, best.step()).values()) {
      after += gains.missing(part.members());
    }
    return (gains.missing(field.members()) - after) / gains.weight(field.members());
  }

  private static Map<String, Field> parts(Field field, Step step) {
    return step instanceof Step.Observe observe
        ? field.parted(observe.look())
        : Map.of(Route.NOT_CURED, field.missed(((Step.Act) step).action()));
  }

  private static List<Branch> outcomes(Field field, Gains gains, Step step) {
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
