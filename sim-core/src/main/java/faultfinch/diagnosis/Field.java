package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** The candidates left while a planner plays a board through, outcomes taken at their word. */
public final class Field {
  /** Of the belief in what a repair done should have cured, what counts for the plan; each time. */
  private static final double TRIED = 0.01;

  private final Ground ground;
  private final int[] members;

  Field(Ground ground, int[] members) {
    this.ground = ground;
    this.members = members;
  }

  /**
   * What belief leaves after evidence: the likeliest candidates that together hold all but a
   * hundredth of what is believed of the list. What a repair done should have cured counts less
   * than it is believed: before a repair is made once more, others are made.
   */
  static Field of(
      FaultDictionary dictionary,
      Suspects suspects,
      PriceList prices,
      Evidence evidence,
      double[] belief) {
    boolean fresh = evidence.done().isEmpty();
    double[] planned = heaviest(fresh ? belief : untried(suspects, evidence, belief));
    return whole(new Ground(dictionary, suspects, prices, planned, done(evidence)));
  }

  private static double[] untried(Suspects suspects, Evidence evidence, double[] belief) {
    List<Integer> made = suspects.numbers(evidence.done());
    double[] untried = belief.clone();
    for (int i = 0; i < untried.length; i++) {
      Suspects.Hypothesis h = suspects.hypotheses().get(i);
      untried[i] *= StrictMath.pow(TRIED, made.stream().filter(h.cures()::contains).count());
    }
    return untried;
  }

  private static double[] heaviest(double[] belief) {
    double[] rising = belief.clone();
    Arrays.sort(rising);
    double rest = Arrays.stream(rising).sum() / 100;
    int i = 0;
    double dropped = 0;
    while (i < rising.length - 1 && dropped + rising[i] <= rest) {
      dropped += rising[i++];
    }
    double least = rising[i];
    return Arrays.stream(belief).map(b -> b < least ? 0 : b).toArray();
  }

  /**
   * What is left if every observation is right and every repair does what it can: priors of the
   * candidates that agree with all of it. It can be empty.
   */
  static Field strict(
      FaultDictionary dictionary, Suspects suspects, PriceList prices, Evidence evidence) {
    List<Integer> missed = suspects.numbers(evidence.missed());
    double[] weights =
        suspects.hypotheses().stream()
            .mapToDouble(
                h -> {
                  int row = dictionary.row(suspects.all().get(h.suspect()).fault());
                  boolean agrees =
                      evidence.seen().stream().allMatch(o -> agrees(dictionary, row, o));
                  return agrees && missed.stream().noneMatch(h.cures()::contains) ? h.weight() : 0;
                })
            .toArray();
    return whole(new Ground(dictionary, suspects, prices, weights, done(evidence)));
  }

  private static boolean agrees(FaultDictionary dictionary, int row, Observation seen) {
    boolean every = seen.reach().every();
    for (Sight sight : seen.reach().sights()) {
      List<String> known =
          sight.looks().stream().filter(l -> dictionary.look(l).isPresent()).toList();
      boolean had =
          known.isEmpty()
              || known.stream()
                  .mapToInt(l -> dictionary.look(l).getAsInt())
                  .anyMatch(
                      l -> sight.outcomes().stream().anyMatch(o -> dictionary.shows(l, row, o)));
      if (had != every) {
        return had;
      }
    }
    return every;
  }

  private static Set<String> done(Evidence evidence) {
    return new LinkedHashSet<>(evidence.looksMade());
  }

  private static Field whole(Ground ground) {
    return new Field(ground, IntStream.range(0, ground.atoms().length).toArray());
  }

  /** The same candidates on a ground of their own, which is quicker to plan on. */
  Field narrowed() {
    boolean all = members.length == ground.atoms().length;
    return members.length == 0 || all ? this : whole(ground.narrowed(members));
  }

  /** Whether nothing is left: the fault is none of the list. */
  public boolean isEmpty() {
    return members.length == 0;
  }

  /** How many groups are left that looks can tell apart. */
  public int classes() {
    return (int) Arrays.stream(members).map(m -> ground.atoms()[m].signature()).distinct().count();
  }

  /** What is left after a look has shown this. */
  public Field seen(String look, String outcome) {
    return only(ground.showing(look, outcome));
  }

  /** What is left after each outcome of a look, in the order in which the candidates show them. */
  Map<String, Field> parted(String look) {
    Map<String, IntStream.Builder> parts = new LinkedHashMap<>();
    IntFunction<String> shown = ground.shown(look);
    for (int member : members) {
      parts.computeIfAbsent(shown.apply(member), k -> IntStream.builder()).add(member);
    }
    Map<String, Field> fields = new LinkedHashMap<>();
    parts.forEach(
        (outcome, part) -> fields.put(outcome, new Field(ground, part.build().toArray())));
    return fields;
  }

  /** What is left after a repair that did not help. */
  public Field missed(RepairAction action) {
    int index = ground.actions().indexOf(action);
    return only(member -> Arrays.binarySearch(ground.atoms()[member].cures(), index) < 0);
  }

  private Field only(IntPredicate which) {
    return new Field(ground, Arrays.stream(members).filter(which).toArray());
  }

  Ground ground() {
    return ground;
  }

  int[] members() {
    return members;
  }
}
