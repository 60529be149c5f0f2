package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What each step would tell about which repair is due, per minute wasted on it.
 *
 * <p>A look wastes its price. A repair is a test too: it wastes its price where it misses, and what
 * it costs more than the due repair where it cures. So both stand in one list.
 */
final class Gains {

  /** Repairs that are looked at closely, those that cure most for their price. */
  private static final int REPAIRS = 8;

  /** Below this share of all bits a gain is rounding. */
  private static final double ROUNDING = 1e-6;

  private final Ground ground;
  private final double[] weights;
  private final double[] logs;
  private final double[] total;
  private final double[] ofGroup;
  private final int[] touched;
  private final double[] cured;

  /** Numbers of all looks. */
  private final int[] all;

  private final Optional<Screen> screen;
  private long cells;
  private long judged;

  Gains(Ground ground) {
    this.ground = ground;
    int atoms = ground.atoms().length;
    weights = new double[atoms];
    logs = new double[atoms];
    for (int i = 0; i < atoms; i++) {
      weights[i] = ground.atoms()[i].weight();
      logs[i] = Logs.xlog2x(weights[i]);
    }
    int most = 1;
    for (Ground.Column column : ground.columns()) {
      most = Math.max(most, column.outcomes());
    }
    total = new double[most];
    ofGroup = new double[most];
    touched = new int[most];
    cured = new double[ground.actions().size()];
    all = new int[ground.columns().length];
    Arrays.setAll(all, i -> i);
    screen = ground.screen();
  }

  /** Work done so far, in pairs of candidate and look. */
  long cells() {
    return cells;
  }

  /** Looks that were judged one candidate after the other. */
  long judged() {
    return judged;
  }

  double weight(int[] members) {
    double sum = 0;
    for (int member : members) {
      sum += weights[member];
    }
    return sum;
  }

  /** Bits that are missing to know which repair is due, times weight. */
  double missing(int[] members) {
    return Logs.xlog2x(weight(members)) - groupLogs(members, -1);
  }

  /** The best step of all; there is always one as long as a member is left. */
  Option best(int[] members) {
    return ranked(members, 1).get(0);
  }

  /** The best steps, at most so many; those of equal score repairs first, then in board order. */
  List<Option> ranked(int[] members, int most) {
    List<Option> options = repairs(members);
    if (most > 1 || !options.get(0).wastesNothing()) {
      looks(members, options, most);
      options.sort(Comparator.comparingDouble(Option::score).reversed());
    }
    return List.copyOf(options.subList(0, Math.min(most, options.size())));
  }

  /** Where it pays only those that may be among so many of the best. */
  private void looks(int[] members, List<Option> options, int most) {
    double weight = weight(members);
    double missing = missing(members);
    double known = Logs.xlog2x(weight) - missing;
    Ground.Column[] columns = ground.columns();
    boolean screened = screen.isPresent() && screen.get().pays(members);
    int[] worth = screened ? screen.get().best(members, missing, most) : all;
    for (int i : worth) {
      // Bits missing afterwards: logs of outcomes less logs of outcome and action.
      double gain = Logs.xlog2x(weight) - known - after(columns[i], members);
      if (gain > ROUNDING * weight) {
        options.add(new Option(i, -1, gain, columns[i].price() * weight));
      }
    }
    judged += worth.length;
    cells += (long) members.length * columns.length;
  }

  private double after(Ground.Column column, int[] members) {
    short[] codes = column.codes();
    Ground.Atom[] atoms = ground.atoms();
    double joint = 0;
    int from = 0;
    while (from < members.length) {
      int own = atoms[members[from]].own();
      int to = from + 1;
      while (to < members.length && atoms[members[to]].own() == own) {
        to++;
      }
      if (to == from + 1) {
        total[codes[members[from]]] += weights[members[from]];
        joint += logs[members[from]];
      } else {
        joint += group(codes, members, from, to);
      }
      from = to;
    }
    double marginal = 0;
    for (int i = 0; i < column.outcomes(); i++) {
      marginal += Logs.xlog2x(total[i]);
      total[i] = 0;
    }
    return marginal - joint;
  }

  private double group(short[] codes, int[] members, int from, int to) {
    int count = 0;
    for (int i = from; i < to; i++) {
      int code = codes[members[i]];
      if (ofGroup[code] == 0) {
        touched[count++] = code;
      }
      ofGroup[code] += weights[members[i]];
    }
    double sum = 0;
    for (int i = 0; i < count; i++) {
      double weight = ofGroup[touched[i]];
      sum += Logs.xlog2x(weight);
      total[touched[i]] += weight;
      ofGroup[touched[i]] = 0;
    }
    return sum;
  }

  private List<Option> repairs(int[] members) {
    List<Integer> possible = new ArrayList<>();
    for (int member : members) {
      for (int action : ground.atoms()[member].cures()) {
        if (cured[action] == 0) {
          possible.add(action);
        }
        cured[action] += weights[member];
      }
    }
    possible.sort(
        Comparator.<Integer>comparingDouble(a -> -cured[a] / ground.price(a))
            .thenComparing(Comparator.naturalOrder()));
    double all = Logs.xlog2x(weight(members));
    double groups = groupLogs(members, -1);
    List<Option> options = new ArrayList<>();
    for (int action : possible.subList(0, Math.min(REPAIRS, possible.size()))) {
      double waste = 0;
      double missed = 0;
      for (int member : members) {
        boolean cures = cures(member, action);
        missed += cures ? 0 : weights[member];
        double due = cures ? ground.price(ground.atoms()[member].own()) : 0;
        waste += (ground.price(action) - due) * weights[member];
      }
      double gain = all - groups - Logs.xlog2x(missed) + groupLogs(members, action);
      options.add(new Option(-1, action, Math.max(gain, 0), waste));
    }
    possible.forEach(a -> cured[a] = 0);
    options.sort(Comparator.comparingDouble(Option::score).reversed());
    return options;
  }

  /** The members that a repair leaves. */
  int[] missed(int action, int[] members) {
    int count = 0;
    int[] missed = new int[members.length];
    for (int member : members) {
      if (!cures(member, action)) {
        missed[count++] = member;
      }
    }
    return Arrays.copyOf(missed, count);
  }

  boolean cures(int member, int action) {
    for (int other : ground.atoms()[member].cures()) {
      if (other == action) {
        return true;
      }
    }
    return false;
  }

  /** Sum of x log x over due repairs, without the members an action cures. */
  private double groupLogs(int[] members, int without) {
    double sum = 0;
    double group = 0;
    int own = -1;
    for (int member : members) {
      if (ground.atoms()[member].own() != own) {
        sum += Logs.xlog2x(group);
        group = 0;
        own = ground.atoms()[member].own();
      }
      group += without >= 0 && cures(member, without) ? 0 : weights[member];
    }
    return sum + Logs.xlog2x(group);
  }
}
