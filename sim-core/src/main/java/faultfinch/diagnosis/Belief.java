package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * How likely each fault is after what was seen: prior times likelihood, kept over hypotheses and
 * shown over faults, places and repairs. All of it with what is outside is 1.
 */
public final class Belief {
  private final Suspects suspects;
  private final double[] ofHypothesis;
  private final double outside;
  private final List<Observation> notWeighed;

  /** After this evidence. */
  public Belief(
      FaultDictionary dictionary, Suspects suspects, ErrorRates rates, Evidence evidence) {
    this.suspects = suspects;
    Likelihoods likelihoods = new Likelihoods(dictionary, rates, evidence.seen());
    notWeighed = List.copyOf(likelihoods.notWeighed());
    List<Suspects.Hypothesis> hypotheses = suspects.hypotheses();
    double prior = hypotheses.stream().mapToDouble(Suspects.Hypothesis::weight).sum();
    double[] sumOfRow = new double[dictionary.rows()];
    for (int row = 0; row < sumOfRow.length; row++) {
      sumOfRow[row] = likelihoods.sum(row);
    }
    List<Integer> missed = evidence.missed().stream().map(suspects.actions()::indexOf).toList();
    double fails = StrictMath.log(rates.repairFails());
    double works = StrictMath.log(1 - rates.outside()) - StrictMath.log(prior);
    ofHypothesis = new double[hypotheses.size()];
    double out =
        StrictMath.log(rates.outside())
            + new Outside(likelihoods, dictionary, rates, suspects).log(List.of());
    double best = out;
    for (int i = 0; i < ofHypothesis.length; i++) {
      Suspects.Hypothesis h = hypotheses.get(i);
      double log = works + StrictMath.log(h.weight());
      log += sumOfRow[dictionary.row(suspects.all().get(h.suspect()).fault())];
      for (int action : missed) {
        log += h.cures().contains(action) ? fails : 0;
      }
      ofHypothesis[i] = log;
      best = Math.max(best, log);
    }
    double sum = StrictMath.exp(out - best);
    for (int i = 0; i < ofHypothesis.length; i++) {
      ofHypothesis[i] = StrictMath.exp(ofHypothesis[i] - best);
      sum += ofHypothesis[i];
    }
    for (int i = 0; i < ofHypothesis.length; i++) {
      ofHypothesis[i] /= sum;
    }
    outside = StrictMath.exp(out - best) / sum;
  }

  /** Belief that the fault is none of the list, 0 to 1. */
  public double outside() {
    return outside;
  }

  /** Belief in one fault; 0 if it is none of the suspects. */
  public double of(String fault) {
    return suspects.contains(fault) ? of(suspects.of(fault)) : 0;
  }

  private double of(Suspect suspect) {
    double sum = 0;
    for (int i = 0; i < ofHypothesis.length; i++) {
      if (suspects.all().get(suspects.hypotheses().get(i).suspect()) == suspect) {
        sum += ofHypothesis[i];
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
    for (int i = 0; i < ofHypothesis.length; i++) {
      sum += suspects.hypotheses().get(i).cures().contains(index) ? ofHypothesis[i] : 0;
    }
    return sum;
  }

  /** Observations of looks that the dictionary does not know. */
  public List<Observation> notWeighed() {
    return notWeighed;
  }

  /** By hypothesis. */
  double[] weights() {
    return ofHypothesis.clone();
  }

  private List<Share> shares(Function<Suspect, String> name) {
    Map<String, Double> sums = new LinkedHashMap<>();
    for (int i = 0; i < ofHypothesis.length; i++) {
      Suspect suspect = suspects.all().get(suspects.hypotheses().get(i).suspect());
      sums.merge(name.apply(suspect), ofHypothesis[i], Double::sum);
    }
    List<Share> shares = new ArrayList<>();
    sums.forEach((what, belief) -> shares.add(new Share(what, belief)));
    shares.sort(Comparator.comparingDouble(Share::belief).reversed());
    return List.copyOf(shares);
  }
}
