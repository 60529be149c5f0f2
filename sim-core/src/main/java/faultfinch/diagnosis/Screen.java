package faultfinch.diagnosis;

import java.util.Arrays;

/**
 * Which looks can be among the best for some candidates: what each tells is summed up from the
 * candidates alone that do not show what most do, candidate by candidate and for all looks at once.
 * Such sums are off by roundings, and so only tell which looks to judge properly; none of the best
 * is ever left out.
 *
 * <p>Of some thousand looks a dozen are left, for a tenth of the work of judging them all.
 */
final class Screen {

  /** More than all roundings together, in bits. */
  private static final double ROUNDING = 1e-9;

  /** What a pair costs here where it costs 1 when it is judged properly. */
  private static final int DEARER = 2;

  private final Ground ground;
  private final RowCodes codes;

  /** Where the outcomes of each look begin among those of all. */
  private final int[] outcomesOf;

  private final double[] total;
  private final double[] ofGroup;
  private final double[] joint;
  private final double[] away;
  private final double[] moved;
  private final boolean[] touched;

  /** Looks that part something, outcomes that are shown, and both of the repair at hand. */
  private final int[] looks;

  private final int[] outcomes;
  private final int[] lookOfOutcome;
  private final int[] groupOutcomes;
  private final int[] groupLooks;
  private final int[] lookOfGroupOutcome;
  private int lookCount;
  private int outcomeCount;
  private double logs;

  Screen(Ground ground, RowCodes codes) {
    this.ground = ground;
    this.codes = codes;
    Ground.Column[] columns = ground.columns();
    outcomesOf = new int[columns.length + 1];
    for (int i = 0; i < columns.length; i++) {
      outcomesOf[i + 1] = outcomesOf[i] + columns[i].outcomes();
    }
    int all = outcomesOf[columns.length];
    total = new double[all];
    ofGroup = new double[all];
    outcomes = new int[all];
    lookOfOutcome = new int[all];
    groupOutcomes = new int[all];
    lookOfGroupOutcome = new int[all];
    joint = new double[columns.length];
    away = new double[columns.length];
    moved = new double[columns.length];
    touched = new boolean[columns.length];
    looks = new int[columns.length];
    groupLooks = new int[columns.length];
  }

  /** Whether judging these candidates one by one is more work. */
  boolean pays(int[] members) {
    long pairs = 0;
    for (int member : members) {
      pairs += codes.to(ground.row(member)) - codes.from(ground.row(member));
    }
    return (long) members.length * ground.columns().length > DEARER * pairs;
  }

  /**
   * The looks that may be among the best, rising.
   *
   * @param missing bits to know which repair is due, times weight
   * @param most looks wanted
   */
  int[] best(int[] members, double missing, int most) {
    lookCount = 0;
    outcomeCount = 0;
    logs = 0;
    double weight = 0;
    int from = 0;
    while (from < members.length) {
      int own = ground.atoms()[members[from]].own();
      int to = from + 1;
      while (to < members.length && ground.atoms()[members[to]].own() == own) {
        to++;
      }
      weight += to == from + 1 ? one(members[from]) : group(members, from, to);
      from = to;
    }
    for (int i = 0; i < outcomeCount; i++) {
      double some = total[outcomes[i]];
      total[outcomes[i]] = 0;
      joint[lookOfOutcome[i]] -= Logs.xlog2x(some);
    }
    double[] atMost = new double[lookCount];
    double[] atLeast = new double[lookCount];
    double off = ROUNDING * weight;
    for (int i = 0; i < lookCount; i++) {
      int look = looks[i];
      double usual = Logs.xlog2x(Math.max(0, weight - away[look]));
      double gain = missing + logs + joint[look] - usual;
      double waste = ground.columns()[look].price() * weight;
      atMost[i] = (gain + off) / waste;
      atLeast[i] = (gain - off) / waste;
      joint[look] = 0;
      away[look] = 0;
      touched[look] = false;
    }
    return notBelow(most < lookCount ? least(atLeast, most) : Double.NEGATIVE_INFINITY, atMost);
  }

  private static double least(double[] atLeast, int most) {
    double[] rising = atLeast.clone();
    Arrays.sort(rising);
    return rising[rising.length - most];
  }

  private int[] notBelow(double least, double[] atMost) {
    int[] best = new int[lookCount];
    int count = 0;
    for (int i = 0; i < lookCount; i++) {
      if (atMost[i] >= least) {
        best[count++] = looks[i];
      }
    }
    int[] rising = Arrays.copyOf(best, count);
    Arrays.sort(rising);
    return rising;
  }

  /** The only candidate of a repair: no look parts it from itself. */
  private double one(int member) {
    double weight = ground.atoms()[member].weight();
    logs += Logs.xlog2x(weight);
    int row = ground.row(member);
    for (int i = codes.from(row); i < codes.to(row); i++) {
      int look = codes.look(i);
      shown(outcomesOf[look] + codes.code(i), look, weight);
    }
    return weight;
  }

  /** All candidates of a repair; what is missing to know it falls by what a look parts of them. */
  private double group(int[] members, int from, int to) {
    double weight = 0;
    int count = 0;
    for (int m = from; m < to; m++) {
      double some = ground.atoms()[members[m]].weight();
      weight += some;
      int row = ground.row(members[m]);
      for (int i = codes.from(row); i < codes.to(row); i++) {
        int look = codes.look(i);
        int outcome = outcomesOf[look] + codes.code(i);
        if (ofGroup[outcome] == 0) {
          groupOutcomes[count] = outcome;
          lookOfGroupOutcome[count++] = look;
        }
        ofGroup[outcome] += some;
      }
    }
    double log = Logs.xlog2x(weight);
    logs += log;
    int lookOfGroup = 0;
    for (int i = 0; i < count; i++) {
      int outcome = groupOutcomes[i];
      int look = lookOfGroupOutcome[i];
      double some = ofGroup[outcome];
      ofGroup[outcome] = 0;
      shown(outcome, look, some);
      joint[look] += Logs.xlog2x(some);
      if (moved[look] == 0) {
        groupLooks[lookOfGroup++] = look;
      }
      moved[look] += some;
    }
    for (int i = 0; i < lookOfGroup; i++) {
      int look = groupLooks[i];
      joint[look] += Logs.xlog2x(Math.max(0, weight - moved[look])) - log;
      moved[look] = 0;
    }
    return weight;
  }

  private void shown(int outcome, int look, double weight) {
    if (!touched[look]) {
      touched[look] = true;
      looks[lookCount++] = look;
    }
    if (total[outcome] == 0) {
      outcomes[outcomeCount] = outcome;
      lookOfOutcome[outcomeCount++] = look;
    }
    total[outcome] += weight;
    away[look] += weight;
  }
}
