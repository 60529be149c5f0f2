package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * How likely each fault is after what was seen: prior times likelihood, kept over hypotheses and
 * shown over faults, places and repairs. Each fault may be alone or one of two. All of it with what
 * is outside and what is cured is 1.
 */
public final class Belief {
  private final Suspects suspects;
  private final double[] due;
  private final double outside;
  private final double two;
  private final double cured;
  private final double evidence;
  private final List<Observation> weighed;
  private final List<Observation> notWeighed;

  /** After this evidence. */
  public Belief(FaultDictionary dictionary, Suspects before, ErrorRates rates, Evidence evidence) {
    suspects = History.after(evidence.histories(), before, rates);
    Likelihoods likelihoods = new Likelihoods(dictionary, rates, evidence);
    weighed = List.copyOf(likelihoods.weighed());
    notWeighed = List.copyOf(likelihoods.notWeighed());
    Joint joint = new Joint(likelihoods, dictionary, suspects, rates, evidence);
    Noticed noticed = new Noticed(dictionary, rates, likelihoods);
    Wavering wavering = new Wavering(rates, likelihoods);
    Hinted hinted = new Hinted(suspects, rates, evidence);
    List<Suspects.Hypothesis> hypotheses = suspects.hypotheses();
    double out =
        StrictMath.log(rates.outside())
            + new Outside(likelihoods, dictionary, rates, suspects).log(List.of())
            + hinted.outside();
    int size = hypotheses.size();
    double[] alone = new double[size];
    double[] ofTwo = new double[size];
    double[] curedAlone = new double[size];
    double[] curedFirst = new double[evidence.done().size()];
    Arrays.fill(curedFirst, Double.NEGATIVE_INFINITY);
    double prior = suspects.prior();
    double listed = StrictMath.log(1 - rates.outside()) - StrictMath.log(prior);
    double one = StrictMath.log(1 - rates.another());
    double another = StrictMath.log(rates.another());
    List<Integer> missed = suspects.numbers(evidence.missed());
    double fails = StrictMath.log(rates.repairFails());
    double best = out;
    for (int i = 0; i < size; i++) {
      Suspects.Hypothesis h = hypotheses.get(i);
      double log = listed + StrictMath.log(h.weight());
      Suspect suspect = suspects.all().get(h.suspect());
      log += wavering.of(suspect, joint.row(h)) + hinted.of(suspect);
      for (int action : missed) {
        log += h.cures().contains(action) ? fails : 0;
      }
      double brought = log + one + noticed.alone(joint.row(h));
      alone[i] = brought + joint.still(h, 0);
      curedAlone[i] = brought + joint.cured(h);
      ofTwo[i] = log + another + joint.stillOfTwo(h);
      for (int number : joint.curing(h)) {
        double first = log + another + joint.curedOfTwo(h, number);
        curedFirst[number] = Joint.plus(curedFirst[number], first);
      }
      best = Math.max(best, Math.max(alone[i], Math.max(curedAlone[i], ofTwo[i])));
    }
    for (int number = 0; number < curedFirst.length; number++) {
      best = Math.max(best, curedFirst[number] + joint.left(number)[size + 1]);
    }
    due = new double[size];
    double pairs = 0;
    double over = 0;
    double sum = StrictMath.exp(out - best);
    for (int i = 0; i < size; i++) {
      double pair = StrictMath.exp(ofTwo[i] - best);
      due[i] = StrictMath.exp(alone[i] - best) + pair;
      pairs += pair;
      double done = StrictMath.exp(curedAlone[i] - best);
      over += done;
      sum += due[i] + done;
    }
    for (int number = 0; number < curedFirst.length; number++) {
      double[] left = joint.left(number);
      for (int i = 0; i < size; i++) {
        double second = StrictMath.exp(curedFirst[number] + left[i] - best);
        due[i] += second;
        pairs += second;
        sum += second;
      }
      double both = StrictMath.exp(curedFirst[number] + left[size] - best);
      over += both;
      sum += both;
    }
    for (int i = 0; i < size; i++) {
      due[i] /= sum;
    }
    outside = StrictMath.exp(out - best) / sum;
    two = pairs / sum;
    cured = over / sum;
    this.evidence = best + StrictMath.log(sum);
  }

  /** Logarithm of how likely the evidence is on a board of this kind, whatever is wrong with it. */
  double logEvidence() {
    return evidence;
  }

  /** Belief that the fault is none of the list, 0 to 1. */
  public double outside() {
    return outside;
  }

  /** Belief that two faults are there, or that one is left of two; part of what the list holds. */
  public double two() {
    return two;
  }

  /** Belief that the repairs done have cured all that was wrong. */
  public double cured() {
    return cured;
  }

  /** Belief that one fault is there now; 0 if it is none of the suspects. */
  public double of(String fault) {
    return suspects.contains(fault) ? of(suspects.of(fault)) : 0;
  }

  private double of(Suspect suspect) {
    double sum = 0;
    for (int i = 0; i < due.length; i++) {
      if (suspects.all().get(suspects.hypotheses().get(i).suspect()) == suspect) {
        sum += due[i];
      }
    }
    return sum;
  }

  /** Every fault, likeliest first. */
  public List<Share> faults() {
    return shares(Suspect::fault);
  }

  /** Parts, nets and leads, likeliest first. */
  public List<Share> places() {
    return shares(Suspect::place);
  }

  /** The least repairs that surely cure, likeliest first. */
  public List<Share> repairs() {
    return shares(s -> s.repair().text());
  }

  /** Chance that this repair cures the board, 0 to 1. */
  public double cureChance(RepairAction action) {
    int index = suspects.actions().indexOf(action);
    double sum = 0;
    for (int i = 0; i < due.length; i++) {
      sum += suspects.hypotheses().get(i).cures().contains(index) ? due[i] : 0;
    }
    return sum;
  }

  /** Observations that were weighed, in order. */
  public List<Observation> weighed() {
    return weighed;
  }

  /** Observations of looks that the dictionary does not know. */
  public List<Observation> notWeighed() {
    return notWeighed;
  }

  /** By hypothesis. */
  double[] weights() {
    return due.clone();
  }

  private List<Share> shares(Function<Suspect, String> name) {
    Map<String, Double> sums = new LinkedHashMap<>();
    for (int i = 0; i < due.length; i++) {
      Suspect suspect = suspects.all().get(suspects.hypotheses().get(i).suspect());
      sums.merge(name.apply(suspect), due[i], Double::sum);
    }
    List<Share> shares = new ArrayList<>();
    sums.forEach((what, belief) -> shares.add(new Share(what, belief)));
    shares.sort(Comparator.comparingDouble(Share::belief).reversed());
    return List.copyOf(shares);
  }
}
