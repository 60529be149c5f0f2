package faultfinch.diagnosis;

import java.util.Arrays;

/**
 * Which looks can be among the best of a whole board: what each tells is summed up from the
 * candidates alone that do not show what most do. Such sums are off by roundings, and so only tell
 * which looks to judge properly; none of the best is ever left out.
 *
 * <p>Of some thousand looks a dozen are left, for a twentieth of the work of judging them all.
 */
final class Screen {

  /** More than all roundings together, in bits. */
  private static final double ROUNDING = 1e-9;

  private final Ground ground;
  private final int[] owns;
  private final double[] present;
  private final double[] ofAction;
  private final double[] logOfAction;
  private final double[] total;
  private final double[] ofGroup;
  private final int[] touched;

  /**
   * @param outcomes most of any look
   */
  Screen(Ground ground, int outcomes) {
    this.ground = ground;
    owns = new int[ground.atoms().length];
    for (int i = 0; i < owns.length; i++) {
      owns[i] = ground.atoms()[i].own();
    }
    present = new double[owns.length];
    ofAction = new double[ground.actions().size()];
    logOfAction = new double[ofAction.length];
    total = new double[outcomes];
    ofGroup = new double[outcomes];
    touched = new int[outcomes];
  }

  /** Whether judging so many candidates one by one is more work. */
  boolean pays(int[] members) {
    return ground.others() >= 0
        && (long) members.length * ground.columns().length > 2 * ground.others();
  }

  /**
   * The looks that may be among the best.
   *
   * @param missing bits to know which repair is due, times weight
   * @param most looks wanted
   */
  boolean[] best(int[] members, double missing, int most) {
    double weight = enter(members);
    Ground.Column[] columns = ground.columns();
    double logs = 0;
    for (int member : members) {
      int own = owns[member];
      if (ofAction[own] > 0 && logOfAction[own] == 0) {
        logOfAction[own] = Logs.xlog2x(ofAction[own]);
        logs += logOfAction[own];
      }
    }
    double[] atMost = new double[columns.length];
    double[] atLeast = new double[columns.length];
    double off = ROUNDING * weight;
    for (int i = 0; i < columns.length; i++) {
      double gain = missing - after(columns[i], weight, logs);
      double waste = columns[i].price() * weight;
      atMost[i] = (gain + off) / waste;
      atLeast[i] = (gain - off) / waste;
    }
    leave(members);
    boolean[] best = new boolean[columns.length];
    Arrays.fill(best, true);
    if (most < columns.length) {
      Arrays.sort(atLeast);
      double least = atLeast[columns.length - most];
      for (int i = 0; i < best.length; i++) {
        best[i] = atMost[i] >= least;
      }
    }
    return best;
  }

  private double enter(int[] members) {
    double weight = 0;
    for (int member : members) {
      present[member] = ground.atoms()[member].weight();
      ofAction[owns[member]] += present[member];
      weight += present[member];
    }
    return weight;
  }

  private void leave(int[] members) {
    for (int member : members) {
      present[member] = 0;
      ofAction[owns[member]] = 0;
      logOfAction[owns[member]] = 0;
    }
  }

  /** Bits missing after a look: logs of outcomes less logs of outcome and action. */
  private double after(Ground.Column column, double weight, double logs) {
    int[] others = column.others();
    char[] codes = column.otherCodes();
    double joint = logs;
    double away = 0;
    int from = 0;
    while (from < others.length) {
      int own = owns[others[from]];
      double moved = 0;
      int count = 0;
      while (from < others.length && owns[others[from]] == own) {
        double some = present[others[from]];
        if (some > 0) {
          int code = codes[from];
          if (ofGroup[code] == 0) {
            touched[count++] = code;
          }
          ofGroup[code] += some;
          moved += some;
        }
        from++;
      }
      double stay = ofAction[own] - moved;
      boolean parts = count > 1 || stay > 0;
      joint += parts ? Logs.xlog2x(Math.max(0, stay)) - logOfAction[own] : 0;
      for (int i = 0; i < count; i++) {
        double some = ofGroup[touched[i]];
        joint += parts ? Logs.xlog2x(some) : 0;
        total[touched[i]] += some;
        ofGroup[touched[i]] = 0;
      }
      away += moved;
    }
    double marginal = Logs.xlog2x(Math.max(0, weight - away));
    for (int i = 0; i < column.outcomes(); i++) {
      marginal += Logs.xlog2x(total[i]);
      total[i] = 0;
    }
    return marginal - joint;
  }
}
