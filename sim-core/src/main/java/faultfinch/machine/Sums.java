package faultfinch.machine;

/** What acts on a net now, both ways: its drivers as they drive, and the loads joined to it. */
final class Sums {
  private final Circuit circuit;
  private final Levels levels;

  /** By switch to a supply net whether it is closed. */
  private final boolean[] closed;

  Sums(Levels levels, boolean[] closed) {
    this.circuit = levels.circuit;
    this.levels = levels;
    this.closed = closed;
  }

  /** Millivolts of a net that nothing drives but this pin. */
  int alone(int pin, boolean high) {
    double each = 1.0 / (high ? circuit.highOhm[pin] : circuit.lowOhm[pin]);
    int mv = high ? circuit.highMv[pin] : circuit.lowMv[pin];
    int net = circuit.netOf[pin];
    double[] sums = loaded(net, each, each * mv);
    return levels.solver.single(net, sums[0], sums[1]);
  }

  /** 0 lets go, 2 drives low, 3 drives high. */
  private int state(int pin) {
    int p = circuit.partOf[pin];
    int bit = circuit.bitOf[pin];
    return state(pin, levels.driven[p] >>> bit, levels.bits[p] >>> bit);
  }

  /** The same of a pin that drives, if at all, the level of the lowest bit. */
  int state(int pin, long on, long level) {
    if ((on & 1) == 0) {
      return 0;
    }
    return (level & 1) == 0 ? 2 : circuit.collector[pin] ? 0 : 3;
  }

  /** Millivolts of a net by all that acts on it, or {@link NetSolver#FLOATING}. */
  int solve(int net) {
    double[] sums = of(net);
    return levels.solver.single(net, sums[0], sums[1]);
  }

  /** Conductance of what acts on a net, and what it adds up to. */
  double[] of(int net) {
    double g = 0;
    double gv = 0;
    for (int pin : circuit.drivers[net]) {
      int state = state(pin);
      if (state != 0) {
        double each = 1.0 / (state == 3 ? circuit.highOhm[pin] : circuit.lowOhm[pin]);
        g += each;
        gv += each * (state == 3 ? circuit.highMv[pin] : circuit.lowMv[pin]);
      }
    }
    return loaded(net, g, gv);
  }

  /** Conductance of a net and what it adds up to, with the loads that are joined to it. */
  private double[] loaded(int net, double driven, double drivenTo) {
    double g = driven;
    double gv = drivenTo;
    for (int i = 0; i < circuit.loadMv[net].length; i++) {
      if (!loads(net, i)) {
        continue;
      }
      g += 1.0 / circuit.loadOhm[net][i];
      gv += (double) circuit.loadMv[net][i] / circuit.loadOhm[net][i];
    }
    return new double[] {g, gv};
  }

  /** Whether a load of a net is joined to it: its switch, if it has one, is closed. */
  boolean loads(int net, int load) {
    int gate = circuit.loadSwitch[net][load];
    return gate < 0 || closed[gate];
  }
}
