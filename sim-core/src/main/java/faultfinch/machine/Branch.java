package faultfinch.machine;

/**
 * One way current can take through the supply. Its behaviour is straight in pieces: in each state
 * it keeps one linear equation, and told volts and current it names the state it would rather be
 * in.
 *
 * <p>Millivolts, milliamperes and ohms go together. Current counts from {@code from} to {@code to}.
 */
sealed interface Branch {
  /** Rounding of the solver, in millivolts and milliamperes. */
  double CLOSE = 1e-6;

  /** {@code from * Vfrom + to * Vto + base * Vbase + current * I = right}. */
  record Row(double from, double to, double base, double current, double right) {}

  String ref();

  int from();

  int to();

  /** Node that a third terminal is on; {@link #from} where there is none. */
  default int base() {
    return from();
  }

  default int states() {
    return 1;
  }

  /** The equation of a state; before is the solution last found, for what is not linear. */
  Row row(int state, double[] before);

  /** The state it belongs in; the same one if it fits. */
  default int next(int state, double[] volts, double current) {
    return 0;
  }

  /** A resistor. */
  record Resistor(String ref, int from, int to, double ohms) implements Branch {
    @Override
    public Row row(int state, double[] before) {
      return new Row(1, -1, 0, -ohms, 0);
    }
  }

  /** A part between its supply and ground: a resistor below 5 V, a constant current above. */
  record Draw(String ref, int from, int to, int milliamps) implements Branch {
    static final int NOMINAL_MILLIVOLTS = 5000;

    @Override
    public Row row(int state, double[] before) {
      double across = Math.max(NOMINAL_MILLIVOLTS, before[from] - before[to]);
      return new Row(milliamps / across, -milliamps / across, 0, -1, 0);
    }
  }

  /** A diode, or a short to a voltage: conducts one way only, above its drop. */
  record OneWay(String ref, int from, int to, int dropMillivolts, double ohms) implements Branch {
    @Override
    public int states() {
      return 2;
    }

    @Override
    public Row row(int state, double[] before) {
      return state == 0 ? new Row(1, -1, 0, -ohms, dropMillivolts) : new Row(0, 0, 0, 1, 0);
    }

    @Override
    public int next(int state, double[] volts, double current) {
      if (state == 0) {
        return current < -CLOSE ? 1 : 0;
      }
      return volts[from] - volts[to] > dropMillivolts + CLOSE ? 0 : 1;
    }
  }

  /** What is plugged in, from its minus to its plus: stiff, or at its current limit. */
  record Source(String ref, int from, int to, Feed feed) implements Branch {
    @Override
    public int states() {
      return 2;
    }

    @Override
    public Row row(int state, double[] before) {
      return state == 0
          ? new Row(-1, 1, 0, feed.milliohms() / 1000.0, feed.noLoadMillivolts())
          : new Row(0, 0, 0, 1, feed.limitMilliamps());
    }

    @Override
    public int next(int state, double[] volts, double current) {
      if (state == 0) {
        return current > feed.limitMilliamps() + CLOSE ? 1 : 0;
      }
      double wanted = feed.noLoadMillivolts() - current * feed.milliohms() / 1000.0;
      return volts[to] - volts[from] > wanted + CLOSE ? 0 : 1;
    }
  }

  /** A series regulator from input to output with its ground pin as the base. */
  record Regulator(String ref, int from, int to, int base, int set, int dropout, int limit)
      implements Branch {
    private static final int REGULATES = 0;
    private static final int DROPS_OUT = 1;
    private static final int LIMITS = 2;
    private static final int OFF = 3;

    @Override
    public int states() {
      return 4;
    }

    @Override
    public Row row(int state, double[] before) {
      return switch (state) {
        case REGULATES -> new Row(0, 1, -1, 0, set);
        case DROPS_OUT -> new Row(1, -1, 0, 0, dropout);
        case LIMITS -> new Row(0, 0, 0, 1, limit);
        default -> new Row(0, 0, 0, 1, 0);
      };
    }

    @Override
    public int next(int state, double[] volts, double current) {
      double reaches = volts[from] - volts[base] - dropout;
      double out = volts[to] - volts[base];
      int driving = set < reaches ? REGULATES : DROPS_OUT;
      double wanted = Math.min(set, reaches);
      return switch (state) {
        case LIMITS -> out > wanted + CLOSE ? driving : LIMITS;
        case OFF -> out < wanted - CLOSE ? driving : OFF;
        default -> {
          if (current > limit + CLOSE) {
            yield LIMITS;
          }
          if (current < -CLOSE) {
            yield OFF;
          }
          yield Math.abs(out - wanted) > CLOSE ? driving : state;
        }
      };
    }
  }
}
