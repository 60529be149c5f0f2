package faultfinch.machine;

import faultfinch.signal.Electrical;

/**
 * Millivolts of nets from the sources that act on them. One net alone is a weighted mean; coupled
 * nets are a nodal analysis. One-way sources (diodes, LS inputs, dead LS outputs) start off and are
 * switched in the order of the arrays until none wants to change.
 */
final class NetSolver {
  static final int FLOATING = Integer.MIN_VALUE;

  private static final int LS_MV = Electrical.figure("ls-input.mv");
  private static final double LS_G = 1.0 / Electrical.figure("ls-input.ohm");
  private static final int DEAD_MV = Electrical.figure("dead-ls.mv");
  private static final double DEAD_G = 1.0 / Electrical.figure("dead-ls.ohm");
  static final int DIODE_MV = Electrical.figure("diode.mv");
  private static final int ROUNDS = 32;

  private final Circuit circuit;

  NetSolver(Circuit circuit) {
    this.circuit = circuit;
  }

  /**
   * One net that nothing couples to another.
   *
   * @param g sum of conductances of what drives it both ways
   * @param gv sum of conductance times millivolts
   * @return millivolts, or {@link #FLOATING}
   */
  int single(int net, double g, double gv) {
    int ls = circuit.lsInputs[net];
    int dead = circuit.deadLs[net];
    if (g == 0) {
      return FLOATING;
    }
    double v = gv / g;
    if (ls > 0 && v < LS_MV) {
      v = (gv + ls * LS_G * LS_MV) / (g + ls * LS_G);
    }
    if (dead > 0 && v > DEAD_MV) {
      v = (gv + dead * DEAD_G * DEAD_MV) / (g + dead * DEAD_G);
    }
    return round(v);
  }

  /**
   * Coupled nets.
   *
   * @param g per member, conductance of what drives it both ways
   * @param gv per member, conductance times millivolts
   * @param closed per element, whether a switch in it is closed; true where there is none
   * @return per member millivolts or {@link #FLOATING}
   */
  int[] coupled(Coupling group, double[] g, double[] gv, boolean[] closed) {
    int n = group.nets().length;
    int elements = group.ohms().length;
    boolean[] on = new boolean[elements + 2 * n];
    for (int e = 0; e < elements; e++) {
      on[e] = !group.diode()[e] && closed[e];
    }
    double[] volts = new double[n];
    boolean[] fixed = new boolean[n];
    for (int round = 0; round < ROUNDS; round++) {
      solve(group, g, gv, on, volts, fixed);
      int change = firstChange(group, on, volts, fixed);
      if (change < 0) {
        break;
      }
      on[change] = !on[change];
    }
    int[] result = new int[n];
    for (int i = 0; i < n; i++) {
      result[i] = fixed[i] ? round(volts[i]) : FLOATING;
    }
    return result;
  }

  private int firstChange(Coupling group, boolean[] on, double[] volts, boolean[] fixed) {
    int n = group.nets().length;
    int elements = group.ohms().length;
    for (int e = 0; e < elements; e++) {
      if (group.diode()[e]) {
        boolean known = known(group.from()[e], fixed) && known(group.to()[e], fixed);
        double over = known ? at(group.from()[e], volts) - at(group.to()[e], volts) : 0;
        // On, the element's own ohms stand behind the diode; off, more than its drop opens it.
        if (known && on[e] != over > DIODE_MV) {
          return e;
        }
        if (!known && !on[e] && feeds(group.from()[e], group.to()[e], volts, fixed)) {
          return e;
        }
      }
    }
    for (int i = 0; i < n; i++) {
      int net = group.nets()[i];
      if (fixed[i] && circuit.lsInputs[net] > 0 && !on[elements + i] && volts[i] < LS_MV) {
        return elements + i;
      }
      if (fixed[i] && circuit.deadLs[net] > 0 && !on[elements + n + i] && volts[i] > DEAD_MV) {
        return elements + n + i;
      }
    }
    return -1;
  }

  private boolean feeds(int from, int to, double[] volts, boolean[] fixed) {
    return known(from, fixed) && !known(to, fixed) && at(from, volts) > DIODE_MV;
  }

  private static boolean known(int end, boolean[] fixed) {
    return end < 0 || fixed[end];
  }

  private double at(int end, double[] volts) {
    return end >= 0 ? volts[end] : circuit.sourceMv[-1 - end];
  }

  private void solve(
      Coupling group, double[] g, double[] gv, boolean[] on, double[] volts, boolean[] fixed) {
    int n = group.nets().length;
    int elements = group.ohms().length;
    double[][] m = new double[n][n + 1];
    for (int i = 0; i < n; i++) {
      fixed[i] = g[i] > 0;
      double ls = on[elements + i] ? circuit.lsInputs[group.nets()[i]] * LS_G : 0;
      double dead = on[elements + n + i] ? circuit.deadLs[group.nets()[i]] * DEAD_G : 0;
      m[i][i] = g[i] + ls + dead;
      m[i][n] = gv[i] + ls * LS_MV + dead * DEAD_MV;
    }
    for (int e = 0; e < elements; e++) {
      if (on[e]) {
        stamp(group, e, m, fixed);
      }
    }
    spread(group, on, fixed);
    eliminate(m, fixed, volts);
  }

  private void stamp(Coupling group, int e, double[][] m, boolean[] fixed) {
    int n = m.length;
    int a = group.from()[e];
    int b = group.to()[e];
    double c = 1.0 / group.ohms()[e];
    double drop = group.diode()[e] ? DIODE_MV : 0;
    if (a >= 0) {
      m[a][a] += c;
      m[a][n] += c * drop;
      if (b < 0) {
        m[a][n] += c * at(b, null);
        fixed[a] = true;
      } else {
        m[a][b] -= c;
      }
    }
    if (b >= 0) {
      m[b][b] += c;
      m[b][n] -= c * drop;
      if (a < 0) {
        m[b][n] += c * at(a, null);
        fixed[b] = true;
      } else {
        m[b][a] -= c;
      }
    }
  }

  private static void spread(Coupling group, boolean[] on, boolean[] fixed) {
    boolean more = true;
    while (more) {
      more = false;
      for (int e = 0; e < group.ohms().length; e++) {
        int a = group.from()[e];
        int b = group.to()[e];
        if (on[e] && a >= 0 && b >= 0 && fixed[a] != fixed[b]) {
          fixed[a] = true;
          fixed[b] = true;
          more = true;
        }
      }
    }
  }

  private static void eliminate(double[][] m, boolean[] fixed, double[] volts) {
    int n = m.length;
    for (int i = 0; i < n; i++) {
      if (!fixed[i]) {
        java.util.Arrays.fill(m[i], 0);
        for (double[] row : m) {
          row[i] = 0;
        }
        m[i][i] = 1;
      }
    }
    // The matrix is symmetric and diagonally dominant: no pivoting is needed.
    for (int k = 0; k < n; k++) {
      for (int i = k + 1; i < n; i++) {
        double f = m[i][k] / m[k][k];
        if (f != 0) {
          for (int j = k; j <= n; j++) {
            m[i][j] -= f * m[k][j];
          }
        }
      }
    }
    for (int i = n - 1; i >= 0; i--) {
      double sum = m[i][n];
      for (int j = i + 1; j < n; j++) {
        sum -= m[i][j] * volts[j];
      }
      volts[i] = sum / m[i][i];
    }
  }

  /** Half up to a whole millivolt. */
  private static int round(double millivolts) {
    return (int) StrictMath.floor(millivolts + 0.5);
  }
}
