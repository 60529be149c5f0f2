package faultfinch.diagnosis;

import faultfinch.fault.RepairAction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
    private final Unheard unheard;
    private final double leaves;
    private final double meddles;

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
      unheard = new Unheard(dictionary, rates);
      leaves = StrictMath.log(1 - rates.meddles());
      meddles = StrictMath.log(rates.meddles());
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

  /** A look as it was last made. */
  private record Last(Observation observation, Beside beside) {}

  private final Terms terms;
  private final Evidence evidence;
  private final double[] alone;
  private final double[] ofTwo;
  private final double[] apart;
  private final double[] meddled;
  private final Map<String, Last> last;
  private final Map<String, boolean[]> spoilt;
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
    double prior = terms.suspects.prior();
    double listed = StrictMath.log(1 - terms.rates.outside()) - StrictMath.log(prior);
    alone = new double[all.size()];
    ofTwo = new double[all.size()];
    for (int i = 0; i < alone.length; i++) {
      double log = listed + StrictMath.log(all.get(i).weight());
      alone[i] = log + StrictMath.log(1 - terms.rates.another());
      ofTwo[i] = log + StrictMath.log(terms.rates.another());
    }
    leads = new boolean[terms.weightOfRow.length];
    apart = new double[leads.length];
    meddled = new double[leads.length];
    last = new HashMap<>();
    spoilt = new HashMap<>();
    together = new boolean[leads.length];
    Arrays.fill(together, true);
    outsideLog = StrictMath.log(terms.rates.outside());
  }

  private Weighed(Weighed before, Evidence evidence) {
    terms = before.terms;
    this.evidence = evidence;
    alone = before.alone.clone();
    ofTwo = before.ofTwo.clone();
    apart = before.apart.clone();
    meddled = before.meddled.clone();
    last = new HashMap<>(before.last);
    spoilt = new HashMap<>(before.spoilt);
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
    double[] log = new double[rows];
    boolean[] matches = new boolean[rows];
    for (int row = 0; row < rows; row++) {
      log[row] = of.of(0, row);
      matches[row] = of.matches(0, row);
      leads[row] |= of.isOdd(0) && of.differs(0, row);
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
    for (int i = 0; i < alone.length; i++) {
      alone[i] += log[terms.rows[i]];
    }
    besides(observation, of);
    if (terms.rates.together(observation.looks().get(0))) {
      anyTogether = true;
      for (int row = 0; row < rows; row++) {
        together[row] &= matches[row];
      }
    } else {
      outsideLog += StrictMath.log(terms.frequency(matches));
    }
  }

  /** If there is another fault beside; as {@link Joint} does it for all at once. */
  private void besides(Observation observation, Likelihoods of) {
    Beside now = new Beside(of, 0, terms.weightOfRow, terms.unheard, terms.rates);
    Optional<Last> before =
        Optional.ofNullable(last.put(observation.look(), new Last(observation, now)))
            .filter(l -> Repeats.same(l.observation, observation));
    boolean[] already = spoilt.getOrDefault(now.group(), new boolean[leads.length]);
    boolean[] spoils = already.clone();
    for (int row = 0; row < leads.length; row++) {
      double own = now.apart(row);
      double any = now.meddled(row);
      spoils[row] |= any > own;
      if (before.isPresent()) {
        apart[row] += Math.min(0, own - before.get().beside.apart(row));
        meddled[row] += Math.min(0, any - before.get().beside.meddled(row));
      } else {
        apart[row] += own;
        meddled[row] += any > own && already[row] ? 0 : any;
      }
    }
    spoilt.put(now.group(), spoils);
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
      double[] two = new double[alone.length];
      for (int i = 0; i < alone.length; i++) {
        two[i] = ofTwo(i);
        best = Math.max(best, Math.max(alone[i], two[i]));
      }
      double[] all = new double[alone.length];
      double sum = StrictMath.exp(out - best);
      for (int i = 0; i < all.length; i++) {
        all[i] = StrictMath.exp(alone[i] - best) + StrictMath.exp(two[i] - best);
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
    int row = terms.rows[i];
    if (odd && !leads[row]) {
      return Double.NEGATIVE_INFINITY;
    }
    return ofTwo[i] + Joint.either(apart[row], terms.leaves, meddled[row], terms.meddles);
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
