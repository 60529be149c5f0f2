package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.board.PlacedPart;
import faultfinch.board.Tick;
import faultfinch.board.Variants;
import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * What can be said of a board that is none of ours: it is held against several that are like it in
 * part, each counting by how much of it is as on the table and how well it explains what was seen,
 * and the answer names what a part does, for its number is another there.
 */
public final class OwnBoard {
  /** What a place that is no part counts as. */
  static final String TRACK = "track";

  private static final Set<String> EVERYWHERE = Set.of(TRACK, "brick", "lead");

  /** A belief so much larger with one answer than with another rests on the answer. */
  private static final double RESTS = 2;

  private static final double SMALL = 0.02;

  /** A board of which less was run does not tell what a belief rests on. */
  private static final double MUCH = 0.5;

  /**
   * One of our boards.
   *
   * @param belief after all of the evidence that it can weigh
   * @param shared belief in those faults that were run on every one of them, after what every one
   *     of them can weigh; this alone tells them apart
   * @param run share of what can go wrong with it that was run, 0 to 1: one of which less was run
   *     has less to say
   */
  public record Relative(
      Board board,
      Variants.Variant variant,
      Suspects suspects,
      Belief belief,
      Belief shared,
      double run) {

    String duty(Suspect suspect) {
      String place = suspect.place();
      String duty = board.duties().get(place);
      if (duty != null) {
        return duty;
      }
      boolean net = board.net(place).isPresent();
      return net ? TRACK : board.part(place).map(PlacedPart::role).orElse(place);
    }
  }

  /**
   * What a part does, and what is believed of all parts that do it.
   *
   * @param belief that the fault is there, be there such a part or not
   * @param fitted the same if there is one
   * @param parts that do it, by board, the likeliest first
   * @param repairs what is due there, each with its share of the belief
   * @param mayDiffer ticks not answered that it rests on
   */
  public record Role(
      String duty,
      double belief,
      double fitted,
      Map<String, List<String>> parts,
      Map<RepairAction.Kind, Double> repairs,
      List<Tick> mayDiffer) {
    public Role {
      parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
      repairs = Collections.unmodifiableMap(new LinkedHashMap<>(repairs));
      mayDiffer = List.copyOf(mayDiffer);
    }
  }

  /**
   * What is believed of one of our boards, by duty; a duty for which nothing speaks is there too.
   */
  private static final class Held {
    final Map<String, Double> shares = new LinkedHashMap<>();
    final Map<String, List<String>> parts = new LinkedHashMap<>();
    final Map<String, Map<RepairAction.Kind, Double>> repairs = new LinkedHashMap<>();

    Held(Relative relative) {
      relative.suspects.all().forEach(s -> shares.putIfAbsent(relative.duty(s), 0.0));
      for (Share fault : relative.belief.faults()) {
        Suspect suspect = relative.suspects.of(fault.what());
        String duty = relative.duty(suspect);
        shares.merge(duty, fault.belief(), Double::sum);
        repairs
            .computeIfAbsent(duty, d -> new EnumMap<>(RepairAction.Kind.class))
            .merge(suspect.repair().kind(), fault.belief(), Double::sum);
      }
      for (Share place : relative.belief.places()) {
        String duty = relative.board.duties().getOrDefault(place.what(), "");
        if (!duty.isEmpty()) {
          parts.computeIfAbsent(duty, d -> new ArrayList<>()).add(place.what());
        }
      }
    }
  }

  private final List<Relative> relatives;
  private final List<Held> held;
  private final List<Tick> ticks;
  private final Map<String, String> answers;
  private final double[] weights;

