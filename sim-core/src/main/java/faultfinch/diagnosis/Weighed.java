package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The outlook of one who weighs what is seen: the same belief as {@link Belief} has after as much,
 * but one entry more costs one entry, not all of them anew.
 *
 * <p>Not modelled: repairs after which something else is seen; those go to {@link Belief}.
 */
final class Weighed implements Outlook {

  /** What stays the same all through a job. */
  static final class Terms {
    private final FaultDictionary dictionary;
    private final Suspects suspects;
    private final ErrorRates rates;
    private final PriceList prices;
    private final int[] rows;
    private final double[] weightOfRow;
    private final RepairAction[] due;

    Terms(FaultDictionary dictionary, Suspects suspects, ErrorRates rates, PriceList prices) {
      this.dictionary = dictionary;
      this.suspects = suspects;
      this.rates = rates;
      this.prices = prices;
      List<Suspects.Hypothesis> all = suspects.hypotheses();
      rows = new int[all.size()];
      due = new RepairAction[rows.length];
      for (int i = 0; i < rows.length; i++) {
        rows[i] = dictionary.row(suspects.all().get(all.get(i).suspect()).fault());
        due[i] = cheapest(all.get(i).cures());
      }
      weightOfRow = suspects.weightOfRow(dictionary);
    }

    private RepairAction cheapest(List<Integer> cures) {
      RepairAction least = suspects.actions().get(cures.get(0));
      for (int cure : cures) {
        RepairAction other = suspects.actions().get(cure);
        least = prices.repair(other).total() < prices.repair(least).total() ? other : least;
      }
      return least;
    }

    private double frequency(boolean[] which) {
      double sum = 0;
      for (int row = 0; row < weightOfRow.length; row++) {
        sum += which[row] ? weightOfRow[row] : 0;
      }
      return Outside.smoothed(sum, weightOfRow.length);
    }
  }

  private final Terms terms;
  private final Evidence evidence;
  private final double[] alone;
  private final double[] ofTwo;
  private final boolean[] leads;
  private boolean odd;
  private boolean complaint;
  private double outsideLog;
  private final boolean[] together;
  private boolean anyTogether;
  private double[] weights = {};
  private double none;

  private Weighed(Terms terms) {
    this.terms = terms;
    evidence = Evidence.NONE;
    List<Suspects.Hypothesis> all = terms.suspects.hypotheses();
    double prior = all.stream().mapToDouble(Suspects.Hypothesis::weight).sum();
    double listed = StrictMath.log(1 - terms.rates.outside()) - StrictMath.log(prior);
    alone = new double[all.size()];
    ofTwo = new double[all.size()];
    for (int i = 0; i < alone.length; i++) {
      double log = listed + StrictMath.log(all.get(i).weight());
      alone[i] = log + StrictMath.log(1 - terms.rates.another());
      ofTwo[i] = log + StrictMath.log(terms.rates.another());
    }
    leads = new boolean[terms.weightOfRow.length];
    together = new boolean[leads.length];
    Arrays.fill(together, true);
    outsideLog = StrictMath.log(terms.rates.outside());
  }

  private Weighed(Weighed before, Evidence evidence) {
    terms = before.terms;
    this.evidence = evidence;
    alone = before.alone.clone();
    ofTwo = before.ofTwo.clone();
    leads = before.leads.clone();
    odd = before.odd;
    complaint = before.complaint;
    outsideLog = before.outsideLog;
    together = before.together.clone();
    anyTogether = before.anyTogether;
  }

  /** After evidence in which no repair changed anything. */
  static Weighed of(Terms terms, Evidence evidence) {
    Weighed now = new Weighed(terms);
    for (Observation observation : evidence.seen()) {
      now = now.and(observation);
    }
    for (RepairAction action : evidence.missed()) {
      now = now.missed(action);
    }
    return now;
  }

  @Override
  public Weighed seen(String look, String outcome) {
    return and(Observation.bench(look, outcome));
  }

