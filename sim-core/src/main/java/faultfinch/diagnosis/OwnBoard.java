package faultfinch.diagnosis;

import faultfinch.board.Board;
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

  /** A belief so much larger with one answer than with another rests on the answer. */
  private static final double RESTS = 2;

  private static final double SMALL = 0.02;

  /**
   * One of our boards.
   *
   * @param belief after all of the evidence that it can weigh
   * @param shared belief after what every one of them can weigh, which alone tells them apart
   */
  public record Relative(
      Board board, Variants.Variant variant, Suspects suspects, Belief belief, Belief shared) {

    String duty(Suspect suspect) {
      String place = suspect.place();
      boolean part = board.part(place).isPresent();
      String role = part ? board.part(place).get().role() : TRACK;
      boolean net = board.net(place).isPresent();
      return part ? board.duties().getOrDefault(place, role) : net ? TRACK : place;
    }
  }

  /**
   * What a part does, and what is believed of all parts that do it.
   *
   * @param belief that the fault is there, over all boards
   * @param fitted the same over those boards that have such a part
   * @param parts that do it, by board, the likeliest first
   * @param repairs belief by what is due there
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

  private final List<Relative> relatives;
  private final List<Tick> ticks;
  private final Map<String, String> answers;
  private final double[] weights;

  /**
   * @param answers given to ticks, by the tick's name; those not given are not known
   */
  public OwnBoard(
      List<Relative> relatives, List<Tick> ticks, Map<String, String> answers, ErrorRates rates) {
    this.relatives = List.copyOf(relatives);
    this.ticks = List.copyOf(ticks);
    this.answers = Map.copyOf(answers);
    weights = new double[relatives.size()];
    double best = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < weights.length; i++) {
      Relative relative = relatives.get(i);
      weights[i] =
          differs(relative).size() * StrictMath.log(rates.tick()) + relative.shared.logEvidence();
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

  /** Every duty, likeliest first; of equal ones that first whose part comes first on the boards. */
  public List<Role> roles() {
    List<Map<String, Double>> shares = relatives.stream().map(OwnBoard::shares).toList();
    Set<String> duties = new LinkedHashSet<>();
    shares.forEach(s -> duties.addAll(s.keySet()));
    List<Role> roles = new ArrayList<>();
    for (String duty : duties) {
      double belief = 0;
      double having = 0;
      for (int i = 0; i < weights.length; i++) {
        if (shares.get(i).containsKey(duty)) {
          belief += weights[i] * shares.get(i).get(duty);
          having += weights[i];
        }
      }
      double fitted = having > 0 ? belief / having : 0;
      roles.add(
          new Role(duty, belief, fitted, parts(duty), repairs(duty), mayDiffer(duty, shares)));
    }
    roles.sort(Comparator.comparingDouble(Role::belief).reversed());
    return List.copyOf(roles);
  }

  /** Belief by duty; a duty of which a board has a part is there even if nothing speaks for it. */
  private static Map<String, Double> shares(Relative relative) {
    Map<String, Double> shares = new LinkedHashMap<>();
    relative.suspects.all().forEach(s -> shares.putIfAbsent(relative.duty(s), 0.0));
    relative
        .belief
        .faults()
        .forEach(
            f ->
                shares.merge(
                    relative.duty(relative.suspects.of(f.what())), f.belief(), Double::sum));
    return shares;
  }

  private Map<String, List<String>> parts(String duty) {
    Map<String, List<String>> parts = new LinkedHashMap<>();
    for (Relative relative : relatives) {
      Set<String> there = new LinkedHashSet<>();
      for (Share place : relative.belief.places()) {
        if (relative.board.part(place.what()).isPresent()
            && duty.equals(relative.board.duties().get(place.what()))) {
          there.add(place.what());
        }
      }
      if (!there.isEmpty()) {
        parts.put(relative.board.name(), List.copyOf(there));
      }
    }
    return parts;
  }

  private Map<RepairAction.Kind, Double> repairs(String duty) {
    Map<RepairAction.Kind, Double> sums = new EnumMap<>(RepairAction.Kind.class);
    for (int i = 0; i < weights.length; i++) {
      Relative relative = relatives.get(i);
      for (Share fault : relative.belief.faults()) {
        Suspect suspect = relative.suspects.of(fault.what());
        if (relative.duty(suspect).equals(duty)) {
          sums.merge(suspect.repair().kind(), weights[i] * fault.belief(), Double::sum);
        }
      }
    }
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
  private List<Tick> mayDiffer(String duty, List<Map<String, Double>> shares) {
    return ticks.stream()
        .filter(t -> !settled(t))
        .filter(t -> t.concerns().contains(duty) || rests(duty, t, shares))
        .toList();
  }

  private boolean settled(Tick tick) {
    return answers.containsKey(tick.name())
        && relatives.stream()
            .anyMatch(r -> answers.get(tick.name()).equals(r.variant.ticks().get(tick.name())));
  }

  private boolean rests(String duty, Tick tick, List<Map<String, Double>> shares) {
    double least = 1;
    double most = 0;
    for (String answer : tick.answers()) {
      double belief = 0;
      double having = 0;
      for (int i = 0; i < weights.length; i++) {
        if (answer.equals(relatives.get(i).variant.ticks().get(tick.name()))) {
          belief += weights[i] * shares.get(i).getOrDefault(duty, 0.0);
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