  /**
   * @param answers given to ticks, by the tick's name; those not given are not known
   */
  public OwnBoard(
      List<Relative> relatives, List<Tick> ticks, Map<String, String> answers, ErrorRates rates) {
    this.relatives = List.copyOf(relatives);
    held = relatives.stream().map(Held::new).toList();
    this.ticks = List.copyOf(ticks);
    this.answers = Map.copyOf(answers);
    weights = new double[relatives.size()];
    double best = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < weights.length; i++) {
      Relative relative = relatives.get(i);
      weights[i] =
          StrictMath.log(relative.run)
              + differs(relative).size() * StrictMath.log(rates.tick())
              + relative.shared.logEvidence();
      best = Math.max(best, weights[i]);
    }
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      weights[i] = StrictMath.exp(weights[i] - best);
      sum += weights[i];
    }
    for (int i = 0; i < weights.length; i++) {
      weights[i] /= sum;
    }
  }

  /** All boards it is held against, in order. */
  public List<Relative> relatives() {
    return relatives;
  }

  /** How much one of them counts; all together 1. */
  public double weight(Relative relative) {
    return weights[relatives.indexOf(relative)];
  }

  /** The ticks in which one of them is not as the board on the table. */
  public List<Tick> differs(Relative relative) {
    return ticks.stream()
        .filter(t -> answers.containsKey(t.name()))
        .filter(t -> !answers.get(t.name()).equals(relative.variant.ticks().get(t.name())))
        .toList();
  }

  /** Belief that the fault is none that such boards can have. */
  public double outside() {
    return mean(r -> r.belief.outside());
  }

  /** Belief that two faults are there. */
  public double two() {
    return mean(r -> r.belief.two());
  }

  private double mean(ToDoubleFunction<Relative> of) {
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      sum += weights[i] * of.applyAsDouble(relatives.get(i));
    }
    return sum;
  }

  /**
   * Every duty, likeliest first; of equal ones that first whose part comes first on the boards.
   * What was run of none of a board's parts of that duty says nothing of it: the average is over
   * those boards that have such runs, and all beliefs with what is outside are 1.
   */
  public List<Role> roles() {
    Set<String> duties = new LinkedHashSet<>();
    held.forEach(h -> duties.addAll(h.shares.keySet()));
    Map<String, Double> fitted = new LinkedHashMap<>();
    Map<String, Double> beliefs = new LinkedHashMap<>();
    double sum = 0;
    for (String duty : duties) {
      double belief = 0;
      double run = 0;
      double having = 0;
      for (int i = 0; i < weights.length; i++) {
        boolean ran = held.get(i).shares.containsKey(duty);
        belief += ran ? weights[i] * held.get(i).shares.get(duty) : 0;
        run += ran ? weights[i] : 0;
        having += ran || has(relatives.get(i), duty) ? weights[i] : 0;
      }
      fitted.put(duty, belief / run);
      beliefs.put(duty, having * belief / run);
      sum += beliefs.get(duty);
    }
    double scale = (1 - outside()) / sum;
    List<Role> roles = new ArrayList<>();
    for (String duty : duties) {
      roles.add(
          new Role(
              duty,
              scale * beliefs.get(duty),
              scale * fitted.get(duty),
              parts(duty),
              repairs(duty),
              mayDiffer(duty)));
    }
    roles.sort(Comparator.comparingDouble(Role::belief).reversed());
    return List.copyOf(roles);
  }

  /** Tracks, brick and lead every board has. */
  private static boolean has(Relative relative, String duty) {
    return EVERYWHERE.contains(duty) || relative.board.duties().containsValue(duty);
  }

  private Map<String, List<String>> parts(String duty) {
    Map<String, List<String>> parts = new LinkedHashMap<>();
    for (int i = 0; i < weights.length; i++) {
      List<String> there = held.get(i).parts.getOrDefault(duty, List.of());
      if (!there.isEmpty()) {
        parts.put(relatives.get(i).board.name(), there);
      }
    }
    return parts;
  }

  private Map<RepairAction.Kind, Double> repairs(String duty) {
    Map<RepairAction.Kind, Double> sums = new EnumMap<>(RepairAction.Kind.class);
    for (int i = 0; i < weights.length; i++) {
      double weight = weights[i];
      held.get(i)
          .repairs
          .getOrDefault(duty, Map.of())
          .forEach((kind, belief) -> sums.merge(kind, weight * belief, Double::sum));
    }
    double all = sums.values().stream().mapToDouble(Double::doubleValue).sum();
    sums.replaceAll((kind, belief) -> all > 0 ? belief / all : 0);
    Map<RepairAction.Kind, Double> sorted = new LinkedHashMap<>();
    sums.entrySet().stream()
        .sorted(Map.Entry.<RepairAction.Kind, Double>comparingByValue().reversed())
        .forEach(e -> sorted.put(e.getKey(), e.getValue()));
    return sorted;
  }

  /**
   * Ticks without an answer that any of the boards gives, if they concern this duty or the belief
   * in it is another with another answer.
   */
  private List<Tick> mayDiffer(String duty) {
    return ticks.stream()
        .filter(t -> !settled(t))
        .filter(t -> t.concerns().contains(duty) || rests(duty, t))
        .toList();
  }

  private boolean settled(Tick tick) {
    return answers.containsKey(tick.name())
        && relatives.stream()
            .anyMatch(r -> answers.get(tick.name()).equals(r.variant.ticks().get(tick.name())));
  }

  private boolean rests(String duty, Tick tick) {
    double least = 1;
    double most = 0;
    for (String answer : tick.answers()) {
      double belief = 0;
      double having = 0;
      for (int i = 0; i < weights.length; i++) {
        Relative relative = relatives.get(i);
        boolean ran = held.get(i).shares.containsKey(duty) || !has(relative, duty);
        if (relative.run >= MUCH
            && ran
            && answer.equals(relative.variant.ticks().get(tick.name()))) {
          belief += weights[i] * held.get(i).shares.getOrDefault(duty, 0.0);
          having += weights[i];
        }
      }
      if (having > 0) {
        least = Math.min(least, belief / having);
        most = Math.max(most, belief / having);
      }
    }
    return most >= SMALL && most >= RESTS * least;
  }
}