  private Weighed and(Observation observation) {
    Weighed next = new Weighed(this, evidence.and(observation));
    Likelihoods of = new Likelihoods(terms.dictionary, terms.rates, Evidence.of(observation));
    if (!of.weighed().isEmpty()) {
      next.weigh(observation, of);
    }
    return next;
  }

  private void weigh(Observation observation, Likelihoods of) {
    int rows = leads.length;
    double usual = 0;
    double[] log = new double[rows];
    boolean[] differs = new boolean[rows];
    boolean[] matches = new boolean[rows];
    for (int row = 0; row < rows; row++) {
      log[row] = of.of(0, row);
      differs[row] = of.differs(0, row);
      matches[row] = of.matches(0, row);
      usual += terms.weightOfRow[row] * StrictMath.exp(log[row]);
      leads[row] |= of.isOdd(0) && differs[row];
    }
    odd |= of.isOdd(0);
    if (!complaint) {
      Noticed noticed = new Noticed(terms.dictionary, terms.rates, of);
      for (int i = 0; i < alone.length; i++) {
        double brought = noticed.alone(terms.rows[i]);
        alone[i] += brought;
        complaint |= brought < 0;
      }
    }
    double beside = StrictMath.log(usual);
    for (int i = 0; i < alone.length; i++) {
      int row = terms.rows[i];
      alone[i] += log[row];
      ofTwo[i] += differs[row] ? log[row] : beside;
    }
    if (terms.rates.together(observation.looks().get(0))) {
      anyTogether = true;
      for (int row = 0; row < rows; row++) {
        together[row] &= matches[row];
      }
    } else {
      outsideLog += StrictMath.log(terms.frequency(matches));
    }
  }

  @Override
  public Weighed missed(RepairAction action) {
    Weighed next = new Weighed(this, evidence.andMissed(action));
    int index = terms.suspects.actions().indexOf(action);
    double fails = StrictMath.log(terms.rates.repairFails());
    for (int i = 0; i < alone.length; i++) {
      if (terms.suspects.hypotheses().get(i).cures().contains(index)) {
        next.alone[i] += fails;
        next.ofTwo[i] += fails;
      }
    }
    return next;
  }

  /** Belief in each hypothesis. */
  double[] weights() {
    if (weights.length == 0) {
      double out = outsideLog + (anyTogether ? StrictMath.log(terms.frequency(together)) : 0);
      double best = out;
      for (int i = 0; i < alone.length; i++) {
        best = Math.max(best, Math.max(alone[i], ofTwo(i)));
      }
      double[] all = new double[alone.length];
      double sum = StrictMath.exp(out - best);
      for (int i = 0; i < all.length; i++) {
        all[i] = StrictMath.exp(alone[i] - best) + StrictMath.exp(ofTwo(i) - best);
        sum += all[i];
      }
      for (int i = 0; i < all.length; i++) {
        all[i] /= sum;
      }
      weights = all;
      none = StrictMath.exp(out - best) / sum;
    }
    return weights.clone();
  }

  @Override
  public double outside() {
    weights();
    return none;
  }

  /** Of two faults the one that shows leads. */
  private double ofTwo(int i) {
    return leads[terms.rows[i]] || !odd ? ofTwo[i] : Double.NEGATIVE_INFINITY;
  }

  @Override
  public boolean isEmpty() {
    return alone.length == 0;
  }

  @Override
  public Choice choose(Planner planner) {
    return planner.choose(
        Field.of(terms.dictionary, terms.suspects, terms.prices, evidence, weights()));
  }

  @Override
  public List<Due> due() {
    double[] now = weights();
    List<Due> due = new ArrayList<>();
    for (int i = 0; i < now.length; i++) {
      due.add(new Due(terms.due[i], now[i]));
    }
    return Outlook.ranked(due);
  }

  @Override
  public double cureChance(RepairAction action) {
    int index = terms.suspects.actions().indexOf(action);
    double[] now = weights();
    double sum = 0;
    for (int i = 0; i < now.length; i++) {
      sum += terms.suspects.hypotheses().get(i).cures().contains(index) ? now[i] : 0;
    }
    return sum;
  }
}
