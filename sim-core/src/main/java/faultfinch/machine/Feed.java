package faultfinch.machine;

/** What is plugged into a board's jack. */
public sealed interface Feed {

  /** Millivolts at its plug with nothing drawn. */
  int noLoadMillivolts();

  /** Its source resistance in milliohms. */
  int milliohms();

  /** Milliamperes it gives at most. */
  int limitMilliamps();

  /** Millivolts at its plug into a resistor of so many milliohms (1 or more), no board on it. */
  default int into(int loadMilliohms) {
    if (loadMilliohms < 1) {
      throw new IllegalArgumentException(
          "found a load of " + loadMilliohms + " milliohms, right would be 1 or more");
    }
    long source = noLoadMillivolts();
    long shared = halfUp(source * loadMilliohms, (long) loadMilliohms + milliohms());
    long limited = halfUp((long) limitMilliamps() * loadMilliohms, 1000);
    return (int) Math.min(shared, limited);
  }

  /** Millivolts at its plug on the bench's dummy load of 10 ohms. */
  default int onDummyLoad() {
    return into(PowerFigures.figure("dummy.milliohms"));
  }

  private static long halfUp(long a, long b) {
    return (2 * a + b) / (2 * b);
  }

  /** A brick: a source behind a resistance, without a limit of its own. */
  record Brick(int noLoadMillivolts, int milliohms) implements Feed {
    public Brick {
      if (noLoadMillivolts < 0 || milliohms < 1) {
        throw new IllegalArgumentException(
            "found "
                + noLoadMillivolts
                + " mV behind "
                + milliohms
                + " milliohms, right would be"
                + " 0 mV or more behind 1 or more");
      }
    }

    @Override
    public int limitMilliamps() {
      return Integer.MAX_VALUE;
    }
  }

  /** A bench supply: stiff up to the current it is set to, that current below. */
  record Bench(int noLoadMillivolts, int limitMilliamps) implements Feed {
    public Bench {
      if (noLoadMillivolts < 0 || limitMilliamps < 0) {
        throw new IllegalArgumentException(
            "found "
                + noLoadMillivolts
                + " mV and "
                + limitMilliamps
                + " mA, right would be 0 or"
                + " more of both");
      }
    }

    @Override
    public int milliohms() {
      return 0;
    }
  }

  /** Nothing: a lead that is broken or lies on the bench. */
  record Nothing() implements Feed {
    @Override
    public int noLoadMillivolts() {
      return 0;
    }

    @Override
    public int milliohms() {
      return 1;
    }

    @Override
    public int limitMilliamps() {
      return 0;
    }
  }
}
