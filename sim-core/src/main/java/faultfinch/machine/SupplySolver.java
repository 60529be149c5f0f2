package faultfinch.machine;

import java.util.Arrays;
import java.util.List;

/**
 * Volts of supply nodes and currents of the branches between them. All states start as on a sound
 * board; the first branch that does not fit changes, until all fit. Should that go in circles,
 * every combination of states is tried in order.
 */
final class SupplySolver {
  private static final int FLIPS = 64;
  private static final long MOST_COMBINATIONS = 1 << 16;
  private static final int ROUNDS = 60;
  private static final double STILL_MV = 0.01;
  private static final double LEAK = 1.0 / PowerFigures.figure("leak.ohms");

  private final List<Branch> branches;
  private final int nodes;

  /** Millivolts of each node against node 0. */
  double[] volts;

  /** Milliamperes through each branch, in the order given. */
  double[] currents;

  /**
   * Solves.
   *
   * @param nodes how many; node 0 is the reference
   */
  SupplySolver(List<Branch> branches, int nodes) {
    this.branches = branches;
    this.nodes = nodes;
    this.volts = new double[nodes];
    this.currents = new double[branches.size()];
    for (int round = 0; round < ROUNDS; round++) {
      double[] before = volts;
      states(before);
      if (still(before)) {
        return;
      }
    }
  }

  private boolean still(double[] before) {
    for (int n = 0; n < nodes; n++) {
      if (Math.abs(volts[n] - before[n]) > STILL_MV) {
        return false;
      }
    }
    return true;
  }

  private void states(double[] before) {
    int[] states = new int[branches.size()];
    for (int flip = 0; flip < FLIPS; flip++) {
      int misfit = solve(states, before) ? misfit(states) : 0;
      if (misfit < 0) {
        return;
      }
      states[misfit] = branches.get(misfit).next(states[misfit], volts, currents[misfit]);
    }
    Arrays.fill(states, 0);
    for (long n = 0; n < MOST_COMBINATIONS; n++) {
      if (solve(states, before) && misfit(states) < 0) {
        return;
      }
      if (!advance(states)) {
        break;
      }
    }
    throw new IllegalStateException("the supply of " + branches.size() + " branches has no state");
  }

  private int misfit(int[] states) {
    for (int b = 0; b < states.length; b++) {
      if (branches.get(b).next(states[b], volts, currents[b]) != states[b]) {
        return b;
      }
    }
    return -1;
  }

  private boolean advance(int[] states) {
    for (int b = 0; b < states.length; b++) {
      states[b]++;
      if (states[b] < branches.get(b).states()) {
        return true;
      }
      states[b] = 0;
    }
    return false;
  }

  /** Kirchhoff's rows, one a node, then one row a branch. False if they have no single solution. */
  private boolean solve(int[] states, double[] before) {
    int size = nodes + branches.size();
    double[][] m = new double[size][size + 1];
    m[0][0] = 1;
    for (int n = 1; n < nodes; n++) {
      m[n][n] = LEAK;
    }
    for (int b = 0; b < branches.size(); b++) {
      Branch branch = branches.get(b);
      Branch.Row row = branch.row(states[b], before);
      int at = nodes + b;
      m[at][branch.from()] += row.from();
      m[at][branch.to()] += row.to();
      m[at][branch.base()] += row.base();
      m[at][at] += row.current();
      m[at][size] = row.right();
      leaves(m, branch.from(), at, 1);
      leaves(m, branch.to(), at, -1);
    }
    double[] x = eliminate(m);
    if (x.length == 0) {
      return false;
    }
    volts = Arrays.copyOf(x, nodes);
    currents = Arrays.copyOfRange(x, nodes, size);
    return true;
  }

  private static void leaves(double[][] m, int node, int at, double sign) {
    if (node != 0) {
      m[node][at] += sign;
    }
  }

  private static double[] eliminate(double[][] m) {
    int n = m.length;
    for (int k = 0; k < n; k++) {
      int pivot = k;
      for (int i = k + 1; i < n; i++) {
        if (Math.abs(m[i][k]) > Math.abs(m[pivot][k])) {
          pivot = i;
        }
      }
      if (Math.abs(m[pivot][k]) < 1e-12) {
        return new double[0];
      }
      double[] swap = m[k];
      m[k] = m[pivot];
      m[pivot] = swap;
      for (int i = k + 1; i < n; i++) {
        double f = m[i][k] / m[k][k];
        if (f != 0) {
          for (int j = k; j <= n; j++) {
            m[i][j] -= f * m[k][j];
          }
        }
      }
    }
    double[] x = new double[n];
    for (int i = n - 1; i >= 0; i--) {
      double sum = m[i][n];
      for (int j = i + 1; j < n; j++) {
        sum -= m[i][j] * x[j];
      }
      x[i] = sum / m[i][i];
    }
    return x;
  }
}
