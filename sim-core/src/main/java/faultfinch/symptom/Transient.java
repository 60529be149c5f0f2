package faultfinch.symptom;

import faultfinch.machine.SoundNet;
import java.util.Arrays;

/**
 * Steps a network of resistances, capacitors and amplifiers through time: in each step a capacitor
 * is a resistance with a source that remembers its last voltage (backward Euler), so one inverted
 * matrix serves all steps.
 */
final class Transient {
  /** Gain of an amplifier without its loop. */
  private static final double GAIN = 1e5;

  /** From every node to ground, so that none is loose; far above what is fitted. */
  private static final double LOOSE_OHMS = 1e9;

  private final SoundNet net;
  private final double[][] inverse;
  private final double[] charge;
  private final double[] siemens;
  private final double[] current;
  private final double[] volts;
  private final SoundNet.Source source;
  private final SoundNet.Resistance speaker;
  private double input;

  /**
   * Starts at rest.
   *
   * @param net with a source and a speaker
   * @param seconds of a step
   */
  Transient(SoundNet net, double seconds) {
    this.net = net;
    this.source = net.source().orElseThrow();
    this.speaker = net.speaker().orElseThrow();
    int n = net.nodes();
    double[][] m = new double[n][n];
    for (int i = 0; i < n; i++) {
      m[i][i] = 1 / LOOSE_OHMS;
    }
    net.resistances().forEach(r -> stamp(m, r.from(), r.to(), 1 / r.ohms()));
    siemens = net.capacities().stream().mapToDouble(c -> c.farads() / seconds).toArray();
    for (int i = 0; i < siemens.length; i++) {
      stamp(m, net.capacities().get(i).from(), net.capacities().get(i).to(), siemens[i]);
    }
    stamp(m, source.node(), SoundNet.GROUND, 1 / source.ohms());
    for (SoundNet.Amplifier a : net.amplifiers()) {
      stamp(m, a.out(), SoundNet.GROUND, 1 / a.ohms());
      add(m, a.out(), a.plus(), -GAIN / a.ohms());
      add(m, a.out(), a.minus(), GAIN / a.ohms());
    }
    inverse = inverse(m);
    charge = new double[siemens.length];
    current = new double[n];
    volts = new double[n];
  }

  private static void stamp(double[][] m, int from, int to, double g) {
    add(m, from, from, g);
    add(m, to, to, g);
    add(m, from, to, -g);
    add(m, to, from, -g);
  }

  private static void add(double[][] m, int row, int column, double g) {
    if (row != SoundNet.GROUND && column != SoundNet.GROUND) {
      m[row][column] += g;
    }
  }

  /** By elimination with the largest pivot of each column. */
  private static double[][] inverse(double[][] m) {
    int n = m.length;
    double[][] a = new double[n][2 * n];
    for (int i = 0; i < n; i++) {
      System.arraycopy(m[i], 0, a[i], 0, n);
      a[i][n + i] = 1;
    }
    for (int k = 0; k < n; k++) {
      int best = k;
      for (int i = k + 1; i < n; i++) {
        best = Math.abs(a[i][k]) > Math.abs(a[best][k]) ? i : best;
      }
      double[] row = a[best];
      a[best] = a[k];
      a[k] = row;
      double pivot = row[k];
      for (int j = 0; j < 2 * n; j++) {
        row[j] /= pivot;
      }
      for (int i = 0; i < n; i++) {
        double f = a[i][k];
        if (i != k && f != 0) {
          for (int j = 0; j < 2 * n; j++) {
            a[i][j] -= f * row[j];
          }
        }
      }
    }
    double[][] inverse = new double[n][n];
    for (int i = 0; i < n; i++) {
      System.arraycopy(a[i], n, inverse[i], 0, n);
    }
    return inverse;
  }

  /**
   * One step with the sum at these volts from its rest.
   *
   * @return volts across the speaker at the end of the step
   */
  double step(double sum) {
    input = sum;
    Arrays.fill(current, 0);
    current[source.node()] += sum / source.ohms();
    for (int i = 0; i < siemens.length; i++) {
      SoundNet.Capacity c = net.capacities().get(i);
      inject(c.from(), siemens[i] * charge[i]);
      inject(c.to(), -siemens[i] * charge[i]);
    }
    for (int i = 0; i < volts.length; i++) {
      double v = 0;
      double[] row = inverse[i];
      for (int j = 0; j < volts.length; j++) {
        v += row[j] * current[j];
      }
      volts[i] = v;
    }
    for (int i = 0; i < siemens.length; i++) {
      SoundNet.Capacity c = net.capacities().get(i);
      charge[i] = at(c.from()) - at(c.to());
    }
    return at(speaker.from()) - at(speaker.to());
  }

  private void inject(int node, double amperes) {
    if (node != SoundNet.GROUND) {
      current[node] += amperes;
    }
  }

  private double at(int node) {
    return node == SoundNet.GROUND ? 0 : volts[node];
  }

  /** Whether anything still stands away from its rest by more than this. */
  boolean moving(double limit) {
    if (Math.abs(input) > limit) {
      return true;
    }
    for (double c : charge) {
      if (Math.abs(c) > limit) {
        return true;
      }
    }
    return false;
  }
}
